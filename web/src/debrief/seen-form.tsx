import { flownOutcomeWords } from "@delaywright/documents";
import { ChoiceField, DocumentScope, QuantityField, TextField } from "../parts/index.js";

export interface SeenFormProps {
  /** Of the flight's document. */
  readonly path: string;
  /** There is a log, which tells top and delay. */
  readonly logged: boolean;
}

const outcomes = Object.freeze(
  Object.fromEntries((["clean", "fast", "low", "grounded"] as const).map((each) => [each, flownOutcomeWords(each)])),
);

const bounds = Object.freeze({ seen: "seen or heard", "at-least": "at least this", "at-most": "at most this" });

/** What the flyer saw: beside a log what it cannot tell, without one all that is known. */
export function SeenForm({ path, logged }: SeenFormProps) {
  return (
    <DocumentScope path={path}>
      <div className="debrief-seen">
        <TextField path={path} field="flown" label="When it flew" hint="day and time, as 2026-05-02T10:40" />
        <QuantityField path={path} field="findings.set" label="Delay as cut" leftOut="by the plan" />
        <ChoiceField
          path={path}
          field="findings.outcome"
          label="How it came in"
          words={outcomes}
          leftOut={logged ? "as the log tells" : "not seen"}
        />
        {!logged && (
          <>
            <QuantityField path={path} field="findings.apogee" label="Top" leftOut="not known" />
            <QuantityField
              path={path}
              field="findings.delay"
              label="Delay as heard, from burnout to the charge"
              leftOut="not heard"
            />
            <ChoiceField
              path={path}
              field="findings.delayIs"
              label="That delay is"
              words={bounds}
              leftOut="seen or heard"
            />
          </>
        )}
      </div>
    </DocumentScope>
  );
}
