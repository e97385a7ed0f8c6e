import { signOff, type UnitSystem } from "@delaywright/documents";
import { useState } from "react";
import { Button, Input, Label, TextField } from "react-aria-components";
import { addressOf } from "../app/router.js";
import type { PlanAnswer } from "../compute/index.js";
import { beginFlight } from "../prep/flights.js";
import { prepWords, secondsLeft } from "../prep/prep-words.js";
import { useInitials } from "../prep/use-initials.js";
import { nextLine, type Prep, usePrep } from "../prep/use-prep.js";
import { useSigning } from "../prep/use-signing.js";
import { useNow } from "../standing/use-now.js";
import type { Entry } from "../store/index.js";

interface PadPrepProps {
  readonly plan: Entry;
  readonly answer: PlanAnswer;
  readonly units: UnitSystem;
  /** Nothing else is to be done first. */
  readonly isNext: boolean;
}

/** The next step of the prep sheet, to be signed here. */
export function PadPrep({ plan, answer, units, isNext }: PadPrepProps) {
  const prep = usePrep(plan.path, answer);
  if (prep === null) return null;
  return (
    <section className="pad-prep" aria-label="Next prep step">
      {prep.flight === null ? (
        <>
          <h2>Prep: not begun</h2>
          <Button className="act" onPress={() => beginFlight(plan.path)}>
            Begin a flight
          </Button>
        </>
      ) : (
        <NextStep key={prep.flight.path} plan={plan} prep={prep} units={units} isNext={isNext} />
      )}
    </section>
  );
}

function NextStep({ plan, prep, units, isNext }: Omit<PadPrepProps, "answer"> & { readonly prep: Prep }) {
  const line = nextLine(prep, units);
  const step = prep.data.state.steps.find(({ step: { id } }) => id === line?.id);
  const notBefore = step?.notBefore ?? null;
  const now = useNow(notBefore === null ? null : 1000);
  const [initials, setInitials] = useInitials();
  // asked for here only where the sheet never was signed on this device
  const [asks] = useState(initials === "");
  const { refusal, sign } = useSigning(prep, initials);
  if (line === null)
    return (
      <>
        <h2>Prep: {prepWords(prep)}</h2>
        {!prep.data.state.flown && <p>Nothing can be signed now: see the sheet.</p>}
        <ToSheet path={plan.path} />
      </>
    );
  const left = secondsLeft(notBefore, now);
  return (
    <>
      <h2>Prep: {prepWords(prep)}; next</h2>
      <h3>{line.title}</h3>
      {line.hazards.length > 0 && (
        <div className="caution" role="note">
          <b>{line.hazards[0]}</b>
          {line.hazards.slice(1).join(" ")}
        </div>
      )}
      {line.how.map((each) => (
        <p key={each}>{each}</p>
      ))}
      {asks && (
        <TextField className="field" value={initials} onChange={setInitials} autoComplete="off">
          <Label>Your initials</Label>
          <Input className="field-control" maxLength={6} />
        </TextField>
      )}
      {prep.waiting !== null && <p className="pad-note">{prep.waiting}</p>}
      <p role="status" className="prep-refusal">
        {refusal}
      </p>
      <Button
        className={isNext ? "next-act" : "act"}
        aria-label={`Sign: ${line.title}`}
        isDisabled={prep.waiting !== null || left > 0}
        onPress={() => sign((inputs) => signOff(line.id, inputs))}
      >
        {left > 0 ? `Wait ${left} s more` : line.status === "due-again" ? "Sign again" : "Sign"}
      </Button>
      <ToSheet path={plan.path} />
    </>
  );
}

function ToSheet({ path }: { readonly path: string }) {
  return (
    <a className="act" href={addressOf({ page: "plan", path })}>
      The whole sheet, misfire, scrub
    </a>
  );
}
