import { endWords, type UnitSystem } from "@delaywright/documents";
import type { Limits } from "@delaywright/engine";
import type { ReactNode } from "react";
import type { WindowData } from "../compute/told.js";
import { amount, hundredths, shownUnit, upToWind } from "./figures.js";
import { Picture, type PictureTable } from "./picture.js";
import { lineStep, textWidth } from "./place-labels.js";
import { isFigure, linePath, type Point, within } from "./scale.js";
import { wrapWords } from "./wrap-words.js";

export interface WeatherWindowProps {
  readonly window: WindowData;
  readonly limits: Pick<Limits, "leastClean" | "leastHolds">;
  /** The reading, its doubt [m/s] and the lean of the guide [rad]; null: none. */
  readonly today: { readonly wind: number; readonly doubt: number; readonly tilt: number } | null;
  /** Where the unopened rocket comes down: direction in words, and for each tilt within how far [m]. */
  readonly unopened?: { readonly direction: string; readonly within: readonly (number | null)[] };
  /** Height of the wind [m]. */
  readonly windHeight: number;
  readonly units: UnitSystem;
}

/** Length of the edge's line beside its words [px]. */
const LIMIT_SIGN = 20;
const DEGREE = Math.PI / 180;
const degrees = (angle: number): string => `${Math.round(angle / DEGREE)}`;

/** How good a cell is beside the least odds, for its tone. */
export function cellTone(clean: number, holds: number, limits: WeatherWindowProps["limits"]): string {
  const { leastClean, leastHolds } = limits;
  if (clean >= leastClean && holds >= leastHolds) return "good";
  if (clean >= 0.75 * leastClean && holds >= leastHolds) return "worse";
  return clean >= 0.5 * leastClean ? "bad" : "worst";
}

/**
 * Where a wind lies among the columns, in columns from the first's middle.
 *
 * @param winds rising [m/s]
 * @example
 * columnOf(2.5, [0, 1, 2, 3]); // 2.5
 */
export function columnOf(wind: number, winds: readonly number[]): number {
  const last = winds.length - 1;
  const first = winds[0] ?? 0;
  if (last < 1 || !isFigure(wind)) return 0;
  for (let i = 0; i < last; i += 1) {
    const [from, to] = [winds[i] ?? first, winds[i + 1] ?? first];
    if (wind <= to || i === last - 1) return within(i + (wind - from) / (to - from || 1), -0.5, last + 0.5);
  }
  return 0;
}

