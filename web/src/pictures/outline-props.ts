import type { UnitSystem } from "@delaywright/documents";
import type { OutlinePoints } from "@delaywright/engine";

export interface OutlineProps {
  /** Side view to scale [m]. */
  readonly outline: OutlinePoints;
  /** Whole length [m]. */
  readonly length: number;
  /** What a calibre is [m]. */
  readonly diameter: number;
  /** From the nose tip [m]; null where it is not known. */
  readonly motorAftAt: number | null;
  readonly balanceWithoutMotor: number | null;
  readonly balanceReady: number | null;
  readonly cp: number | null;
  /** Small words under the ticks' own: "weighed", "stated"; left out: none. */
  readonly notes?: { readonly balance?: string; readonly ready?: string; readonly cp?: string };
  readonly units: UnitSystem;
}
