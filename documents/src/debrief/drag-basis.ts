import type { RocketDocument } from "../kinds/rocket/schema.js";

/** On what a rocket's drag was reckoned: what a factor that was fitted to a flight is a factor on. */
export interface DragBasis {
  readonly from: string;
  /** What multiplies the drag of that kind: the scale, and a constant coefficient. */
  readonly level: number;
}

/** The basis of a rocket as its document says it. */
export function dragBasis({ drag }: Pick<RocketDocument, "drag">): DragBasis {
  const { from, scale = 1 } = drag ?? { from: "build-up" as const };
  return { from, level: drag?.from === "constant" ? drag.cd * scale : scale };
}

/**
 * What must be added to the logarithm of a factor on the drag as it was then, to make it one on the drag as it is now.
 *
 * @returns null where the two are not of one kind
 * @example
 * dragShift({ from: "build-up", level: 1 }, { from: "build-up", level: 1.08 }); // -0.077
 */
export function dragShift(then: DragBasis, now: DragBasis): number | null {
  return then.from === now.from && then.level > 0 && now.level > 0 ? Math.log(then.level / now.level) : null;
}
