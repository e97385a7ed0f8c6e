import type { Issue } from "@delaywright/documents";
import { PlanBallastForm } from "../../forms/index.js";
import { RocketMeasuredForm, RocketShapeForm } from "../../forms/rocket-halves.js";
import { DocumentField, Fold, More } from "../../parts/index.js";
import { outlineProps } from "../../pictures/from-answer.js";
import { Outline } from "../../pictures/outline.js";
import { sectionOfIssue } from "../../standing/next-act.js";
import type { SectionProps } from "./section-props.js";

/** The rocket as it was measured, drawn to scale to show what was mistyped. */
export function RocketSection({ documents, answer, state, units }: SectionProps) {
  const { plan, rocket } = documents;
  const { told, issues } = answer;
  const form = rocket && { path: rocket.path, within: rocket.within, issues, doubts: told?.data.doubts };
  const wrong = isWrong(issues, documents);
  return (
    <Fold id={state.id} title={state.title} aside={state.aside} mark={state.mark}>
      <DocumentField path={plan.path} field="rocket" label="Rocket" />
      {form !== null && <RocketMeasuredForm {...form} />}
      {told !== null && <Outline {...outlineProps(told)} units={units} />}
      {form !== null && (
        <More title="Shape, fins, mount" aside="as measured" open={wrong}>
          <RocketShapeForm {...form} />
        </More>
      )}
      <More title="Ballast for this flight" aside={ballastWords(plan.raw?.["ballast"])}>
        <PlanBallastForm path={plan.path} issues={issues} />
      </More>
    </Fold>
  );
}

/** Something of the rocket is wrong or missing. */
function isWrong(issues: readonly Issue[], documents: SectionProps["documents"]): boolean {
  return issues.some((issue) => issue.file === documents.rocket?.path && sectionOfIssue(issue, documents) === "rocket");
}

function ballastWords(ballast: unknown): string {
  const mass = (ballast as { readonly mass?: unknown } | undefined)?.mass;
  return typeof mass === "string" && Number.parseFloat(mass) !== 0 ? mass : "none";
}
