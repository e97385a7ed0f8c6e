import type { RankedMotor } from "./judged-motor.js";

/** What the flyer is after. */
export type Aim =
  | { readonly by: "nearest-height" /** Above the pad [m]. */; readonly height: number }
  | { readonly by: "highest" }
  | { readonly by: "best-odds" }
  | { readonly by: "gentlest" }
  | { readonly by: "cheapest" };

/** What is looked at first; the lowest comes first, what is not known last. */
function measureOf({ drawn, price }: RankedMotor, aim: Aim): number {
  const { height, toCut } = drawn;
  switch (aim.by) {
    case "nearest-height":
      return Math.abs(height.p50 - aim.height);
    case "highest":
      return -height.p50;
    case "best-odds":
      return toCut === null ? Number.POSITIVE_INFINITY : -toCut.odds.clean;
    case "gentlest":
      return toCut?.openingSpeed?.p90 ?? Number.POSITIVE_INFINITY;
    case "cheapest":
      return price ?? Number.POSITIVE_INFINITY;
  }
}

/** Infinity stands beside Infinity. */
const compared = (a: number, b: number): number => (a === b ? 0 : a < b ? -1 : 1);

/**
 * Ranked motors in the order of an aim: nearest to a height by its median, highest median, best odds of a clean opening,
 * gentlest opening by the speed that nine in ten stay below, cheapest. What is not known comes last; ties go to the better
 * odds of a clean opening, then of holding, then to the identifier, so that the order hangs on nothing else.
 *
 * @param motors in any order; none of them is under way to be refused
 * @returns a new list
 * @example
 * orderedBy(motors, { by: "nearest-height", height: 800 })[0]?.id;
 */
export function orderedBy(motors: readonly RankedMotor[], aim: Aim): RankedMotor[] {
  const odds = ({ drawn }: RankedMotor) => drawn.toCut?.odds ?? { clean: -1, holds: -1 };
  return [...motors].sort(
    (a, b) =>
      compared(measureOf(a, aim), measureOf(b, aim)) ||
      compared(odds(b).clean, odds(a).clean) ||
      compared(odds(b).holds, odds(a).holds) ||
      (a.id < b.id ? -1 : a.id > b.id ? 1 : 0),
  );
}
