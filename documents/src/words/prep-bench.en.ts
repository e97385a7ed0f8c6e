import type { CutData } from "../answer/decision-data.js";
import type { PrepFigures } from "../answer/prep-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { kindOfCut, piecesWords } from "./cut.en.js";
import { delayWords, depthWords, powderWords } from "./numbers.en.js";

/** What the words of a step are made of. */
export interface PrepTelling {
  readonly figures: PrepFigures;
  /** The setting that the sheet is for; null for a motor without delay. */
  readonly setting: CutData | null;
  readonly units: UnitSystem;
}

/** Title and manner of a step. */
export interface StepWords {
  readonly title: string;
  readonly how: (telling: PrepTelling) => readonly string[];
}

/** An amount of powder; grams to a tenth are what a prep sheet is worth. */
export const chargeMassWords = (mass: number, units: UnitSystem): string => powderWords(mass, units, 1);

function bagWords({ inHand, motor, designation, maker }: PrepFigures): string[] {
  const type = [motor, designation === motor ? null : designation, maker].filter((each) => each !== null).join(", ");
  const label = inHand?.label === null || inHand?.label === undefined ? null : `label ${inHand.label}`;
  const lot = inHand?.lot === null || inHand?.lot === undefined ? null : `lot ${inHand.lot}`;
  const bag = [inHand?.name ?? null, label, lot].filter((each) => each !== null);
  return [
    `The plan's motor: ${type}.`,
    bag.length === 0
      ? "No motor in hand is chosen in the plan; a cut belongs to one, so name it first."
      : `The one in hand: ${bag.join(", ")}.`,
  ];
}

function cutWords({ figures, setting }: PrepTelling): string[] {
  if (setting === null) return [];
  const { removedDepth, instructionsTool, homeCut } = figures;
  const lines = homeWords(homeCut, setting, removedDepth);
  if (kindOfCut(setting, removedDepth) !== "cut") return lines;
  const depth =
    setting.depth === null ? "" : `: ${depthWords(setting.depth)}${(removedDepth ?? 0) > 0 ? " in all" : ""}`;
  const tool = instructionsTool === null ? "" : ` Tool by the instructions: ${instructionsTool}.`;
  return [`Cut to ${delayWords(setting.delay)}, ${piecesWords(setting)}${depth}.${tool}`, ...lines];
}

function homeWords(homeCut: CutData | null, setting: CutData, removedDepth: number | null): string[] {
  if (homeCut === null || kindOfCut(homeCut, removedDepth) === "as-it-is" || homeCut.delay <= setting.delay) return [];
  return [
    `At home only to ${delayWords(homeCut.delay)}; sign when it is cut to ${delayWords(setting.delay)} at the field.`,
  ];
}

/** The depth that a caliper should read after the cut. */
function afterWords({ figures: { firstDepth, removedDepth }, setting }: PrepTelling): string[] {
  const target = setting?.depth ?? null;
  const read = firstDepth === null || removedDepth === null ? null : firstDepth + removedDepth;
  return [
    ...(firstDepth === null || target === null
      ? ["From the rim to the grain's face, three times; write down the middle one."]
      : [`From the rim to the grain's face: ${depthWords(firstDepth + target)} is what the plan asks for.`]),
    ...(read === null ? [] : [`Last written down: ${depthWords(read)}.`]),
    ...(setting === null ? [] : [`That is a delay of ${delayWords(setting.delay)}.`]),
  ];
}

function chargeWords({ figures: { charge, wellHolds }, units }: PrepTelling): string[] {
  const most = wellHolds === null ? "" : ` The well holds ${chargeMassWords(wellHolds, units)}.`;
  return [
    charge === null
      ? `As much as the motor's instructions say; the plan names no mass.${most}`
      : `Charge ${chargeMassWords(charge, units)}, as it comes with the motor.${most}`,
  ];
}

/** Words of the steps at the bench: the motor, its papers, its delay, its charge. */
export const benchWords = {
  "motor-label": {
    title: "Bag and label are the plan's motor",
    how: ({ figures }) => bagWords(figures),
  },
  instructions: {
    title: "Motor's own instructions read",
    how: ({ figures: { instructionsTool } }) => [
      "They decide wherever they say otherwise than this sheet.",
      ...(instructionsTool === null ? [] : [`As you confirmed, they name the ${instructionsTool} for the delay.`]),
    ],
  },
  airframe: {
    title: "Airframe, fins, guides and cords looked over",
    how: () => ["Fins tight, buttons tight, no crack, no burn on cord or canopy."],
  },
  "depth-before": {
    title: "Element measured before the cut",
    how: ({ figures: { firstDepth, removedDepth } }) => [
      "From the rim to the grain's face, three times; write down the middle one with the motor in hand.",
      ...(firstDepth === null ? [] : [`Last written down: ${depthWords(firstDepth + (removedDepth ?? 0))}.`]),
    ],
  },
  cut: { title: "Delay cut", how: cutWords },
  "depth-after": { title: "Element measured after the cut", how: afterWords },
  "ground-test": {
    title: "Bay tested on the ground with this charge",
    how: ({ figures: { bayCharge }, units }) => [
      bayCharge === null
        ? "Packed as it flies, with the charge that it will fly with."
        : `Packed as it flies. Reckoned charge ${chargeMassWords(bayCharge, units)}: a starting point for the test.`,
    ],
  },
  washer: { title: "Washer on the delay's face", how: () => ["As the motor's instructions show."] },
  "motor-charge": { title: "Charge in the motor's well", how: chargeWords },
  "charge-cap": {
    title: "Cap on the motor's charge",
    how: () => ["Whole and tight all round, as the motor's instructions show."],
  },
  retention: {
    title: "Motor in, and held",
    how: ({ figures: { retention } }) => [
      retention === "positive"
        ? "Closed and tight: pull at the motor."
        : retention === "friction"
          ? "Held by friction: it must take the whole rocket's weight with a jerk, and the range officer may ask for more."
          : "The rocket's document names nothing that holds it: it must be held.",
      "Vent hole open.",
    ],
  },
} satisfies Readonly<Record<string, StepWords>>;
