import { type Opening, type OpeningLoad, openingLoad, strengthSpeed } from "./opening-load.js";

/** A part that bears the opening load: canopy with its fabric and lines, harness, fittings, or pins of a joint that must stay shut. */
export type LoadedPart = "canopy" | "harness" | "fittings" | "pins";

/** What a part bears. */
export interface Rating {
  readonly part: LoadedPart;
  /** [N], > 0. */
  readonly strength: number;
}

/** What an opening load leaves out. */
export type OpeningCaveat = "snatch-not-computed" | "zippering-not-computed" | "below-handbook-speeds";

/** Hold for every opening load. */
export const openingCaveats: readonly OpeningCaveat[] = Object.freeze([
  "snatch-not-computed",
  "zippering-not-computed",
  "below-handbook-speeds",
]);

/** One opening against what bears it. */
export interface OpeningStrength {
  readonly load: OpeningLoad;
  /** Greatest load that the parts feel: of the opening, or the hanging weight where that is more [N]. */
  readonly greatest: number;
  /** The weakest rated part; null where nothing is rated. */
  readonly weakest: Rating | null;
  /** Its strength over the greatest load: below 1 it breaks; null where nothing is rated. */
  readonly margin: number | null;
  /** Airspeed at which it would reach 1 [m/s]; 0 where the weight alone is too much, null where nothing is rated. */
  readonly strengthSpeed: number | null;
}

/**
 * The part with the lowest rating; the first of equals.
 *
 * @param ratings of the parts [N]
 * @returns null where nothing is rated
 * @example
 * weakestOf([{ part: "canopy", strength: 1100 }, { part: "harness", strength: 900 }])?.part; // "harness"
 */
export function weakestOf(ratings: readonly Rating[]): Rating | null {
  return ratings.reduce<Rating | null>(
    (weakest, rating) => (weakest === null || rating.strength < weakest.strength ? rating : weakest),
    null,
  );
}

/**
 * Load of one opening against the weakest part that bears it.
 *
 * Every part is taken to carry the whole load. Height enters by density and gravity alone.
 *
 * @param opening what hangs under which canopy in which air; airspeed at line stretch [m/s], > 0; gravity [m/s²]
 * @param ratings of the parts that bear it
 * @source `openingLoad`, `strengthSpeed`
 * @example
 * const canopy = { shape: "flat circular", diameter: 0.9144, cd: 0.75 } as const;
 * const opening = { mass: 1.6, density: 1.1, canopy, airspeed: 15, gravity: 9.80665 };
 * openingStrength(opening, [{ part: "harness", strength: 103.81686 }]).margin; // 2
 */
export function openingStrength(
  { airspeed, gravity, ...opening }: Opening & { readonly airspeed: number; readonly gravity: number },
  ratings: readonly Rating[],
): OpeningStrength {
  const load = openingLoad(opening, airspeed);
  const greatest = Math.max(load.force, opening.mass * gravity);
  const weakest = weakestOf(ratings);
  if (weakest === null) return { load, greatest, weakest, margin: null, strengthSpeed: null };
  const { strength } = weakest;
  return {
    load,
    greatest,
    weakest,
    margin: strength / greatest,
    strengthSpeed: strengthSpeed({ ...opening, strength, gravity }),
  };
}
