import type { MotorChargeCode } from "@delaywright/engine";
import type { DecisionData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import {
  bayChargeSentences,
  chargeCaveatSentences,
  chargeStops,
  chargeStopWords,
  motorChargeSentence,
  motorChargeSentences,
  staticPortSentence,
} from "./charge.en.js";
import { ellipseWords } from "./ellipse.en.js";
import { upperFirst } from "./numbers.en.js";
import { harnessSentence, landedSentences, landingSentences, loadSentences, type PackingData } from "./packing.en.js";

/** What is to be settled about the packing, one after the other. */
export type PackingTopic = "charge" | "ports" | "openings" | "landing" | "drift" | "harness";

/** What is not known, and the field that would say it: the document's kind and the path in it, `rocket: bay.friction`. */
export interface PackingGap {
  readonly words: string;
  readonly field: string;
}

/** One thing about the packing: what was found, and what is missing to find more. */
export interface PackingPart {
  readonly topic: PackingTopic;
  readonly title: string;
  /** What must not fly as it is; null where nothing is. */
  readonly stop: string | null;
  readonly sentences: readonly string[];
  /** What figures leave out. */
  readonly caveats: readonly string[];
  readonly gaps: readonly PackingGap[];
}

const titles: Readonly<Record<PackingTopic, string>> = Object.freeze({
  charge: "Ejection charge and pins",
  ports: "Static ports",
  openings: "Opening load",
  landing: "Canopy and landing",
  drift: "Drift",
  harness: "Harness",
});

const gap = (words: string, field: string): PackingGap => ({ words, field });

/** Findings about a motor's charge that only say what is not known, and where it is said. */
const chargeFields: Readonly<Partial<Record<MotorChargeCode, string>>> = Object.freeze({
  "charge-not-stated": "motor: delay.charge",
  "well-not-stated": "motor: delay.wellHolds",
  "holding-not-known": "rocket: bay.friction",
});

type Told = Pick<PackingPart, "sentences" | "gaps"> & Partial<Pick<PackingPart, "stop" | "caveats">>;

function charge({ bay }: PackingData, units: UnitSystem): Told {
  if (bay === null)
    return {
      sentences: [],
      gaps: [gap("The bay's size is not known, so no charge is reckoned.", "rocket: bay.diameter")],
    };
  const { motorCharge, separation, pins } = bay;
  const found = motorCharge?.findings ?? [];
  const told = found.filter(({ code }) => chargeFields[code] === undefined);
  const holding = { code: "holding-not-known", value: null, limit: null } as const;
  const unknownPins = pins !== null && pins.total === undefined;
  const unknown = [
    ...found.filter(({ code }) => chargeFields[code] !== undefined && code !== holding.code),
    ...(separation === null && !unknownPins ? [holding] : []),
  ];
  return {
    stop: chargeStops(bay) ? `${upperFirst(chargeStopWords)}.` : null,
    sentences: [
      ...bayChargeSentences(bay, units),
      ...(motorCharge === null
        ? ["This motor has no ejection charge."]
        : motorChargeSentences({ motorCharge: { ...motorCharge, findings: told } }, units)),
    ],
    caveats: chargeCaveatSentences(bay),
    gaps: [
      ...unknown.map((finding) => gap(motorChargeSentence(finding), chargeFields[finding.code] ?? "")),
      ...(unknownPins
        ? [gap("Only with pins that are known is it told what holds the joint.", "rocket: bay.shearPins")]
        : []),
    ],
  };
}

function ports({ staticPorts }: PackingData, units: UnitSystem): Told {
  return {
    sentences: staticPorts === null ? [] : [staticPortSentence(staticPorts, units)],
    gaps:
      staticPorts?.of === "electronicsBay"
        ? []
        : [gap("The size of the bay that an altimeter sits in is not known.", "rocket: electronicsBay.diameter")],
  };
}

function openings(packing: PackingData, units: UnitSystem): Told {
  if (packing.openings.length === 0) return { sentences: ["Nothing opens in the expected flight."], gaps: [] };
  return {
    sentences: loadSentences(packing, units),
    gaps: packing.openings.flatMap(({ which, weakest }) =>
      weakest === null ? [gap(`What the ${which} bears is not known.`, `rocket: recovery.${which}.strength`)] : [],
    ),
  };
}

function landing(packing: PackingData, units: UnitSystem): Told {
  return {
    sentences: landingSentences(packing, units),
    gaps:
      packing.landing.of === "sections"
        ? []
        : [gap("The masses of the sections are not known, so it lands as one.", "rocket: sectionMasses")],
  };
}

function drift(packing: PackingData, hasField: boolean, units: UnitSystem): Told {
  const { opened, unopened } = packing.landings;
  const { outside, keepOff } = unopened;
  const ellipse = opened?.p95 ?? null;
  const gaps = hasField
    ? [
        ...(outside === null ? [gap("The field's edge is not known.", "field: boundary")] : []),
        ...(keepOff === null ? [gap("No keep-off zones are known.", "field: keepOff")] : []),
      ]
    : [gap("No field is chosen.", "plan: field")];
  const lands = ellipse === null ? [] : [`Opened, 19 in 20 flights land in ${ellipseWords(ellipse, units)}.`];
  return { sentences: [...lands, ...landedSentences(packing)], gaps };
}

function harness(packing: PackingData, units: UnitSystem): Told {
  const sentence = harnessSentence(packing, units);
  return packing.harness.length === null
    ? { sentences: [], gaps: [gap(sentence, "rocket: recovery.harness.length")] }
    : { sentences: [sentence], gaps: [] };
}

/**
 * Everything to settle about the packing, in the order of the day, with what is missing for each and where to say it.
 *
 * @param data of an answer
 * @param units the flyer's units
 * @example
 * packingParts(data).find(({ topic }) => topic === "harness")?.gaps; // [] where its length is given
 */
export function packingParts(
  { packing, context }: Pick<DecisionData, "packing" | "context">,
  units: UnitSystem = "metric",
): readonly PackingPart[] {
  const part = (topic: PackingTopic, told: Told): PackingPart => ({
    topic,
    title: titles[topic],
    stop: null,
    caveats: [],
    ...told,
  });
  return [
    part("charge", charge(packing, units)),
    part("ports", ports(packing, units)),
    part("openings", openings(packing, units)),
    part("landing", landing(packing, units)),
    part("harness", harness(packing, units)),
    part("drift", drift(packing, context.field !== undefined, units)),
  ];
}
