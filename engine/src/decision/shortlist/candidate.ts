import type { Issue } from "../../issues.js";
import type { Learned } from "../../learning/learned.js";
import { ofAnotherLot } from "../../learning/learned-delay.js";
import { ofRocketAlone, withLearned } from "../../learning/with-learned.js";
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
 * The plan on one motor: what is stated of another motor is left behind. What flights taught of the rocket holds on every
 * motor, what they taught of the plan's own motor type on that alone.
 *
 * @example
 * await decide(planWith(plan, candidate), { draws: 500 }); // the figures of its row
 */
export function planWith(plan: OpenPlan, { motor, stated: ofMotor = {} }: Candidate): DecisionInputs {
  const { motorCertified: _, metalSponge: __, makerMostLiftOffMass: ___, ...others } = plan.stated ?? {};
  const { motorCharge: ____, ...packed } = plan.packing ?? {};
  const { learned, ...unlearned } = plan;
  const there: DecisionInputs = {
    ...unlearned,
    ...(learned === undefined ? {} : { rocket: learned.before.rocket, spread: learned.before.spread }),
    motor,
    stated: { ...others, ...ofMotor },
    ...(plan.packing === undefined ? {} : { packing: packed }),
  };
  if (learned === undefined) return there;
  const own = sameMotor(learned.before.motor, motor);
  return withLearned(there, own ? asOfAnyLot(learned) : ofRocketAlone(learned, there.spread));
}

/** The motor in hand and its lot are no part of an open plan. */
function asOfAnyLot(learned: Learned): Learned {
  return learned.delay === undefined ? learned : { ...learned, delay: ofAnotherLot(learned.delay) };
}

/** Are the figures that a flight is reckoned from the same? */
function sameMotor(a: Motor, b: Motor): boolean {
  const told = ({ thrust, loadedMass, propellantMass, diameter, length, delay }: Motor): string =>
    JSON.stringify([thrust.times, thrust.thrusts, loadedMass, propellantMass, diameter, length, delay]);
  return told(a) === told(b);
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
