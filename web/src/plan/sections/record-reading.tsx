import { type CutData, type Raw, type Reading, readingMeans, withReading } from "@delaywright/documents";
import { useId, useState } from "react";
import { Button, FieldError, Input, Label, TextArea, TextField } from "react-aria-components";
import type { PlanFacts } from "../../compute/index.js";
import { ConfirmDialog, focusAfterDialog } from "../../parts/index.js";
import { depthOf, type MotorCut } from "../../standing/motor-cut.js";
import type { PartOfPlan } from "../../standing/plan-documents.js";
import { changeDocuments, setField } from "../../store/index.js";
import {
  aidLines,
  depthUnit,
  isCorrection,
  issueOf,
  issueWords,
  meaningWords,
  readingOf,
  withUnit,
} from "./reading-words.js";
import type { SectionProps } from "./section-props.js";
import { useKeptText } from "./use-kept-text.js";

interface RecordReadingProps {
  readonly part: PartOfPlan;
  readonly cut: MotorCut;
  readonly facts: PlanFacts;
  /** What is to be cut; null: nothing more. */
  readonly target: CutData | null;
  readonly removedDepth: number | null;
  readonly units: SectionProps["units"];
}

/** The depth before and after, what it means, and the deliberate act of writing it down. */
export function RecordReading({ part, cut, facts, target, removedDepth, units }: RecordReadingProps) {
  const [before, setBefore] = useKeptText(part.path, `${part.within} before`);
  const [after, setAfter] = useKeptText(part.path, `${part.within} after`);
  const [note, setNote] = useKeptText(part.path, `${part.within} note`);
  const [asking, setAsking] = useState(false);
  const aid = useId();
  const reading = readingOf({ before, after, note }, target, removedDepth, new Date());
  const typed = reading.before !== undefined || reading.after !== undefined;
  const planned = target?.depth ?? undefined;
  const means = typed ? readingMeans({ ...cut, reading, planned }) : null;
  const issues = means?.issues ?? [];
  const [wrongBefore, wrongAfter] = [issueOf(issues, "before"), issueOf(issues, "after")];
  const corrects = issues.some(isCorrection);
  const refused = issues.some((issue) => !isCorrection(issue));
  const asksWhy = note !== "" || corrects;
  const words = means === null || refused ? null : meaningWords(means, units);
  const first = depthOf(cut.before ?? before);
  const record = (): void => {
    writeDown(part, cut.inHand, reading);
    for (const clear of [setBefore, setAfter, setNote]) clear("");
    // the button that opened the dialog has nothing more to record
    focusAfterDialog(() => document.querySelector<HTMLElement>(".sheet-means"));
  };
  return (
    <div className="sheet-reading">
      <p className="quiet" id={aid}>
        Depth from the rim of the case to the face of the grain, by depth gauge.
      </p>
      {cut.before === undefined ? (
        <Depth
          label="before the cut"
          value={before}
          onChange={setBefore}
          units={units}
          issue={wrongBefore && issueWords(wrongBefore)}
        />
      ) : (
        <p className="sheet-depth">
          <span>before the cut</span>
          <b>{cut.before}</b>
        </p>
      )}
      <Depth
        label={cut.after === undefined ? "after the cut" : "read now"}
        value={after}
        onChange={setAfter}
        units={units}
        issue={wrongAfter && issueWords(wrongAfter)}
      />
      {asksWhy && (
        <TextField className="sheet-why" value={note} onChange={setNote} isRequired>
          <Label>Why the earlier reading was off</Label>
          <TextArea className="field-control" />
        </TextField>
      )}
      {target !== null && <Aid lines={aidLines(facts.element, target, wrongBefore === null ? first : null, units)} />}
      <p className="sheet-means" aria-live="polite">
        {words}
      </p>
      <Button className="act sheet-record" isDisabled={!typed || issues.length > 0} onPress={() => setAsking(true)}>
        Record this reading
      </Button>
      <ConfirmDialog
        isOpen={asking}
        title={`Record for ${part.name}?`}
        act={
          reading.after === undefined ? "Record the depth before" : asksWhy ? "Record the correction" : "Record the cut"
        }
        onAct={record}
        onClose={() => setAsking(false)}
      >
        <Repeats part={part} reading={reading} words={words} />
      </ConfirmDialog>
    </div>
  );
}

interface DepthProps {
  readonly label: string;
  readonly value: string;
  readonly onChange: (text: string) => void;
  readonly units: SectionProps["units"];
  readonly issue: string | null;
}

/** A bare number is taken in the unit that is shown when it is typed, and has it from then on: another display changes no depth. */
function Depth({ label, value, onChange, units, issue }: DepthProps) {
  const [typed, setTyped] = useState<string | null>(null);
  return (
    <TextField
      className="sheet-depth"
      value={typed ?? value}
      onChange={(text) => {
        setTyped(text);
        onChange(withUnit(text, units));
      }}
      onBlur={() => setTyped(null)}
      isInvalid={issue !== null}
      validationBehavior="aria"
      autoComplete="off"
    >
      <Label>{label}</Label>
      <Input className="sheet-depth-input" placeholder={depthUnit(units)} inputMode="decimal" spellCheck={false} />
      <FieldError className="field-error">{issue}</FieldError>
    </TextField>
  );
}

function Aid({ lines }: { readonly lines: ReturnType<typeof aidLines> }) {
  if (lines.length === 0) return null;
  return (
    <table className="sheet-aid">
      <thead>
        <tr>
          <th scope="col">grows by</th>
          {lines[0]?.reads !== null && <th scope="col">gauge reads</th>}
          <th scope="col">leaves</th>
          <th scope="col">then</th>
        </tr>
      </thead>
      <tbody>
        {lines.map(({ grows, reads, delay, word }) => (
          <tr key={word} className={word === "stop here" ? "mine" : ""}>
            <td>{grows}</td>
            {reads !== null && <td>{reads}</td>}
            <td>{delay}</td>
            <td>{word}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Repeats what is about to be written down, and for which motor. */
function Repeats({
  part,
  reading,
  words,
}: {
  readonly part: PartOfPlan;
  readonly reading: Reading;
  readonly words: string | null;
}) {
  const lot = part.raw["lot"];
  const depths = [
    reading.before === undefined ? "" : `${reading.before} before the cut`,
    reading.after === undefined ? "" : `${reading.after} after the cut`,
  ];
  return (
    <>
      <p>
        <b>{depths.filter((depth) => depth !== "").join(", ")}</b>, read on {part.name}
        {typeof lot === "string" ? `, lot ${lot}` : ""}.
      </p>
      {words !== null && <p>{words}</p>}
      {reading.note !== undefined && <p>Correction: {reading.note}</p>}
      <p>
        {reading.after === undefined
          ? "Every later cut of this motor counts from this depth."
          : "Nothing goes back: the reading stays with this motor. A wrong one is put right by a new one with its reason."}
      </p>
    </>
  );
}

function writeDown(part: PartOfPlan, inHand: Raw, reading: Reading): void {
  const label = `reading of ${part.name}`;
  const written = withReading(inHand, reading);
  if (part.within === "") changeDocuments(label, [{ path: part.path, raw: written }]);
  else setField(part.path, part.within, written, label);
}
