import type { Shelf } from "../app/router.js";

/** One document of a library. */
export const oneOfShelf: Readonly<Record<Shelf, string>> = Object.freeze({
  rockets: "rocket",
  motors: "motor type",
  hands: "motor in hand",
  tools: "tool",
  fields: "field",
  flyers: "flyer",
  rules: "rule set",
  flights: "flight",
  others: "document",
});

/** What an empty library says. */
export const emptyWords: Readonly<Record<Shelf, string>> = Object.freeze({
  rockets: "No rocket yet. Make one from what you measure: mass, balance point, length, diameter, fins.",
  motors: "No motor type yet. Make one from its label and its thrust curve, which comes in as CSV.",
  hands: "No motor in hand yet. Each motor that you cut is one of its own, with its bag, label and lot.",
  tools: "No tool yet. Make one from what each end takes out and each ring keeps back.",
  fields: "No field yet. Make one from its height above the sea and its edges.",
  flyers: "No flyer yet. Make one from a name, a certification level and an age.",
  rules: "No rule set yet. Make one where your club's own rules are tighter or looser than the association's.",
  flights: "No flight yet. Begin one on a plan's prep sheet, or take its log in at the Debrief.",
  others: "Nothing else is kept here.",
});
