import { PlanBallastForm } from "../../forms/index.js";
import { RocketBodyForm } from "../../forms/rocket-halves.js";
import { DocumentField, Fold, More } from "../../parts/index.js";
import { outlineProps } from "../../pictures/from-answer.js";
import { Outline } from "../../pictures/outline.js";
import type { SectionProps } from "./section-props.js";

/** The rocket as it was measured, drawn to scale to show what was mistyped. */
export function RocketSection({ documents, answer, state, units }: SectionProps) {
  const { plan, rocket } = documents;
  const { told, issues } = answer;
  return (
    <Fold id={state.id} title={state.title} aside={state.aside} mark={state.mark}>
      <DocumentField path={plan.path} field="rocket" label="Rocket" />
      {told !== null && <Outline {...outlineProps(told)} units={units} />}
      {rocket !== null && (
        <RocketBodyForm path={rocket.path} within={rocket.within} issues={issues} doubts={told?.data.doubts} />
      )}
      <More title="Ballast for this flight" aside={ballastWords(plan.raw?.["ballast"])}>
        <PlanBallastForm path={plan.path} issues={issues} />
      </More>
    </Fold>
  );
}

function ballastWords(ballast: unknown): string {
  const mass = (ballast as { readonly mass?: unknown } | undefined)?.mass;
  return typeof mass === "string" && Number.parseFloat(mass) !== 0 ? mass : "none";
}
