import type { Issue } from "../../issues.js";
import { thrustIssues } from "../../motor/checks.js";
import type { Motor } from "../../motor/motor.js";
import type { DecisionInputs } from "../inputs.js";
import type { StatedFacts } from "../stated-facts.js";

/** What documents state of a motor, for the rules; what is left out is not known. */
export type StatedOfMotor = Pick<StatedFacts, "motorCertified" | "metalSponge" | "makerMostLiftOffMass">;

/** A motor of the library, as a shortlist is asked about it. */
export interface Candidate {
  /** Tells it from all others: a path, for example. */
  readonly id: string;
  readonly motor: Motor;
  /** In the flyer's own currency; left out: not known. */
  readonly price?: number;
  readonly stated?: StatedOfMotor;
}

/** A plan whose motor is still open: a choice and a cut belong to one motor, and are no part of it. */
export type OpenPlan = Omit<DecisionInputs, "motor" | "choice" | "cutSoFar">;

/**
 * The plan on one motor: what is stated of another motor is left behind.
 *
 * @example
 * await decide(planWith(plan, candidate), { draws: 500 }); // the figures of its row
 */
export function planWith(plan: OpenPlan, { motor, stated: own = {} }: Candidate): DecisionInputs {
  const { motorCertified: _, metalSponge: __, makerMostLiftOffMass: ___, ...others } = plan.stated ?? {};
  const { motorCharge: ____, ...packed } = plan.packing ?? {};
  return {
    ...plan,
    motor,
    stated: { ...others, ...own },
    ...(plan.packing === undefined ? {} : { packing: packed }),
  };
}

/**
 * Everything that keeps a candidate from being flown at all, at once; empty for one that can be judged.
 *
 * @example
 * candidateIssues({ id: "one", motor: { ...motor, loadedMass: Number.NaN } })[0]?.path; // "loadedMass"
 */
export function candidateIssues({ motor }: Candidate): Issue[] {
  const { thrust, diameter, length, loadedMass, propellantMass, delay } = motor;
  const issues = Object.entries({ diameter, length, loadedMass, propellantMass }).flatMap(([path, found]) =>
    Number.isFinite(found) && found > 0 ? [] : [{ code: "not-positive", path, found, accepted: "finite, > 0" }],
  );
  if (propellantMass >= loadedMass)
    issues.push({
      code: "propellant-above-loaded",
      path: "propellantMass",
      found: propellantMass,
      accepted: `< ${loadedMass} kg`,
    });
  const set = delay.kind === "adjustable" ? delay.longest : delay.kind === "fixed" ? delay.seconds : 0;
  if (!(Number.isFinite(set) && set >= 0))
    issues.push({ code: "delay-not-finite", path: "delay", found: set, accepted: "finite, >= 0 s" });
  return [...issues, ...thrustIssues(thrust, "thrust")];
}
