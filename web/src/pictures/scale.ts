import { scaleLinear } from "d3-scale";
import { area, line } from "d3-shape";

/** A point of a drawing [px], y down. */
export type Point = readonly [x: number, y: number];

/** From a figure to its place in the drawing [px]. It is finite for every figure: what is not finite lies at the start. */
export interface Scale {
  (value: number): number;
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly end: number;
}

/**
 * A linear scale. An empty or backward span of figures is widened, so that nothing divides by zero.
 *
 * @param from the figure at `start`
 * @param to the figure at `end`
 * @param start [px]
 * @param end [px]
 * @example
 * scaleOf(0, 100, 50, 250)(25); // 100
 */
export function scaleOf(from: number, to: number, start: number, end: number): Scale {
  const first = Number.isFinite(from) ? from : 0;
  const last = Number.isFinite(to) && to > first ? to : first + 1;
  const linear = scaleLinear([first, last], [start, end]);
  const at = (value: number): number => (Number.isFinite(value) ? linear(value) : start);
  return Object.assign(at, { from: first, to: last, start, end });
}

/**
 * Round figures for an axis.
 *
 * @param count about how many
 * @example
 * ticksOf(0, 63, 3); // [0, 20, 40, 60]
 */
export function ticksOf(from: number, to: number, count: number): readonly number[] {
  if (!Number.isFinite(from) || !Number.isFinite(to) || to <= from) return [];
  return scaleLinear([from, to], [0, 1]).ticks(count);
}

const drawn = ([x, y]: Point): boolean => Number.isFinite(x) && Number.isFinite(y);
const short = (value: number): number => Math.round(value * 10) / 10;

/** A line through points; points that are not finite are left out. Empty where there are none. */
export function linePath(points: readonly Point[]): string {
  const path = line<Point>(
    ([x]) => short(x),
    ([, y]) => short(y),
  );
  return path(points.filter(drawn)) ?? "";
}

/** The area between two lines that run the same way. */
export function bandPath(upper: readonly Point[], lower: readonly Point[]): string {
  const there = linePath(upper);
  const back = linePath([...lower].reverse());
  return there && back ? `${there}L${back.slice(1)}Z` : "";
}

/** The area between a line and a level [px]. */
export function hillPath(points: readonly Point[], base: number): string {
  const path = area<Point>(
    ([x]) => short(x),
    short(base),
    ([, y]) => short(y),
  );
  return path(points.filter(drawn)) ?? "";
}

/** A figure between two others; what is not finite becomes the lower one. */
export function within(value: number, least: number, most: number): number {
  return Number.isFinite(value) ? Math.min(most, Math.max(least, value)) : least;
}

/** A figure that can be drawn. */
export function isFigure(value: number | null | undefined): value is number {
  return typeof value === "number" && Number.isFinite(value);
}
