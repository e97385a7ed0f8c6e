import type { DeskAssumption, DeskField } from "../card/desk-entry.js";

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

/**
 * Something that a card did not say, as a clause.
 *
 * @example
 * assumptionWords({ field: "guide", value: "1.5 m" }); // "Travel on the guide: 1.5 m"
 */
export function assumptionWords({ field, value }: DeskAssumption): string {
  return `${names[field] ?? field}: ${value}`;
}
