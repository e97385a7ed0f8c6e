import "./prep.css";
import { type PrepData, prepAuthority, prepLines, prepPhaseWords, type UnitSystem } from "@delaywright/documents";
import type { PrepStepId } from "@delaywright/engine";
import { BranchesOnPaper } from "./branches-on-paper.js";
import { PrepStep } from "./prep-step.js";
import { byPhase, secondsLeft } from "./prep-words.js";

export interface PrepSheetProps {
  readonly data: PrepData;
  readonly units: UnitSystem;
  readonly now: Date;
  /** Why nothing can be signed just now; null: it can. */
  readonly closed: string | null;
  readonly onSign: (step: PrepStepId) => void;
  readonly onTakeBack: (step: PrepStepId) => void;
}

/** Every step that is asked for, by the part of the day in which it is done. */
export function PrepSheet({ data, units, now, closed, onSign, onTakeBack }: PrepSheetProps) {
  const lines = prepLines(data, units);
  const { state } = data;
  const left = new Map(state.steps.map(({ step, notBefore }) => [step.id, secondsLeft(notBefore, now)]));
  return (
    <>
      <p className="sheet-line">{prepAuthority}</p>
      {byPhase(lines).map(([phase, steps]) => (
        <section className="prep-phase" key={phase} aria-label={prepPhaseWords(phase)}>
          <h3 className="sheet-part">{prepPhaseWords(phase)}</h3>
          <ol className="prep-steps">
            {steps.map((line) => (
              <PrepStep
                key={line.id}
                line={line}
                number={lines.indexOf(line) + 1}
                next={line.id === state.next}
                secondsLeft={left.get(line.id) ?? 0}
                closed={closed}
                onSign={() => onSign(line.id)}
                onTakeBack={() => onTakeBack(line.id)}
              />
            ))}
          </ol>
        </section>
      ))}
      <BranchesOnPaper data={data} units={units} />
    </>
  );
}
