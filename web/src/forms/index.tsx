import { planPackingParts, planRulesParts, planSiteParts } from "./day-parts.js";
import { fieldParts } from "./field-parts.js";
import { DocumentForm, type FormProps, PlanPartForm } from "./form.js";
import { motorInHandParts, motorParts } from "./motor-parts.js";
import {
  flyerParts,
  planBallastParts,
  planChoiceParts,
  planDayParts,
  planGuideParts,
  planHeadParts,
  planLimitsParts,
  planWeatherParts,
} from "./plan-parts.js";
import { rocketParts } from "./rocket-parts.js";
import { ruleSetParts } from "./rule-set-parts.js";
import { planSpreadParts } from "./spread-parts.js";
import { toolParts } from "./tool-parts.js";

export { blankDocument } from "../parts/blank-document.js";
export type { FormProps } from "./form.js";

/** A rocket, as it was measured. */
export function RocketForm(props: FormProps) {
  return <DocumentForm {...props} parts={rocketParts} />;
}

/** A motor type. */
export function MotorForm(props: FormProps) {
  return <DocumentForm {...props} parts={motorParts} />;
}

/** One physical motor, without its readings. */
export function MotorInHandForm(props: FormProps) {
  return <DocumentForm {...props} parts={motorInHandParts} />;
}

/** A cutting tool. */
export function ToolForm(props: FormProps) {
  return <DocumentForm {...props} parts={toolParts} />;
}

/** A place to fly from. */
export function FieldForm(props: FormProps) {
  return <DocumentForm {...props} parts={fieldParts} />;
}

/** Who flies. */
export function FlyerForm(props: FormProps) {
  return <DocumentForm {...props} parts={flyerParts} />;
}

/** The day of a plan. */
export function PlanDayForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planDayParts} />;
}

/** Name, flyer and notes of a plan; its documents are chosen at the head of their sections. */
export function PlanHeadForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planHeadParts} />;
}

/** The weather of a plan. */
export function PlanWeatherForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planWeatherParts} />;
}

/** The launch guide of a plan. */
export function PlanGuideForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planGuideParts} />;
}

/** What a clean opening is, and which odds are enough. */
export function PlanLimitsForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planLimitsParts} />;
}

/** How uncertain each input of a plan is. */
export function PlanSpreadForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planSpreadParts} />;
}

/** What the rules ask of the day at the field. */
export function PlanSiteForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planSiteParts} />;
}

/** What the flyer wants of the packing. */
export function PlanPackingForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planPackingParts} />;
}

/** The rules that a plan is held against. */
export function PlanRulesForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planRulesParts} />;
}

/** A club's own rules. */
export function RuleSetForm(props: FormProps) {
  return <DocumentForm {...props} parts={ruleSetParts} />;
}

/** Ballast for this flight. */
export function PlanBallastForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planBallastParts} />;
}

/** The flyer's own setting. */
export function PlanChoiceForm(props: FormProps) {
  return <PlanPartForm {...props} parts={planChoiceParts} />;
}
