import { defaultPackingOptions, formatQuantity } from "@delaywright/documents";
import { type FormPart, field } from "./model.js";

/** What the rules ask of the day at the field. What is left out is not known, so nothing is judged by it. */
export const planSiteParts: readonly FormPart[] = [
  field("site.launchAt", "It is to fly at", {
    hint: "A time of day, for example 11:30. The field's hours and the weather's age are held against it.",
  }),
  field("site.cloudCover", "Cloud cover", { percent: true, aside: "of the sky" }),
  field("site.cloudBase", "Lowest cloud", { aside: "above the pad", hint: 'A height, or "none" under a clear sky.' }),
  field("site.visibility", "Visibility"),
  field("site.people", "Nearest person", {
    aside: "from the pad",
    hint: "Left out: the field's lines along which people stand.",
  }),
  field("site.daylight", "The sun is up then", { threeWay: true }),
  field("site.adultInCharge", "An adult is in charge of the launch", {
    threeWay: true,
    hint: "Of at least 18 years, there, and with the last word on it.",
  }),
  field("site.fireMeans", "Means to report and to control a fire are at hand", { threeWay: true }),
  field("site.controlledAirspace", "It enters controlled airspace", {
    threeWay: true,
    hint: "Not said: as the field says.",
  }),
  field("site.authorised", "The aviation authority has authorised it", {
    threeWay: true,
    hint: "What its rule else forbids.",
  }),
  field("site.noticeGiven", "Air traffic control told", {
    aside: "before the flight",
    hint: 'How long before, for example 36 h, or "none".',
  }),
];

/** What the flyer wants of the packing. */
export const planPackingParts: readonly FormPart[] = [
  field("packing.charge", "Ejection charge in the motor", {
    leftOut: "the motor's own",
    hint: "In place of the one that it comes with.",
  }),
  field("packing.landingSpeed", "To land at", {
    leftOut: formatQuantity(defaultPackingOptions.landingSpeed, "speed", "m/s"),
  }),
  field("packing.energyLimit", "Most energy of a section", {
    leftOut: formatQuantity(defaultPackingOptions.energyLimit, "energy", "J"),
    aside: "at landing",
  }),
  field("packing.separationMargin", "Charge pushes with", {
    leftOut: String(defaultPackingOptions.separationMargin),
    aside: "times the hold",
    hint: "The hold is what pins and friction bear.",
  }),
];

/** The rules that a plan is held against. */
export const planRulesParts: readonly FormPart[] = [
  field("ruleSet", "Held against", {
    leftOut: "the association's codes and the aviation rule",
    words: {
      association: "the association's codes and the aviation rule",
      none: "no code: physics and own defaults only",
    },
  }),
];
