import { fieldGravity } from "../../air/gravity.js";
import { burnOf } from "../../motor/burn.js";
import { parseDesignation } from "../../motor/designation.js";
import { isHighPowerRocket } from "../../motor/high-power.js";
import { motorClass } from "../../motor/motor-class.js";
import { airframeWithBallast } from "../../rocket/mass.js";
import type { RuleFacts } from "../../rules/facts.js";
import { type Candidate, candidateIssues, type OpenPlan, planWith } from "./candidate.js";
import { beforeFlight, type Findings, findingsOf } from "./findings.js";
import type { CandidateFigures, JudgedMotor } from "./judged-motor.js";
import { mountFit } from "./mount-fit.js";
import type { ShortlistSpec } from "./spec.js";
import { broken, type Known, refusedFor, together } from "./verdicts.js";

function figuresOf({ air, rocket, ballast }: OpenPlan, { motor }: Candidate): CandidateFigures {
  const { totalImpulse, averageThrust } = burnOf(motor.thrust);
  const weight = (airframeWithBallast(rocket, ballast).mass + motor.loadedMass) * fieldGravity(air).at(0);
  return { motorClass: motorClass(totalImpulse), totalImpulse, averageThrust, thrustToWeight: averageThrust / weight };
}

/** As `flightFacts` has them, as far as no flight is needed. */
function factsBeforeFlight(
  { plan }: ShortlistSpec,
  candidate: Candidate,
  { motorClass, totalImpulse, averageThrust, thrustToWeight }: CandidateFigures,
): RuleFacts {
  const { stated = {}, motor } = planWith(plan, candidate);
  const { propellantMass, loadedMass, designation, delay } = motor;
  const certifiedThrust = designation === undefined ? undefined : parseDesignation(designation)?.averageThrust;
  const figures = {
    totalImpulse,
    averageThrust: certifiedThrust ?? averageThrust,
    propellantMass,
    sparking: stated.metalSponge === true,
  };
  const liftOffMass = airframeWithBallast(plan.rocket, plan.ballast).mass + loadedMass;
  return {
    ...(stated.certification === undefined ? {} : { certification: stated.certification }),
    ...(stated.motorCertified === undefined ? {} : { motorCertified: stated.motorCertified }),
    motorClass,
    highPower: isHighPowerRocket({ liftOffMass, motor: figures }),
    thrustToWeight,
    hasCharge: delay.kind !== "none",
    electronics: plan.recovery.electronics !== undefined,
  };
}

/** What needs no flight: that the motor can be judged, that it fits, that it may be flown, that it is strong enough. */
export function looked(
  spec: ShortlistSpec,
  candidate: Candidate,
): { readonly known: Known; readonly findings: Findings } {
  const figures = figuresOf(spec.plan, candidate);
  const fit = { notChecked: [], ...mountFit(spec.plan.rocket, candidate.motor) };
  const ruled = findingsOf(factsBeforeFlight(spec, candidate, figures), beforeFlight, spec.plan.ruleSet);
  return { known: { candidate, figures, launch: null, drawn: null }, findings: together(fit, ruled) };
}

/**
 * What can be said of a motor without flying it; null where it has to be flown.
 *
 * @throws never for a motor that is wrong: it is told as broken
 */
export function judgeUnflown(spec: ShortlistSpec, candidate: Candidate): JudgedMotor | null {
  const issues = candidateIssues(candidate);
  if (issues.length > 0) return broken(candidate, issues);
  const { known, findings } = looked(spec, candidate);
  return refusedFor(known, findings);
}
