import { type FlownSeries, type FlownWindow, shownPart } from "./flown-view.js";
import type { Point, Scale } from "./scale.js";

/**
 * Points of a line within a window, and one beyond each of its edges. Of those in one column of pixels the first, the lowest,
 * the highest and the last are drawn: no more can be seen, and no spike is lost.
 *
 * @param x of times
 * @param y of figures
 */
export function pointsOf(line: FlownSeries, window: FlownWindow, x: Scale, y: Scale): readonly Point[] {
  const { start, end } = shownPart(line.time, window);
  const points: Point[] = [];
  const column = new PixelColumn(points);
  for (let i = Math.max(0, start - 1); i <= end && i < line.time.length; i++) {
    const value = line.value[i] ?? Number.NaN;
    if (Number.isFinite(value)) column.take(x(line.time[i] ?? Number.NaN), y(value));
  }
  column.end();
  return points;
}

/** What is to be drawn of the points that fall into one column of pixels, until one falls into another. */
class PixelColumn {
  private readonly points: Point[];
  private at = Number.NaN;
  private count = 0;
  private first: Point = [0, 0];
  private last: Point = [0, 0];
  private low: Point = [0, 0];
  private high: Point = [0, 0];

  constructor(points: Point[]) {
    this.points = points;
  }

  take(x: number, y: number): void {
    const point: Point = [x, y];
    const at = Math.floor(x);
    if (at !== this.at) {
      this.end();
      this.at = at;
      this.first = this.low = this.high = point;
    }
    this.count += 1;
    this.last = point;
    if (y < this.high[1]) this.high = point;
    if (y > this.low[1]) this.low = point;
  }

  /** Nothing more falls into it. */
  end(): void {
    if (this.count === 0) return;
    const { first, last, low, high } = this;
    const [one, other] = low[0] < high[0] ? [low, high] : [high, low];
    let before: Point | null = null;
    for (const point of [first, one, other, last]) {
      if (point !== before) this.points.push(point);
      before = point;
    }
    this.count = 0;
  }
}
