import { type FactName, isMissing, type RuleFacts } from "./facts.js";
import type { Applies } from "./rule.js";

/** Classes of amateur rockets: 1 model, 2 high power, 3 anything else. */
export type AviationClass = 1 | 2 | 3;

/** Highest combined impulse of a class 2 rocket [N s]. */
const classTwoImpulse = 40_960;

/**
 * Class of a rocket under the aviation rule.
 *
 * @param facts propellant mass, lift-off mass, materials, total impulse
 * @returns the class, or the names of the facts without which it cannot be told
 * @source 14 CFR 101.22, read in the regulation
 * @example
 * aviationClass({ propellantMass: 0.16, totalImpulse: 300 }); // 2
 */
export function aviationClass(
  facts: Pick<RuleFacts, "propellantMass" | "liftOffMass" | "lightMaterials" | "totalImpulse">,
): AviationClass | readonly FactName[] {
  const unless = (name: FactName, met: boolean | undefined) =>
    [name, isMissing(facts, name) ? undefined : met] as const;
  const { propellantMass = Number.NaN, liftOffMass = Number.NaN, totalImpulse = Number.NaN } = facts;
  const classOne = [
    unless("propellantMass", propellantMass <= 0.125),
    unless("liftOffMass", liftOffMass <= 1.5),
    unless("lightMaterials", facts.lightMaterials),
  ];
  if (classOne.every(([, met]) => met === true)) return 1;
  const missing = classOne.filter(([, met]) => met === undefined).map(([name]) => name);
  if (missing.length > 0 && !classOne.some(([, met]) => met === false)) return missing;
  if (isMissing(facts, "totalImpulse")) return ["totalImpulse"];
  return totalImpulse <= classTwoImpulse ? 2 : 3;
}

/** Applies to every rocket that is not of class 1. */
export function aboveClassOne(facts: RuleFacts): Applies {
  const found = aviationClass(facts);
  return typeof found === "number" ? found !== 1 : found;
}

/** One thing that the aviation rule asks for. */
export interface AviationDuty {
  /** Stable, in kebab case. */
  readonly code: string;
  readonly section: string;
  readonly from: AviationClass;
  /** The rule that judges it; null: nothing that can be computed, it is for the flyer and the launch's organiser. */
  readonly rule: string | null;
  readonly status: "verified" | "memory";
}

const duties: readonly AviationDuty[] = Object.freeze(
  (
    [
      ["suborbital", "101.23", 1, null, "verified"],
      ["not-into-foreign-territory", "101.23", 1, null, "verified"],
      ["unmanned", "101.23", 1, null, "verified"],
      ["no-hazard", "101.23", 1, null, "verified"],
      ["cloud-cover", "101.25(a)", 2, "cloud-cover", "verified"],
      ["visibility", "101.25(b)", 2, "visibility", "verified"],
      ["cloud-entry", "101.25(c)", 2, "cloud-entry", "verified"],
      ["daylight", "101.25(d)", 2, "daylight", "verified"],
      ["airport-distance", "101.25(e)", 2, "airport-distance", "verified"],
      ["controlled-airspace", "101.25(f)", 2, "controlled-airspace", "verified"],
      ["uninvolved-distance", "101.25(g)", 2, "uninvolved-distance", "verified"],
      ["adult-in-charge", "101.25(h)", 2, "adult-in-charge", "verified"],
      ["fire-means", "101.25(i)", 2, "fire-means", "verified"],
      ["notice", "101.27", 2, "aviation-notice", "verified"],
      ["information", "101.29(a)", 2, null, "verified"],
      ["information-45-days-before", "101.29(a)", 2, null, "memory"],
      ["information-of-class-3", "101.29(b)", 3, null, "verified"],
    ] as const
  ).map(([code, section, from, rule, status]) => Object.freeze({ code, section, from, rule, status })),
);

/**
 * What the aviation rule asks of a class of rockets, in the order of its sections.
 *
 * @param aviationClass from `aviationClass`
 * @source 14 CFR 101.23 to 101.29, read in the regulation but for the 45 days of class 2
 * @example
 * aviationDuties(1).length; // 4
 */
export function aviationDuties(aviationClass: AviationClass): readonly AviationDuty[] {
  return duties.filter(({ from }) => from <= aviationClass);
}
