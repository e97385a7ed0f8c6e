import type {
  BayFindings,
  ChargeCaveat,
  MotorChargeCode,
  MotorChargeFinding,
  PressureBasis,
  ShearPinCaveat,
  StaticPortFindings,
} from "@delaywright/engine";
import type { UnitSystem } from "../quantity/systems.js";
import { amount, decimals, figureWords, glued, powderWords, rangeWords } from "./numbers.en.js";

const POUND_PER_SQUARE_INCH = 6894.757_293_168;
/** [m³]. @source international inch, as in `units.ts` */
const CUBIC_INCH = 0.0254 ** 3;

/** Two amounts of powder that are the ends of one range, as `powderWords` tells one. */
function powderRange(from: number, to: number, units: UnitSystem): string {
  const grams = rangeWords(from, to, "smallMass", "metric", 2);
  return units === "metric" ? grams : `${rangeWords(from, to, "smallMass", "imperial", 2, 3)} (${grams})`;
}

/** A pressure rise as flyers say it, with its metric figure. */
const pressure = (pascals: number): string =>
  `${amount(pascals / POUND_PER_SQUARE_INCH, "psi", 1)} (${amount(pascals / 1000, "kPa")})`;

const volumeWords = (volume: number, units: UnitSystem): string =>
  units === "metric" ? amount(1e6 * volume, "cm³") : amount(volume / CUBIC_INCH, "in³", 1);

const bases: Readonly<Record<PressureBasis, string>> = Object.freeze({
  stated: "the pressure that you want",
  separation: "what parts the joint",
  "least-usual": "the least that is usual, which parts the joint too",
  usual: "the usual pressure: what holds the joint is not known",
});

/** The charge that a bay needs, the usual range, its pins, and what parts it. */
export function bayChargeSentences(
  { volume, pins, separation, needed, usualCharges }: BayFindings,
  units: UnitSystem = "metric",
): string[] {
  const { least, usual, most } = usualCharges;
  const force = (value: number): string => figureWords(value, "force", units);
  const powder = (kilograms: number): string => powderWords(kilograms, units);
  const sentences = [
    `${powder(needed.charge)} of black powder in ${volumeWords(volume, units)} raise the pressure by ${pressure(needed.pressure)} and push with ${force(needed.endForce)}: ${bases[needed.basis]}.`,
    `Usual are 8 to 20 psi, mostly 15: ${powderRange(least, most, units)}, mostly ${powder(usual)}.`,
  ];
  if (pins !== null) sentences.push(pinsSentence(pins, units));
  if (separation !== null)
    sentences.push(
      `What holds it shut bears ${force(separation.holding)}; ${decimals(separation.margin, 1)} times that takes ${pressure(separation.pressure)}, ${powder(separation.charge)}.`,
    );
  return sentences;
}

function pinsSentence({ total, unknown, known }: NonNullable<BayFindings["pins"]>, units: UnitSystem): string {
  const force = (value: number): string => figureWords(value, "force", units);
  if (total === undefined)
    return `What pins of ${unknown.join(" and ")} bear is not known here; known are ${known.join(", ")}.`;
  return `The shear pins are to be expected to shear at ${force(total.stress)} together: ${force(total.root)} at the least, ${force(total.dry)} where the nylon is dry.`;
}

const findings: Readonly<Record<MotorChargeCode, (finding: MotorChargeFinding, units: UnitSystem) => string>> =
  Object.freeze({
    "charge-not-stated": () => "How much the motor's own charge is, is not known.",
    "well-not-stated": () => "How much the motor's well holds is not known.",
    "holding-not-known": () => "What holds the joint shut is not known: neither pins nor friction are given.",
    "does-not-separate": ({ value }) =>
      `The motor's charge pushes with only ${times(value)} what holds the joint: it does not part it.`,
    "separates-below-margin": ({ value, limit }) =>
      `The motor's charge pushes with ${times(value)} what holds the joint; ${times(limit)} are wanted.`,
    "below-usual-pressure": ({ value, limit }) =>
      `The motor's charge makes less than is usual: ${told(value, pressure)}, least ${told(limit, pressure)}.`,
    "above-usual-pressure": ({ value, limit }) =>
      `The motor's charge makes more than is usual: ${told(value, pressure)}, most ${told(limit, pressure)}. It may break what it should only part.`,
    "charge-below-needed": ({ value, limit }, units) =>
      `The motor's charge is less than is needed: ${massesWords(value, limit, units)}.`,
    "charge-above-well": ({ value, limit }, units) =>
      `The charge is more than the motor's well holds: ${massesWords(value, limit, units)}.`,
    "needed-above-well": ({ value, limit }, units) =>
      `What is needed is more than the motor's well holds: ${massesWords(value, limit, units)}.`,
    "needed-above-usual-pressure": ({ value, limit }) =>
      `What is needed is more than is usual: ${told(value, pressure)}, most ${told(limit, pressure)}. Fewer pins, or less friction.`,
  });

