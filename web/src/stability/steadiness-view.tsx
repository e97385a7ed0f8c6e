import {
  guideExitAngleSentence,
  modelsApartSentence,
  type SteadinessData,
  stabilityColumnsNote,
  stabilityVerdictSentences,
  swingSentences,
  type UnitSystem,
} from "@delaywright/documents";
import { type SteadinessAnswer, type Told, useSteadiness } from "../compute/index.js";
import { StabilityCloseUp } from "../pictures/stability-close-up.js";
import { StabilityMargin } from "../pictures/stability-margin.js";
import { StabilityOverTime } from "../pictures/stability-over-time.js";
import type { SectionProps } from "../plan/sections/section-props.js";
import { MomentsTable } from "./moments-table.js";
import "./steadiness.css";

/** Three flights of the plan, asked of the desk while this is on the page. */
export function SteadinessView({ documents, answer, age, units }: SectionProps) {
  const { told } = answer;
  const found = useSteadiness(documents.plan.path, told !== null);
  if (told === null || found.steadiness === null)
    return <p className="quiet sheet-picture-room">{waitingWords(found)}</p>;
  const state = !found.fresh ? "settling" : age?.stale === true ? "stale" : "settled";
  return (
    <div className="steady">
      <p className="print-only">
        <b>How steady it flies, as a rigid body</b>
      </p>
      {found.failure !== null && <p className="sheet-line">{found.failure}</p>}
      <Steadiness data={found.steadiness} leastMargin={leastMarginOf(told)} state={state} units={units} />
    </div>
  );
}

function waitingWords({ state, failure }: SteadinessAnswer): string {
  if (failure !== null) return failure;
  return state === "wrong" ? "The documents have issues: nothing is flown." : "Flying it as a rigid body.";
}

/** The margin that the rules ask for as it leaves the guide [calibres]. */
function leastMarginOf({ data }: Told): number | null {
  return data.checks.find(({ code }) => code === "margin-at-guide-exit")?.limit ?? null;
}

export interface SteadinessProps {
  readonly data: SteadinessData;
  readonly leastMargin: number | null;
  readonly state: "settling" | "settled" | "stale";
  readonly units: UnitSystem;
}

/** What the three flights say: the verdict, the models apart, the swing, the margin. */
export function Steadiness({ data, leastMargin, state, units }: SteadinessProps) {
  const { stability } = data;
  const angle = guideExitAngleSentence(stability, units);
  return (
    <>
      {stabilityVerdictSentences(stability).map((sentence) => (
        <p key={sentence} className="sheet-line">
          {sentence}
        </p>
      ))}
      <p className="sheet-line">{modelsApartSentence(data, units)}</p>
      {stability.moments.length > 0 && (
        <>
          <StabilityOverTime data={data} state={state} leastMargin={leastMargin} />
          <h4 className="steady-part">The first seconds, and burnout</h4>
          <StabilityCloseUp data={data} state={state} />
          <ul className="sheet-lines">
            {[angle, ...swingSentences(data)].map(
              (sentence) => sentence !== null && <li key={sentence}>{sentence}</li>,
            )}
          </ul>
          <h4 className="steady-part">Margin and damping</h4>
          <MomentsTable moments={stability.moments} units={units} />
          <p className="quiet">{stabilityColumnsNote}</p>
          <StabilityMargin data={data} state={state} />
        </>
      )}
    </>
  );
}
