import { amountIn, logFaultSentence, logReadSentence, type UnitSystem } from "@delaywright/documents";
import { Button } from "react-aria-components";
import { FileDrop, Notice, PickField } from "../parts/index.js";
import { secondsWords } from "../pictures/figures.js";
import type { Intake } from "./intake.js";
import { LogPreviewTable } from "./log-preview.js";
import { isEnough } from "./mapping.js";
import type { IntakeActs } from "./use-intake.js";

export interface LogIntakeProps {
  readonly intake: Intake;
  readonly acts: IntakeActs;
  /** The flight that the log is kept with, made where there is none. */
  readonly flight: () => string;
  readonly units: UnitSystem;
}

/** Takes a log in: a file is chosen, its columns are looked at and confirmed. */
export function LogIntake({ intake, acts, flight, units }: LogIntakeProps) {
  if (intake.state === "shown") return <Shown intake={intake} acts={acts} flight={flight} units={units} />;
  if (intake.state === "keeping")
    return (
      <p role="status" className="sheet-line">
        Keeping {intake.name} …
      </p>
    );
  return (
    <>
      <FileDrop
        label="Choose the altimeter's log"
        hint="any CSV, or drop it here"
        accept={[".csv", ".txt", ".tsv", ".log", "text/csv", "text/plain"]}
        onFiles={([file]) => file !== undefined && acts.choose(file)}
      />
      {intake.state === "reading" && (
        <p role="status" className="sheet-line">
          Reading {intake.name} …
        </p>
      )}
      {intake.state === "failed" && (
        <Notice urgent>
          <b>{intake.name} was not read:</b> {intake.why}. Nothing was changed.
        </Notice>
      )}
    </>
  );
}

interface ShownProps extends LogIntakeProps {
  readonly intake: Extract<Intake, { state: "shown" }>;
}

function Shown({ intake, acts, flight, units }: ShownProps) {
  const { file, previewed, mapping, remembered, changes, number, busy } = intake;
  const { preview } = previewed;
  const flights = previewed.ok ? previewed.flights : [];
  const highest = flights.reduce((best, { top }, i) => (top > (flights[best]?.top ?? 0) ? i : best), 0);
  const chosen = number ?? highest + 1;
  const known = remembered !== null && !changes;
  return (
    <section className="section log-shown" aria-busy={busy}>
      <h3>
        {file.name}{" "}
        <small>{previewed.ok ? logReadSentence({ rows: previewed.rows, layout: previewed.preview.layout }) : ""}</small>
      </h3>
      {!previewed.ok && (
        <Notice urgent>
          {previewed.faults.map((fault) => (
            <p key={`${fault.path} ${fault.code}`}>{logFaultSentence(fault)}</p>
          ))}
        </Notice>
      )}
      {known && (
        <p className="debrief-known">
          Columns as in <b>{remembered.name}</b>.{" "}
          <Button className="act" onPress={acts.change}>
            Change
          </Button>
        </p>
      )}
      {!known && preview !== null && (
        <>
          <p className="second">
            What does each column hold? Put right what is wrong; the next log with these headings is read alike.
          </p>
          <LogPreviewTable preview={preview} onMapping={acts.map} />
        </>
      )}
      {previewed.ok && flights.length === 0 && (
        <Notice urgent>No climb and fall is in this record. Check which column holds the height, and its unit.</Notice>
      )}
      {flights.length === 1 && (
        <p className="sheet-line">One flight is in it, top {amountIn(flights[0]?.top ?? 0, "distance", units)}.</p>
      )}
      {flights.length > 1 && (
        <PickField
          frame="debrief-choice"
          label={`Which of its ${flights.length} flights`}
          items={flights.map(({ liftOff, top }, i) => ({
            id: String(i + 1),
            word: `${i + 1}: lift-off at ${secondsWords(liftOff, 0)} of the record, top ${amountIn(top, "distance", units)}`,
          }))}
          chosen={String(chosen)}
          onChoose={(id) => acts.pick(Number(id))}
        />
      )}
      <div className="debrief-acts">
        <Button
          className="act debrief-do"
          isDisabled={busy || !previewed.ok || mapping === null || !isEnough(mapping) || flights.length === 0}
          onPress={() => acts.confirm(flight, flights.length > 1 ? chosen : null)}
        >
          {known ? "Take this log" : "The columns are right: take this log"}
        </Button>
        <Button className="act" onPress={acts.leave}>
          Leave it
        </Button>
      </div>
      <p className="hidden" role="status">
        {busy ? "Reading" : ""}
      </p>
    </section>
  );
}
