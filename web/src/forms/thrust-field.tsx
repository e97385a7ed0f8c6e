import "./forms.css";
import {
  type Fault,
  issueSentence,
  type Raw,
  type ReadThrust,
  readThrust,
  readThrustFile,
} from "@delaywright/documents";
import { useState } from "react";
import { Button, Label, TextArea, TextField } from "react-aria-components";
import { fieldId } from "../parts/field-id.js";
import { isKeyed, joinField, valueAt, withValue } from "../parts/field-path.js";
import { ColumnsField, FileDrop, More } from "../parts/index.js";
import { useNotes } from "../parts/scope.js";
import { changeDocuments, useEntry } from "../store/index.js";

/** A curve that was read, as it stands in a motor document, or what is wrong with it. */
export type ThrustRead =
  | { readonly ok: true; readonly thrust: { readonly time: readonly number[]; readonly newtons: readonly number[] } }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Reads a thrust curve from comma-separated values, as a motor document keeps it. */
export function thrustFrom(text: string): ThrustRead {
  return asKept(readThrust(text));
}

/** Reads a thrust curve from a file, as a motor document keeps it. */
function thrustFromFile(bytes: Uint8Array): ThrustRead {
  return asKept(readThrustFile(bytes));
}

function asKept(read: ReadThrust): ThrustRead {
  if (!read.ok) return read;
  return { ok: true, thrust: { time: read.curve.times, newtons: read.curve.thrusts } };
}

function stateWords(thrust: unknown): string | undefined {
  if (typeof thrust === "string") return `from the file ${thrust}`;
  const time = isKeyed(thrust) && Array.isArray(thrust["time"]) ? thrust["time"] : [];
  const last: unknown = time.at(-1);
  if (time.length === 0) return undefined;
  return `${time.length} points${typeof last === "number" ? `, to ${last}\u202fs` : ""}`;
}

export interface ThrustFieldProps {
  readonly path: string;
  readonly base: string;
}

/** Faults that are shown at once. */
const MOST_SHOWN = 6;

/** The thrust curve: from a CSV file, from pasted lines, or point by point. It is kept inside the motor. */
export function ThrustField({ path, base }: ThrustFieldProps) {
  const entry = useEntry(path);
  const { doubts, issues } = useNotes(path);
  const [faults, setFaults] = useState<readonly Fault[]>([]);
  const [pasted, setPasted] = useState("");
  const at = joinField(base, "thrust");
  const thrust = valueAt(entry?.raw, at);
  const keep = (value: unknown, label: string) =>
    changeDocuments(label, [{ path, raw: withValue(entry?.raw ?? {}, at, value) as Raw }]);
  const take = (read: ThrustRead, label: string) => {
    setFaults(read.ok ? [] : read.faults);
    if (read.ok) keep(read.thrust, label);
    return read.ok;
  };
  const told = issues.filter((issue) => issue.path === at && issue.code !== "missing");
  return (
    <div className="thrust" id={fieldId(path, at)} tabIndex={-1}>
      <p className="thrust-head">
        <span>Thrust curve</span>
        {stateWords(thrust) === undefined ? (
          <b className="field-aside field-needed">needed</b>
        ) : (
          <span className="quiet">{stateWords(thrust)}</span>
        )}
      </p>
      <FileDrop
        label="Choose a CSV file"
        hint="time and thrust, or drop it here"
        accept={[".csv", ".txt", ".tsv", "text/csv", "text/plain"]}
        onFiles={async ([file]) => {
          if (file !== undefined)
            take(thrustFromFile(new Uint8Array(await file.arrayBuffer())), "Thrust curve from a file");
        }}
      />
      {faults.length > 0 && (
        <div className="thrust-issues" role="alert">
          <p>
            <b>This curve cannot be read.</b> {thrust === undefined ? "" : "The one before it still counts."}
          </p>
          <ul>
            {faults.slice(0, MOST_SHOWN).map((fault) => (
              <li key={fault.path + fault.code}>{issueSentence(fault)}</li>
            ))}
          </ul>
          {faults.length > MOST_SHOWN && <p>and {faults.length - MOST_SHOWN} more lines</p>}
        </div>
      )}
      {told.map((issue) => (
        <p key={issue.code} className="field-error">
          {issueSentence({ ...issue, path: "" })}
        </p>
      ))}
      {doubts
        .filter((doubt) => doubt.path === at || doubt.path === joinField(base, "designation"))
        .map((doubt) => (
          <p key={doubt.code} className="field-notes">
            <span className="field-doubt">
              Unlikely: {doubt.found}; expected: {doubt.expected}
            </span>
          </p>
        ))}
      <More title="Paste a curve">
        <TextField value={pasted} onChange={setPasted}>
          <Label className="quiet">
            One point a line, for example 0.10, 190. Seconds and newtons unless a heading says otherwise.
          </Label>
          <TextArea spellCheck={false} />
        </TextField>
        <p className="thrust-acts">
          <Button
            className="act"
            isDisabled={pasted.trim() === ""}
            onPress={() => take(thrustFrom(pasted), "Thrust curve pasted") && setPasted("")}
          >
            Take this curve
          </Button>
        </p>
      </More>
      <More title="Edit the points">
        {typeof thrust === "string" ? (
          <p className="field-notes">
            The points stand in the file {thrust}. Choose that file above, and they are kept inside the motor.
          </p>
        ) : (
          <ColumnsField
            path={path}
            field={at}
            label="Points"
            columns={[
              { key: "time", label: "seconds" },
              { key: "newtons", label: "newtons" },
            ]}
          />
        )}
      </More>
    </div>
  );
}
