import type { ReactNode } from "react";
import { firesHill, type Hill, topHill } from "./delay-axis.js";
import type { DelayModel, OddsPlace } from "./odds-model.js";
import { textWidth } from "./place-labels.js";
import { hillPath, linePath, type Point } from "./scale.js";

/** How much of the panel the highest hill takes. */
const TALL = 0.86;

/** Stacks closer than this hide what lies behind them [px]. */
const DENSE = 20;

interface HillPoints {
  readonly hill: readonly Point[];
  readonly curve: readonly Point[];
}

/** Both hills as points of the picture; null without spread. */
function hillPoints(model: DelayModel, place: OddsPlace): HillPoints | null {
  const { data, settings, chosen, x, left, right } = model;
  const reached = topHill(data.density, model.shift);
  const mine = settings[chosen];
  const fires = mine ? firesHill(mine.delay, mine.delaySd) : [];
  const highest = Math.max(0, ...[...reached, ...(reached.length > 0 ? fires : [])].map(([, density]) => density));
  if (!(highest > 0)) return null;
  const tall = (place.base - place.top) * TALL;
  const points = (hill: Hill): readonly Point[] =>
    hill
      .map(([seconds, density]): Point => [x(seconds), place.base - (density / highest) * tall])
      .filter(([at]) => at >= left && at <= right);
  return { hill: points(reached), curve: points(fires) };
}

/** The time to the top as a hill and, to the same area, when the charge fires: behind the stacks. */
export function Hills({ model, place }: { model: DelayModel; place: OddsPlace }): ReactNode {
  const { x, top } = model;
  const points = hillPoints(model, place);
  if (!points)
    return top && <line className="thin dash" x1={x(top.p50)} y1={place.top} x2={x(top.p50)} y2={place.base} />;
  return (
    <>
      <path className="veil" d={hillPath(points.hill, place.base)} />
      <path className="fires" d={linePath(points.curve)} />
    </>
  );
}

/** What is said of the hills before the stacks: words where there is room, an outline where stacks stand close. */
export function HillsInFront({ model, place }: { model: DelayModel; place: OddsPlace }): ReactNode {
  const points = hillPoints(model, place);
  if (!points) return null;
  const dense = Math.min(...model.places.map(({ gap }) => gap)) < DENSE && model.places.length > 4;
  const outline = linePath(points.hill.filter(([, y]) => y < place.base - 2));
  return (
    <>
      {dense && (
        <>
          <path className="odds-hill-back" d={outline} />
          <path className="odds-hill" d={outline} />
        </>
      )}
      <HillWords model={model} place={place} hill={points.hill} curve={points.curve} />
    </>
  );
}

/** Words on the hills, where no stack stands in their way. */
function HillWords(props: {
  readonly model: DelayModel;
  readonly place: OddsPlace;
  readonly hill: readonly Point[];
  readonly curve: readonly Point[];
}): ReactNode {
  const { model, place, hill, curve } = props;
  const { small, grow, places, left, right } = model;
  if (small) return null;
  const size = 12 * grow;
  const taken: (readonly [number, number, number])[] = [];
  const spot = (points: readonly Point[], words: string, heights: readonly number[]): Point | null => {
    const peak = points.reduce((best, point, i) => (point[1] < (points[best]?.[1] ?? 1e9) ? i : best), 0);
    const tall = place.base - (points[peak]?.[1] ?? place.base);
    const wide = textWidth(words, size) + 6;
    for (const height of heights)
      for (const side of [1, -1]) {
        const flank = side > 0 ? points.slice(peak) : points.slice(0, peak + 1).reverse();
        const on = flank.find(([, at]) => place.base - at <= height * tall);
        if (!on) continue;
        const from = side > 0 ? on[0] + 8 : on[0] - 8 - wide;
        const free =
          from > left &&
          from + wide < right &&
          places.every(({ mid, bar }) => from + wide < mid - bar / 2 - 2 || from > mid + bar / 2 + 2) &&
          taken.every(([a, b, y]) => from > b || from + wide < a || Math.abs(y - on[1]) > 16 * grow);
        if (!free) continue;
        taken.push([from, from + wide, on[1]]);
        return [from, on[1]];
      }
    return null;
  };
  const labels = [
    ["time to the top", spot(hill, "time to the top", [0.5, 0.6, 0.4, 0.7, 0.25])],
    ["charge fires", spot(curve, "charge fires", [0.8, 0.9, 0.6, 0.7, 0.45, 0.3])],
  ] as const;
  return labels.map(
    ([words, at]) =>
      at && (
        <g key={words}>
          <rect className="plate" x={at[0]} y={at[1] - size} width={textWidth(words, size) + 2} height={size * 1.35} />
          <text className="tick" x={at[0] + 3} y={at[1]}>
            {words}
          </text>
        </g>
      ),
  );
}
