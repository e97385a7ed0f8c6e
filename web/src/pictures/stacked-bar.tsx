import type { OutcomeOdds } from "@delaywright/engine";
import type { ReactNode } from "react";
import { hatchFill, outcomes } from "./hatches.js";
import { within } from "./scale.js";

/** One outcome's part of a stack, as shares of the whole. */
export interface Slice {
  readonly hatch: (typeof outcomes)[number]["hatch"];
  readonly words: string;
  readonly from: number;
  readonly share: number;
}

/**
 * The outcomes of a setting, stacked from the base. Whatever the odds are, the slices lie between 0 and 1 and do not overlap.
 *
 * @example
 * slicesOf({ clean: 0.9, earlyFast: 0.1, lateFast: 0, leanFast: 0, low: 0, grounded: 0 }); // two slices: 0…0.9, 0.9…1
 */
export function slicesOf(odds: OutcomeOdds): readonly Slice[] {
  const slices: Slice[] = [];
  let from = 0;
  for (const { key, hatch, words } of outcomes) {
    const share = within(odds[key], 0, 1 - from);
    if (share <= 0) continue;
    slices.push({ hatch, words, from, share });
    from += share;
  }
  return slices;
}

/** The stack of a setting's outcomes with its frame, clean from the base. */
export function StackedBar(props: {
  readonly odds: OutcomeOdds;
  /** Middle and width [px]. */
  readonly mid: number;
  readonly bar: number;
  /** Where 100 and 0 lie [px]. */
  readonly top: number;
  readonly base: number;
  readonly strong: boolean;
}): ReactNode {
  const { odds, mid, bar, top, base, strong } = props;
  const [left, tall] = [mid - bar / 2, base - top];
  const out = strong ? 1 : 0;
  return (
    <>
      {slicesOf(odds).map(({ hatch, from, share }) => (
        <rect
          key={hatch}
          className="part"
          x={left}
          y={base - (from + share) * tall}
          width={bar}
          height={share * tall}
          style={{ fill: hatchFill(hatch) }}
        />
      ))}
      <rect
        className={strong ? "box mine" : "box"}
        x={left - out}
        y={top - out}
        width={bar + 2 * out}
        height={tall + out}
      />
    </>
  );
}
