import { countPlaces, type PlaceColumns, shareInAny, shareInside, shareOutside } from "../packing/landing-zone.js";
import type { PackingFindings } from "../packing/packing.js";
import type { FieldLimits } from "./inputs.js";
import { type EllipsePair, ellipsePair } from "./landings.js";

/** Where draws come down. */
export interface Landed extends EllipsePair {
  /** That came down. */
  readonly draws: number;
  /** That opened, but could not be followed to the ground: none of the shares counts them. */
  readonly notFollowed: number;
  /** Share beyond the field's edge, 0…1; null where that is not known. */
  readonly outside: number | null;
  /** Share in any of the zones where nothing may come down, 0…1; null where the field has none, or none is known. */
  readonly keepOff: number | null;
  /** Share in each of those zones, in their order. */
  readonly zones: readonly number[];
}

/** Where the rocket comes down. */
export interface Landings {
  /**
   * Opened by the motor's charge at the own choice, else at the delay to cut, over some of the draws; null where none of them
   * opens, and before the last stage.
   */
  readonly opened: Landed | null;
  /** If nothing opens, over all draws. */
  readonly unopened: Landed;
}

/** Everything about how the rocket is packed, and where it comes down. */
export interface Packing extends PackingFindings {
  /** What the first opening's airspeed is: 19 in 20 openings stay below it, or the nominal flight's; null: nothing opens. */
  readonly firstOpeningAt: "p95" | "nominal" | null;
  readonly landings: Landings;
}

/** Where places lie on the field. */
export function landedOf(
  places: PlaceColumns & { readonly notFollowed?: number },
  { boundary, keepOff = [] }: FieldLimits,
): Landed {
  return {
    draws: countPlaces(places),
    notFollowed: places.notFollowed ?? 0,
    ...ellipsePair(places),
    outside: boundary === undefined ? null : shareOutside(places, boundary),
    keepOff: keepOff.length === 0 ? null : shareInAny(places, keepOff),
    zones: keepOff.map((zone) => shareInside(places, zone)),
  };
}
