import type { OpeningPoint, PackingInputs } from "./packing-inputs.js";
import { type PinsLoad, shearPinsLoad } from "./shear-pins.js";
import { type OpeningStrength, openingStrength, type Rating } from "./weakest-part.js";

/** One canopy's opening against what bears it. */
export interface OpeningFinding extends OpeningStrength, OpeningPoint {
  /** The parts that are rated for this opening, in the order canopy, harness, fittings, pins. */
  readonly ratings: readonly Rating[];
}

/** Every opening of a rocket, and the pins that must stay whole at the first. */
export interface OpeningFindings {
  readonly openings: readonly OpeningFinding[];
  /** Null where no joint must stay shut. */
  readonly stillShut: PinsLoad | null;
}

/**
 * Loads of a rocket's openings against canopy, harness, fittings and the pins of a joint that must stay shut.
 *
 * Such pins count at their root, the least they bear, and as if they carried the whole load: at the first opening alone.
 *
 * @param inputs recovery, mass, ratings and openings; each opening's canopy must be there
 * @source `openingStrength`, `shearPinsLoad`
 * @example
 * const recovery = { motorCharge: "primary", lineStretch: 0.5, main: { canopy: { shape: "conical", diameter: 1 }, strength: 900 } } as const;
 * openingFindings({ mass: 2, recovery, openings: [] }).openings; // []
 */
export function openingFindings({
  mass,
  recovery,
  fittingsStrength,
  stillShut,
  openings,
}: Pick<PackingInputs, "mass" | "recovery" | "fittingsStrength" | "stillShut" | "openings">): OpeningFindings {
  const shut = stillShut === undefined || stillShut.length === 0 ? null : shearPinsLoad(stillShut);
  const first = recovery.drogue === undefined ? "main" : "drogue";
  return {
    stillShut: shut,
    openings: openings.flatMap((point) => {
      const part = recovery[point.which];
      if (part === undefined) return [];
      const ratings: Rating[] = [];
      const add = (name: Rating["part"], strength: number | undefined) => {
        if (strength !== undefined) ratings.push({ part: name, strength });
      };
      add("canopy", part.strength);
      add("harness", recovery.harness?.strength);
      add("fittings", fittingsStrength);
      if (point.which === first) add("pins", shut?.total?.root);
      const { airspeed, density, gravity } = point;
      const strength = openingStrength({ mass, density, canopy: part.canopy, airspeed, gravity }, ratings);
      return [{ ...point, ...strength, ratings }];
    }),
  };
}
