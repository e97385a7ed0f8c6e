import type { PlacedMotor } from "../load-plan.js";
import type { Raw } from "../migrate.js";

/** Fields of another flyer's card that are typed, with their unit; left out or empty: the card does not say. */
export interface DeskFields {
  /** Name of the rocket. */
  readonly name?: string;
  /** Ready to fly, with its motor. */
  readonly mass?: string;
  /** Balance point ready to fly, from the nose tip. */
  readonly balance?: string;
  readonly diameter?: string;
  readonly length?: string;
  /** Centre of pressure as stated, from the nose tip. */
  readonly cp?: string;
  readonly noseShape?: string;
  readonly noseLength?: string;
  readonly finCount?: string;
  /** The root's leading edge, from the nose tip. */
  readonly finAt?: string;
  readonly finRoot?: string;
  readonly finTip?: string;
  readonly finSpan?: string;
  readonly finSweep?: string;
  readonly finThickness?: string;
  /** Where no motor document is at hand: what its label says. */
  readonly motorName?: string;
  readonly impulse?: string;
  readonly burnTime?: string;
  readonly propellantMass?: string;
  readonly loadedMass?: string;
  readonly motorDiameter?: string;
  readonly motorLength?: string;
  /** As it is set. */
  readonly delay?: string;
  readonly canopy?: string;
  readonly canopyShape?: string;
  /** Way along the guide until the rocket is free. */
  readonly guide?: string;
  readonly tilt?: string;
  readonly toward?: string;
}

/** What another flyer's card states, and what is known of the field and the day. */
export interface DeskEntry extends DeskFields {
  /** Electronics opens it at the top; the motor's charge stands behind. */
  readonly electronics?: boolean;
  /** A motor of the library, instead of the label's figures. */
  readonly motor?: Pick<PlacedMotor, "document" | "thrust">;
  readonly field?: Raw;
  /** The plan's `weather`. */
  readonly weather?: Raw;
}

/** A field of the desk, as issues and assumptions name it. */
export type DeskField = keyof DeskEntry;

/** Something that the card does not say and that was assumed. */
export interface DeskAssumption {
  readonly field: DeskField;
  /** As it would be typed; a sentence of its own stands for what has no value. */
  readonly value: string;
}
