import { type DeskFields, fieldAt } from "@delaywright/documents";

/** A field of the card desk that is typed. */
export interface TypedField {
  readonly field: keyof DeskFields;
  readonly label: string;
  readonly aside?: string;
  /** What counts while it is empty. */
  readonly leftOut?: string;
}

/** What every card says. */
export const rocketFields: readonly TypedField[] = [
  { field: "name", label: "Rocket", leftOut: "its name" },
  { field: "mass", label: "Mass", aside: "ready to fly" },
  { field: "balance", label: "Balance", aside: "ready, from the tip" },
  { field: "diameter", label: "Diameter" },
  { field: "length", label: "Length" },
  { field: "cp", label: "CP as stated", aside: "from the tip" },
];

export const finFields: readonly TypedField[] = [
  { field: "finCount", label: "Fins", leftOut: "3" },
  { field: "finAt", label: "Root begins at", aside: "from the tip", leftOut: "at the tail" },
  { field: "finRoot", label: "Root" },
  { field: "finTip", label: "Tip" },
  { field: "finSpan", label: "Span" },
  { field: "finSweep", label: "Sweep", leftOut: "root less tip" },
  { field: "finThickness", label: "Thickness", leftOut: "3 mm" },
];

/** What the motor's label says. */
export const labelFields: readonly TypedField[] = [
  { field: "impulse", label: "Total impulse" },
  { field: "burnTime", label: "Burn time" },
];

export const moreLabelFields: readonly TypedField[] = [
  { field: "motorName", label: "Name of the motor", leftOut: "motor of the card" },
  { field: "propellantMass", label: "Propellant", leftOut: "from the impulse" },
  { field: "loadedMass", label: "Loaded motor", leftOut: "from the propellant" },
  { field: "motorDiameter", label: "Motor diameter", leftOut: "38 mm" },
  { field: "motorLength", label: "Motor length", leftOut: "six diameters" },
];

export const guideFields: readonly TypedField[] = [
  { field: "guide", label: "Travel on the guide", leftOut: "1.5 m" },
  { field: "tilt", label: "Tilt", aside: "from vertical", leftOut: "0 deg" },
  { field: "toward", label: "Leans toward", aside: "degrees true" },
];

function choicesAt(field: string): readonly string[] {
  return (fieldAt("rocket", field)?.choices ?? []).map(String).filter((each) => each !== "");
}

/** Shapes of noses and of parachutes, as rockets have them. */
export const noseShapes = choicesAt("nose.shape");
export const canopyShapes = choicesAt("recovery.main.canopy.shape");
