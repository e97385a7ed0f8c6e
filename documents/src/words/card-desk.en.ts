import type { DeskAssumption, DeskField } from "../card/desk-entry.js";
import { shownQuantity } from "../quantity/shown.js";
import type { UnitSystem } from "../quantity/systems.js";
import type { Dimension } from "../quantity/units.js";
import { own } from "./own.js";

/** What each field of the card desk needs where it is missing. */
export const deskNeeds: Readonly<Partial<Record<DeskField, string>>> = Object.freeze({
  mass: "the mass as weighed ready to fly, motor in it",
  balance: "the balance point ready to fly, from the nose tip",
  diameter: "the diameter of the tube",
  length: "the length from the nose tip to the tail",
  cp: "the centre of pressure as the card states it, from the nose tip, or the fins as measured",
  finRoot: "the fin's chord at the tube",
  finTip: "the fin's chord at its tip",
  finSpan: "how far the fin stands out from the tube",
  impulse: "the total impulse on the motor's label, or a motor of the library",
  burnTime: "the burn time on the motor's label, or a motor of the library",
  delay: "the delay as it is set",
  canopy: "the diameter of the main parachute",
});

export const aboveZeroWords = "more than zero";

const names: Readonly<Partial<Record<DeskField, string>>> = Object.freeze({
  noseShape: "Shape of the nose",
  noseLength: "Length of the nose",
  finCount: "Number of fins",
  finAt: "Place of the fins",
  finRoot: "Drag",
  finSweep: "Sweep of the fins",
  finThickness: "Thickness of the fins",
  motor: "Thrust curve",
  motorName: "Name of the motor",
  propellantMass: "Propellant",
  loadedMass: "Loaded motor",
  motorDiameter: "Diameter of the motor",
  motorLength: "Length of the motor",
  canopyShape: "Shape of the parachute",
  electronics: "Opening",
  guide: "Travel on the guide",
  field: "Field",
  weather: "Weather",
});

/** What the fields measure for which a quantity stands; for the others words do. */
const dimensions: Readonly<Partial<Record<DeskField, Dimension>>> = Object.freeze({
  noseLength: "length",
  finAt: "length",
  finSweep: "length",
  finThickness: "length",
  propellantMass: "mass",
  loadedMass: "mass",
  motorDiameter: "length",
  motorLength: "length",
  guide: "length",
});

/**
 * What stands for a field that a card does not say, in the flyer's units.
 *
 * @param text as it would be typed; words stay as they are
 * @example
 * deskQuantity("finThickness", "3 mm", "imperial"); // "0.118 in"
 */
export function deskQuantity(field: DeskField, text: string, units: UnitSystem): string {
  const dimension = own(dimensions, field);
  return dimension === undefined
    ? text
    : shownQuantity(text, dimension, units, { digits: 3, parts: field !== "guide" });
}

/**
 * Something that a card did not say, as a clause.
 *
 * @param units the flyer's own
 * @example
 * assumptionWords({ field: "guide", value: "1.5 m" }); // "Travel on the guide: 1.5 m"
 * assumptionWords({ field: "guide", value: "1.5 m" }, "imperial"); // "Travel on the guide: 4.92 ft"
 */
export function assumptionWords({ field, value }: DeskAssumption, units: UnitSystem = "metric"): string {
  return `${names[field] ?? field}: ${deskQuantity(field, value, units)}`;
}
