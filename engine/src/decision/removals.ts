import { delayOfDepth } from "../motor/delay.js";
import type { CutPlan } from "./cut-plan.js";
import type { CutSoFar, CuttingTool, Removal } from "./inputs.js";

/** An adjustable element, as a tool sees it. */
export interface Element {
  /** Delay of the uncut element [s]. */
  readonly longest: number;
  readonly mostRemoved: number;
  readonly leastLeft: number;
  /** Depth for one second of the motor's own grain [m/s]; left out: the tool's. */
  readonly depthPerSecond?: number;
}

/** Removals closer than this are the same [s]. */
const sameRemoval = 1e-6;

interface Combination {
  readonly seconds: number;
  readonly depth: number | null;
  readonly end: string | null;
  readonly spacers: readonly string[];
}

/** Depth for one second that rules the element: the motor's own, else the tool's. */
export function depthPerSecondOf(element: Element, tool: CuttingTool | undefined): number | undefined {
  return element.depthPerSecond ?? tool?.depthPerSecond;
}

function amount(
  removal: Removal,
  toolDepthPerSecond: number,
  depthPerSecond: number,
): { seconds: number; depth: number } {
  return "seconds" in removal
    ? { seconds: removal.seconds, depth: removal.seconds * toolDepthPerSecond }
    : { seconds: delayOfDepth(removal.depth, depthPerSecond), depth: removal.depth };
}

/** Every way of putting spacers on, each used up to its count. */
function spacerSets(spacers: readonly { readonly name: string; readonly count: number }[]): string[][] {
  return spacers.reduce<string[][]>(
    (sets, spacer) =>
      sets.flatMap((set) =>
        Array.from({ length: spacer.count + 1 }, (_, used) => [...set, ...new Array<string>(used).fill(spacer.name)]),
      ),
    [[]],
  );
}

function combinations(tool: CuttingTool, depthPerSecond: number): Combination[] {
  if (tool.kind === "stop") {
    const count = Math.floor((tool.to - tool.from) / tool.step + 1e-9);
    return Array.from({ length: count + 1 }, (_, i) => {
      // a step counted out in whole micrometres stays what was typed
      const depth = Math.round((tool.from + i * tool.step) * 1e9) / 1e9;
      return { seconds: delayOfDepth(depth, depthPerSecond), depth, end: null, spacers: [] };
    });
  }
  const kept = new Map(tool.spacers.map((s) => [s.name, amount(s.keepsBack, tool.depthPerSecond, depthPerSecond)]));
  return tool.ends.flatMap((end) => {
    const taken = amount(end.removes, tool.depthPerSecond, depthPerSecond);
    return spacerSets(tool.spacers).map((spacers) => {
      const back = spacers.reduce(
        (sum, name) => ({
          seconds: sum.seconds + (kept.get(name)?.seconds ?? 0),
          depth: sum.depth + (kept.get(name)?.depth ?? 0),
        }),
        { seconds: 0, depth: 0 },
      );
      return { seconds: taken.seconds - back.seconds, depth: taken.depth - back.depth, end: end.name, spacers };
    });
  });
}

/** Fewer pieces first: spacers put on, an end counts for all alike. */
const pieces = (c: Combination): number => c.spacers.length;

/**
 * The settings that a tool makes of an element, longest delay first.
 *
 * All ends with all sets of spacers, or every step of a depth stop, and no cut at all. What takes out nothing, more than
 * `mostRemoved`, or leaves less than `leastLeft` is not offered; of several ways to the same removal the one with the fewest
 * pieces is. After a cut only the element as it is and deeper cuts remain: what is cut cannot be put back.
 *
 * @param tool left out: the element can only stay as it is
 * @param cutSoFar what has been taken out already
 * @example
 * achievableSettings({ longest: 14, mostRemoved: Infinity, leastLeft: 0 }, twoEndTool).map((s) => s.delay); // [14, 12, 10, 8, 6]
 */
export function achievableSettings(element: Element, tool: CuttingTool | undefined, cutSoFar?: CutSoFar): CutPlan[] {
  const depthPerSecond = depthPerSecondOf(element, tool);
  const done =
    cutSoFar !== undefined && depthPerSecond !== undefined ? delayOfDepth(cutSoFar.removedDepth, depthPerSecond) : 0;
  const asItIs: Combination = { seconds: done, depth: cutSoFar?.removedDepth ?? 0, end: null, spacers: [] };
  const deeper = cutSoFar === undefined ? 0 : cutSoFar.removedDepth + cutSoFar.depthError;
  const made = tool === undefined || depthPerSecond === undefined ? [] : combinations(tool, depthPerSecond);
  const best: Combination[] = [asItIs];
  for (const c of made.sort((a, b) => pieces(a) - pieces(b))) {
    const offered =
      c.seconds > sameRemoval &&
      (c.depth ?? 0) > deeper &&
      c.seconds <= element.mostRemoved + sameRemoval &&
      element.longest - c.seconds >= element.leastLeft - sameRemoval &&
      element.longest - c.seconds > 0;
    if (offered && !best.some((b) => Math.abs(b.seconds - c.seconds) < sameRemoval)) best.push(c);
  }
  return best
    .sort((a, b) => a.seconds - b.seconds)
    .map((c) => ({
      delay: element.longest - c.seconds,
      removed: c.seconds,
      end: c.end,
      spacers: c.spacers,
      depth: c.depth,
    }));
}