const told = (value: number | null, say: (value: number) => string): string => (value === null ? "-" : say(value));
const massesWords = (value: number | null, limit: number | null, units: UnitSystem): string =>
  `${told(value, (mass) => powderWords(mass, units))} against ${told(limit, (mass) => powderWords(mass, units))}`;
const times = (factor: number | null): string => told(factor, (value) => `${glued(decimals(value, 1), "times")}`);

/** What the motor's own charge does in the bay, and what is to be said of it; empty for a motor without a charge. */
export function motorChargeSentences(
  { motorCharge }: Pick<BayFindings, "motorCharge">,
  units: UnitSystem = "metric",
): string[] {
  if (motorCharge === null) return [];
  const { pressure: made, endForce, factor, findings: found } = motorCharge;
  const does =
    made === null || endForce === null
      ? []
      : [
          `The motor's own charge raises the pressure by ${pressure(made)} and pushes with ${figureWords(endForce, "force", units)}${factor === null ? "" : `, ${times(factor)} what holds the joint`}.`,
        ];
  return [...does, ...found.map((finding) => motorChargeSentence(finding, units))];
}

/** One thing that is to be said of a motor's charge. */
export function motorChargeSentence(finding: MotorChargeFinding, units: UnitSystem = "metric"): string {
  return findings[finding.code](finding, units);
}

/** Codes of a motor's charge that must not fly as they are. */
const stopping: readonly MotorChargeCode[] = ["does-not-separate", "charge-above-well", "needed-above-well"];

/** Whether the motor's charge must not fly as it is. */
export function chargeStops({ motorCharge }: Pick<BayFindings, "motorCharge">): boolean {
  return motorCharge?.findings.some(({ code }) => stopping.includes(code)) ?? false;
}

/** Said where `chargeStops`. */
export const chargeStopWords = "the motor's own charge does not do in this bay";

/** Static ports: one hole, three, or four. */
export function staticPortSentence({ of, volume, holes }: StaticPortFindings, units: UnitSystem = "metric"): string {
  const hole = (value: number): string => figureWords(value, "length", units, 1, 3);
  const bay = of === "electronicsBay" ? "the electronics bay" : "the bay";
  const sizes = holes.map(({ count, diameter }) =>
    count === 1 ? `one hole of ${hole(diameter)}` : `${count} of ${hole(diameter)}`,
  );
  return `Static ports for ${bay} of ${volumeWords(volume, units)}: ${sizes.join(", or ")} (common practice, no source).`;
}

const caveats: Readonly<Record<ChargeCaveat | ShearPinCaveat, string>> = Object.freeze({
  "constants-from-memory": "The powder's constants are from memory; other figures ask for 15 % more.",
  "heat-loss-ignored": "Heat that the walls take is not counted.",
  "leaks-ignored": "Leaks are not counted.",
  "ground-test": "It is a starting point: a ground test decides.",
  "drag-separation-not-computed": "Whether drag parts the joint at burnout is not computed.",
  "harness-jerk-not-computed": "Whether the harness's jerk shears the pins is not computed.",
});

/** What a reckoned charge leaves out, a sentence each. */
export function chargeCaveatSentences({ caveats: codes }: Pick<BayFindings, "caveats">): string[] {
  return codes.map((code) => caveats[code]);
}
