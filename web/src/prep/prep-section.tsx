import {
  delayWords,
  type PrepData,
  prepBranchLines,
  prepTitle,
  signMisfire,
  signOff,
  signScrub,
  takeBackSignOff,
  type UnitSystem,
} from "@delaywright/documents";
import type { PrepBranch, PrepStepId } from "@delaywright/engine";
import { useId, useRef, useState } from "react";
import { Button, Input, Label, TextField } from "react-aria-components";
import type { PlanAnswer } from "../compute/index.js";
import { Fold, type FoldMark, printAlone } from "../parts/index.js";
import { useNow } from "../standing/use-now.js";
import { useEntryPart, useSettings } from "../store/index.js";
import { AskReason } from "./ask-reason.js";
import { beginFlight } from "./flights.js";
import { PrepSheet } from "./prep-sheet.js";
import { prepWords } from "./prep-words.js";
import { useInitials } from "./use-initials.js";
import { type Prep, usePrep } from "./use-prep.js";
import { useSigning } from "./use-signing.js";

export interface PrepSectionProps {
  /** Of the plan. */
  readonly path: string;
  readonly answer: PlanAnswer;
  readonly mark?: FoldMark;
}

/** The prep sheet of a plan: what is done in which order, signed step by step on a flight of its own. */
export function PrepSection({ path, answer, mark = "open" }: PrepSectionProps) {
  const name = useEntryPart(path, (entry) => entry?.name);
  const prep = usePrep(path, answer);
  const [{ units }] = useSettings();
  if (name === undefined) return null;
  if (prep === null)
    return (
      <Fold id="prep" title="Prep" mark={mark}>
        <p>The prep sheet needs an answer first.</p>
      </Fold>
    );
  return (
    <Fold id="prep" title="Prep" aside={prepWords(prep)} mark={mark}>
      <SignedSheet key={prep.flight?.path ?? ""} path={path} name={name} prep={prep} units={units} />
    </Fold>
  );
}

interface SignedSheetProps {
  /** Of the plan. */
  readonly path: string;
  readonly name: string;
  readonly prep: Prep;
  readonly units: UnitSystem;
}

type Asked = { readonly what: "take-back"; readonly step: PrepStepId } | { readonly what: PrepBranch };

function SignedSheet({ path, name, prep, units }: SignedSheetProps) {
  const { flight, data, waiting } = prep;
  const now = useNow(
    prep.data.state.steps.some(({ notBefore, status }) => notBefore !== null && status !== "signed") ? 1000 : null,
  );
  const [initials, setInitials] = useInitials();
  const [asked, setAsked] = useState<Asked | null>(null);
  const { refusal, sign } = useSigning(prep, initials);
  const sheet = useRef<HTMLDivElement>(null);
  // before a flight is begun the steps are there to be read, not signed
  const [unfolded, setUnfolded] = useState(flight !== null);
  const steps = useId();
  const { state } = data;
  const closed = flight === null ? "Begin a flight first." : waiting;
  return (
    <>
      {(flight === null || (state.flown && state.next === null)) && (
        <p className="sheet-line">
          <Button className="act" onPress={() => beginFlight(path)}>
            {flight === null ? "Begin a flight" : "Begin another flight"}
          </Button>
        </p>
      )}
      {flight !== null && (
        <TextField className="field prep-initials" value={initials} onChange={setInitials} autoComplete="off">
          <Label>Your initials</Label>
          <Input className="field-control" maxLength={6} />
        </TextField>
      )}
      {waiting !== null && <p className="sheet-line">{waiting}</p>}
      <p className="prep-refusal" role="status">
        {refusal}
      </p>
      {flight === null && (
        <p className="sheet-line">
          <Button className="act" aria-expanded={unfolded} aria-controls={steps} onPress={() => setUnfolded(!unfolded)}>
            {unfolded ? "Fold the steps" : `Read all ${state.steps.length} steps`}
          </Button>
        </p>
      )}
      <div ref={sheet} id={steps} className={unfolded ? undefined : "prep-folded"}>
        <header className="print-only">
          <h2>Prep sheet: {name}</h2>
          <p>
            {data.setting === null ? "" : `Delay ${delayWords(data.setting.delay)}. `}Initials and time beside each
            step.
          </p>
        </header>
        <div className={flight === null && unfolded ? "prep-columns prep-read" : "prep-columns"}>
          <PrepSheet
            data={data}
            units={units}
            now={now}
            closed={closed}
            onSign={(step) => sign((inputs) => signOff(step, inputs))}
            onTakeBack={(step) => setAsked({ what: "take-back", step })}
          />
        </div>
      </div>
      <p className="prep-print">
        <Button className="act" onPress={() => printAlone(sheet.current)}>
          Print the prep sheet
        </Button>
      </p>
      {flight !== null && !state.flown && (
        <p className="prep-branches">
          <Button className="act prep-sign" isDisabled={closed !== null} onPress={() => setAsked({ what: "misfire" })}>
            It did not light
          </Button>
          <Button className="act prep-sign" isDisabled={closed !== null} onPress={() => setAsked({ what: "scrub" })}>
            Call the flight off
          </Button>
        </p>
      )}
      {asked?.what === "take-back" && (
        <AskReason
          isOpen
          title={`Take back: ${prepTitle(asked.step).toLowerCase()}?`}
          act="Take it back"
          label="Why"
          isRequired
          onAct={(reason) => sign((inputs) => takeBackSignOff(asked.step, inputs), reason)}
          onClose={() => setAsked(null)}
        >
          <p>Every step that rests on it must be signed again. Both signatures stay on record.</p>
        </AskReason>
      )}
      {(asked?.what === "scrub" || asked?.what === "misfire") && (
        <AskBranch
          branch={asked.what}
          data={data}
          onAct={(reason) => sign(asked.what === "scrub" ? signScrub : signMisfire, reason)}
          onClose={() => setAsked(null)}
        />
      )}
    </>
  );
}

interface AskBranchProps {
  readonly branch: PrepBranch;
  readonly data: PrepData;
  readonly onAct: (reason: string) => void;
  readonly onClose: () => void;
}

/** Says what a scrub or a misfire takes back, before it does. */
function AskBranch({ branch, data, onAct, onClose }: AskBranchProps) {
  const { steps, again } = prepBranchLines(data, branch);
  return (
    <AskReason
      isOpen
      title={branch === "scrub" ? "Call the flight off?" : "It did not light?"}
      act={branch === "scrub" ? "Call it off" : "Misfire"}
      label={branch === "scrub" ? "Why" : "What was seen"}
      onAct={onAct}
      onClose={onClose}
    >
      {branch === "misfire" && (
        <p>
          <b>Nobody goes near.</b>
        </p>
      )}
      <p>Then: {steps.map(({ title }) => title.toLowerCase()).join("; ")}.</p>
      <p>To be signed again: {again.map((title) => title.toLowerCase()).join("; ")}.</p>
    </AskReason>
  );
}
