import { type UnitSystem, windBoundSaid } from "@delaywright/documents";
import type { ReactNode } from "react";
import { amount, shownUnit, upToWind } from "./figures.js";
import { hatchFill } from "./hatches.js";
import { Picture } from "./picture.js";
import { textWidth } from "./place-labels.js";
import { isFigure, scaleOf, ticksOf, within } from "./scale.js";

export interface WindGaugeProps {
  /** The reading [m/s]. */
  readonly now: number;
  /** One sigma of it [m/s]; 0: none. */
  readonly doubt: number;
  /** Wind up to which it is good [m/s]; null: no wind is. */
  readonly edge: number | null;
  /** End of the gauge [m/s]. */
  readonly max: number;
  readonly units: UnitSystem;
  /** The age of an old reading in words, "74 min ago"; null: fresh. */
  readonly stale: string | null;
}

/** Heights in the gauge [px]. */
const MIDDLE = 44;
const HALF = 11;

/** The wind read against the edge up to which it is good, with the reading's doubt. */
export function WindGauge({ now, doubt, edge, max, units, stale }: WindGaugeProps): ReactNode {
  const words = (speed: number): string => amount(speed, "wind", units);
  const { perSi } = shownUnit("wind", units);
  const found = isFigure(edge) && edge > 0 ? edge : 0;
  // it stands where it is said to stand
  const good = windBoundSaid(found, units);
  const end = Math.max(isFigure(max) && max > 0 ? max : 8, isFigure(now) ? now * 1.1 : 0);
  return (
    <Picture
      name="wind-gauge"
      title="Wind against the edge"
      description={`Wind ${words(now)}${stale ? `, read ${stale}` : ""}. ${found > 0 ? `Good up to ${upToWind(found, units)}.` : "No wind is good."}`}
      saves={false}
      firstWidth={362}
      draw={({ width, grow }) => {
        const x = scaleOf(0, end, 12, Math.max(13, width - 12));
        const [at, stop] = [x(within(now, 0, end)), x(Math.min(good, end))];
        const [from, to] = [x(within(now - doubt, 0, end)), x(within(now + doubt, 0, end))];
        const size = 13 * grow;
        const edgeWords = `edge ${upToWind(found, units)}`;
        const edgeWide = textWidth(edgeWords, size, true);
        const edgeStart = stop + 7 + edgeWide <= width ? stop + 7 : stop - 7 - edgeWide;
        const nowWords = stale ?? `now ${words(now)}`;
        const nowHalf = textWidth(nowWords, size, true) / 2;
        const nowMid = within(at, nowHalf, Math.max(nowHalf, width - nowHalf));
        const fits = good === 0 || nowMid + nowHalf < edgeStart - 6 || nowMid - nowHalf > edgeStart + edgeWide + 6;
        const rightEnds = stop + 7 + edgeWide + 16 + 2 * nowHalf < width;
        const aside = edgeStart < stop || !rightEnds ? 0 : width - 12;
        return {
          height: MIDDLE + HALF + 28 * grow,
          marks: (
            <>
              {good > 0 && (
                <rect className="gauge-good" x={x(0)} y={MIDDLE - HALF} width={stop - x(0)} height={2 * HALF} />
              )}
              <rect
                className="gauge-bad"
                x={stop}
                y={MIDDLE - HALF}
                width={Math.max(0, x(end) - stop)}
                height={2 * HALF}
                style={{ fill: hatchFill(good > 0 ? "late" : "early") }}
              />
              {ticksOf(0, end * perSi, Math.min(9, width / (34 * grow))).map((tick) => (
                <g key={tick}>
                  <line
                    className="axis"
                    x1={x(tick / perSi)}
                    x2={x(tick / perSi)}
                    y1={MIDDLE + HALF}
                    y2={MIDDLE + HALF + 7}
                  />
                  <text className="tick" x={x(tick / perSi)} y={MIDDLE + HALF + 9 + 13 * grow} textAnchor="middle">
                    {tick}
                  </text>
                </g>
              ))}
              {good > 0 ? (
                <>
                  <line className="limit" x1={stop} x2={stop} y1={MIDDLE - 20} y2={MIDDLE + HALF + 7} />
                  <text className="value" x={edgeStart} y={MIDDLE - 17}>
                    {edgeWords}
                  </text>
                </>
              ) : (
                <text className="value" x={x(end)} y={MIDDLE - 17} textAnchor="end">
                  no wind is good
                </text>
              )}
              {doubt > 0 && (
                <rect
                  className={stale ? "doubt stale" : "doubt"}
                  x={from}
                  y={MIDDLE - 5}
                  width={Math.max(0, to - from)}
                  height={10}
                />
              )}
              <line className={stale ? "needle stale" : "needle"} x1={at} x2={at} y1={MIDDLE - 14} y2={MIDDLE + 14} />
              {fits ? (
                <text className="value" x={nowMid} y={MIDDLE - 19} textAnchor="middle">
                  {nowWords}
                </text>
              ) : (
                <text className="value" x={aside} y={MIDDLE - 17} textAnchor={aside === 0 ? "start" : "end"}>
                  {nowWords}
                </text>
              )}
            </>
          ),
        };
      }}
    />
  );
}
