import { amountIn, GLUE } from "@delaywright/documents";
import { Button } from "react-aria-components";
import { addressOf } from "../../app/router.js";
import type { PlanFacts } from "../../compute/index.js";
import { MotorForm, MotorInHandForm } from "../../forms/index.js";
import { DocumentField, Fold, More, revealField } from "../../parts/index.js";
import { thrustProps } from "../../pictures/from-answer.js";
import { ThrustCurve } from "../../pictures/thrust-curve.js";
import { sectionOfIssue } from "../../standing/next-act.js";
import { fieldWithin, type PartOfPlan } from "../../standing/plan-documents.js";
import type { SectionProps } from "./section-props.js";

/** The motor: the one in hand, its type, and whether its instructions allow a cut. */
export function MotorSection({ documents, answer, state, units }: SectionProps) {
  const { plan, motor, inHand } = documents;
  const { told, issues } = answer;
  const wrong =
    motor !== null && issues.some((issue) => issue.file === motor.path && sectionOfIssue(issue, documents) === "motor");
  const doubts = told?.data.doubts;
  return (
    <Fold id={state.id} title={state.title} aside={state.aside} mark={state.mark}>
      <DocumentField path={plan.path} field="motor" label="Motor" />
      <p className="sheet-line">
        <a className="act" href={addressOf({ page: "shortlist", path: plan.path })}>
          Shortlist of my motors
        </a>
      </p>
      {inHand !== null && (
        <More title={`In hand: ${inHand.name}`} aside={lotWords(inHand)}>
          <MotorInHandForm path={inHand.path} within={inHand.within} issues={issues} doubts={doubts} />
        </More>
      )}
      {motor !== null && isAdjustable(motor) && <Instructions motor={motor} />}
      {told !== null && (
        <>
          <ThrustCurve {...thrustProps(told.facts)} units={units} />
          <p className="second sheet-line">{impulseWords(told.facts, units)}</p>
        </>
      )}
      {motor !== null && (
        <More title={`Motor type: ${motor.name}`} aside="delay, masses, thrust" open={wrong}>
          <MotorForm path={motor.path} within={motor.within} issues={issues} doubts={doubts} />
        </More>
      )}
    </Fold>
  );
}

function delayOf(motor: PartOfPlan): Readonly<Record<string, unknown>> {
  return (motor.raw["delay"] as Readonly<Record<string, unknown>> | undefined) ?? {};
}

function isAdjustable(motor: PartOfPlan): boolean {
  return delayOf(motor)["kind"] === "adjustable";
}

function lotWords({ raw }: PartOfPlan): string {
  return typeof raw["lot"] === "string" ? `lot ${raw["lot"]}` : "no lot entered";
}

/** Whether the motor's instructions are confirmed, and the way to confirm them. */
function Instructions({ motor }: { readonly motor: PartOfPlan }) {
  const found = delayOf(motor)["instructions"] as
    | { readonly allowCutting?: unknown; readonly tool?: unknown }
    | undefined;
  if (found?.allowCutting === true)
    return (
      <p className="sheet-confirm">
        <b>Cutting allowed</b>
        <span>
          by this motor's own instructions, as you confirmed
          {typeof found.tool === "string" ? `, with the tool that they name: ${found.tool}` : ""}.
        </span>
      </p>
    );
  return (
    <div className="sheet-confirm">
      <b>{found?.allowCutting === false ? "Cutting not allowed" : "Not confirmed"}</b>
      <span>
        Only this motor's own instructions say whether its delay may be cut. No cut is shown until you confirm that you
        read it there.{" "}
        <Button
          className="plan-link"
          onPress={() => revealField(motor.path, fieldWithin(motor, "delay.instructions.allowCutting"))}
        >
          Read them and confirm
        </Button>
      </span>
    </div>
  );
}

function impulseWords(facts: PlanFacts, units: "metric" | "imperial"): string {
  const letter = facts.motorClass;
  const impulse = `${facts.totalImpulse.toFixed(0)}${GLUE}N${GLUE}s`;
  const { kind, longest } = facts.element;
  const delay = kind === "none" ? "no delay" : kind === "fixed" ? "fixed delay" : `longest delay ${longest}${GLUE}s`;
  return `Class ${letter}: ${impulse} in ${amountIn(facts.burnEnd, "time", units)}, average ${amountIn(facts.averageThrust, "force", units)}; ${delay}.`;
}