/** Odds as a tide table over wind and tilt, with the edge drawn through, today above it and what the edge means below. */
export function WeatherWindow(props: WeatherWindowProps): ReactNode {
  const { window, limits, today, unopened, windHeight, units } = props;
  const { winds, tilts, clean, holds, ends } = window;
  const { perSi, unit } = shownUnit("wind", units);
  const windFigure = (wind: number): string => `${Math.round(wind * perSi * 2) / 2}`;
  const [end] = ends;
  const edgeWords = (): string => {
    if (!isFigure(end?.wind)) return "no wind is good";
    const upTo = `good up to ${upToWind(end.wind, units)}`;
    const why = endWords(end, limits, units);
    return why === "" ? `${upTo} and more` : `${upTo}, then ${why}`;
  };
  return (
    <Picture
      name="weather-window"
      title="Weather window"
      description={inWords(props)}
      table={tableOf(props, windFigure)}
      draw={({ width, grow, id }) => {
        const small = width < 430;
        const left = (small ? 34 : 52) * grow;
        const right = unopened ? (small ? 74 : 118) * grow : 12;
        const top = 38 * grow;
        const row = small ? 38 : 40;
        const cell = Math.max(1, (width - left - right) / Math.max(1, winds.length));
        const x = (column: number): number => left + cell * (column + 0.5);
        const y = (i: number): number => top + row * (i + 0.5);
        const foot = top + row * tilts.length;
        const every = Math.max(1, Math.ceil((24 * grow) / cell));
        const figures = tilts.flatMap((tilt, i) =>
          winds.flatMap((wind, j) => {
            if (j % every !== 0) return [];
            const tone = cellTone(clean[i]?.[j] ?? 0, holds[i]?.[j] ?? 0, limits);
            const words = hundredths(clean[i]?.[j] ?? Number.NaN);
            return [{ key: `${tilt} ${wind}`, tone, words, at: x(j), middle: y(i) }];
          }),
        );
        const points = edgeLine(
          ends.map(({ wind }) => x(isFigure(wind) ? columnOf(wind, winds) : -0.5)),
          { top, row, from: left, to: left + cell * winds.length },
        );
        const todayAt = today ? x(columnOf(today.wind, winds)) : 0;
        const todayWords = today ? `today ${amount(today.wind, "wind", units).replace(/\s\S+$/u, "")}` : "";
        const todayHalf = textWidth(todayWords, 13 * grow, true) / 2;
        const limitAt = left + LIMIT_SIGN + 8;
        const limitLines = wrapWords(edgeWords(), width - limitAt, 13 * grow, true);
        const limitTop = foot + 56 * grow;
        const step = lineStep(13 * grow);
        const height = limitTop + (limitLines.length - 1) * step + 6 * grow;
        const below = small
          ? `wind at ${amount(windHeight, "distance", units)}, ${unit}`
          : `wind at ${amount(windHeight, "distance", units)} above the ground, ${unit}; tilt of the guide in degrees`;
        return {
          height,
          marks: (
            <>
              {tilts.map((tilt, i) =>
                winds.map((wind, j) => (
                  <rect
                    key={`${tilt} ${wind}`}
                    className={`cell ${cellTone(clean[i]?.[j] ?? 0, holds[i]?.[j] ?? 0, limits)}`}
                    x={x(j) - cell / 2}
                    y={y(i) - row / 2}
                    width={cell + 0.3}
                    height={row + 0.3}
                  />
                )),
              )}
              <mask id={id("figures")} maskUnits="userSpaceOnUse" x={0} y={0} width={width} height={height}>
                <rect width={width} height={height} fill="white" />
                {figures.map(({ key, words, at, middle }) => {
                  const wide = textWidth(words, 13 * grow, true) + 4;
                  const tall = 16 * grow;
                  return (
                    <rect key={key} x={at - wide / 2} y={middle - tall / 2} width={wide} height={tall} fill="black" />
                  );
                })}
              </mask>
              <path className="limit-path" d={linePath(points)} mask={`url(#${id("figures")})`} />
              {figures.map(({ key, tone, words, at, middle }) => (
                <text key={key} className={`odd ${tone}`} x={at} y={middle + 5} textAnchor="middle">
                  {words}
                </text>
              ))}
              <line
                className="limit-path"
                x1={left}
                x2={left + LIMIT_SIGN}
                y1={limitTop - 4.5 * grow}
                y2={limitTop - 4.5 * grow}
              />
              {limitLines.map((line, i) => (
                <text key={line} className="limit-word" x={limitAt} y={limitTop + i * step}>
                  {line}
                </text>
              ))}
              {winds.map(
                (wind, j) =>
                  j % every === 0 && (
                    <text key={wind} className="tick" x={x(j)} y={foot + 17 * grow} textAnchor="middle">
                      {windFigure(wind)}
                    </text>
                  ),
              )}
              <text className="tick" x={left} y={foot + 34 * grow}>
                {below}
              </text>
              {tilts.map((tilt, i) => (
                <text key={tilt} className="tick" x={left - 8} y={y(i) + 4} textAnchor="end">
                  {i === 0 && !small ? `${degrees(tilt)} deg` : degrees(tilt)}
                </text>
              ))}
              <text className="tick" x={0} y={top - 6}>
                tilt
              </text>
              {today && (
                <>
                  <line
                    className="today"
                    x1={x(columnOf(today.wind - today.doubt, winds))}
                    x2={x(columnOf(today.wind + today.doubt, winds))}
                    y1={top - 16}
                    y2={top - 16}
                  />
                  <line className="today" x1={todayAt} x2={todayAt} y1={top - 21} y2={top - 5} />
                  <path className="solid" d={`M${todayAt} ${top - 1}l-4.5 -8h9z`} />
                  <text
                    className="value"
                    x={within(todayAt, left + todayHalf, width - todayHalf)}
                    y={top - 25}
                    textAnchor="middle"
                  >
                    {todayWords}
                  </text>
                </>
              )}
              {unopened && (
                <>
                  <text className="tick" x={width - right + 10} y={top - 6 - 14 * grow}>
                    unopened
                  </text>
                  <text className="tick" x={width - right + 10} y={top - 6}>
                    {small ? `to ${unopened.direction}` : `lands to the ${unopened.direction}`}
                  </text>
                  {tilts.map((tilt, i) => {
                    const far = unopened.within[i];
                    return (
                      isFigure(far) && (
                        <text key={tilt} className="value" x={width - right + 10} y={y(i) + 5}>
                          {`${small ? "" : "within "}${amount(far, "distance", units)}`}
                        </text>
                      )
                    );
                  })}
                </>
              )}
            </>
          ),
        };
      }}
    />
  );
}

/**
 * The edge through the rows' middles, drawn on by half a row at either end.
 *
 * @param edges where it lies in each row [px]
 */
export function edgeLine(
  edges: readonly number[],
  table: { readonly top: number; readonly row: number; readonly from: number; readonly to: number },
): readonly Point[] {
  const { top, row, from, to } = table;
  const count = edges.length;
  const [first, last] = [edges[0], edges[count - 1]];
  if (first === undefined || last === undefined) return [];
  const on = (at: number, near: number | undefined): number => within(at + (at - (near ?? at)) / 2, from, to);
  return [
    [on(first, edges[1]), top],
    ...edges.map((at, i): Point => [at, top + row * (i + 0.5)]),
    [on(last, edges[count - 2]), top + row * count],
  ];
}

function inWords({ window, limits, today, units }: WeatherWindowProps): string {
  const [end] = window.ends;
  const why = end === undefined ? "" : endWords(end, limits, units);
  const past = why === "" ? "" : ` Past it ${why}.`;
  const bound = isFigure(end?.wind)
    ? `With the least tilt it is good up to ${upToWind(end.wind, units)}.${past}`
    : "With the least tilt no wind is good.";
  const now = today ? ` Today ${amount(today.wind, "wind", units)}.` : "";
  return `Odds of a clean opening at ${window.delay.toFixed(1)} s over wind speed and tilt of the guide. ${bound}${now}`;
}

function tableOf({ window }: WeatherWindowProps, windFigure: (wind: number) => string): PictureTable {
  return {
    head: ["tilt, deg", ...window.winds.map((wind) => `wind ${windFigure(wind)}, clean in %`)],
    rows: window.tilts.map((tilt, i) => [
      degrees(tilt),
      ...window.winds.map((_, j) => hundredths(window.clean[i]?.[j] ?? Number.NaN)),
    ]),
  };
}
