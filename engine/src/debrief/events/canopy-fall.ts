const GRAVITY = 9.80665;

/** Usual way that a canopy covers while it fills: 60 m²/s over its steady descent [m]; one sigma of its logarithm where none is known. Own default, no source. */
export const usualFill = { way: 60, error: 0.6 } as const;

/** A fall on equal steps of time. */
export interface Fall {
  readonly step: number;
  readonly heights: Float64Array;
  /** What is felt on the path, the mean of each step that ends there: drag over mass [m/s²]. */
  readonly felt: Float64Array;
  /** Time of the top within it [s]; NaN where it falls from the start or never. */
  readonly top: number;
}

/**
 * A point that falls while a canopy fills.
 *
 * @param p opening [s], filling time [s], sideways speed at the start [m/s], steady descent under the canopy [m/s],
 * height [m] and climb [m/s] at the start, drag before it over mass and speed squared [1/m], power of the filling time by which it grows (2 where left out)
 */
export function fallUnder(p: readonly number[], from: number, to: number): Fall {
  const [opens, fill, sideways, descent, start, climb, body, growth = 2] = p as readonly [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number?,
  ];
  const step = Math.max(0.02, (to - from) / 250);
  const count = Math.ceil((to - from) / step) + 2;
  const heights = new Float64Array(count);
  const felt = new Float64Array(count);
  const least = Math.max(0, body);
  const full = GRAVITY / Math.max(1, descent) ** 2;
  let [h, v, u] = [start, climb, sideways];
  let top = Number.NaN;
  heights[0] = h;
  for (let i = 1; i < count; i++) {
    const t = from + (i - 0.5) * step;
    const grown = Math.min(1, Math.max(0, (t - opens) / Math.max(0.05, fill))) ** growth;
    const half = v - 0.5 * GRAVITY * step;
    const speed = Math.sqrt(half * half + u * u);
    const drag = (least + (full - least) * grown) * speed;
    // half a step of gravity, drag as it acts alone, the other half: a stiff canopy stays bounded
    const next = half / (1 + drag * step) - 0.5 * GRAVITY * step;
    if (v > 0 && next <= 0) top = from + (i - 1 + v / (v - next)) * step;
    h += 0.5 * step * (v + next);
    v = next;
    u /= 1 + drag * step;
    heights[i] = h;
    felt[i] = (drag * speed) / (1 + drag * step);
  }
  felt[0] = felt[1]!;
  return { step, heights, felt, top };
}

/** A value between two of a row of them; the first or last outside. */
export function between(values: Float64Array, place: number): number {
  const i = Math.max(0, Math.min(Math.floor(place), values.length - 2));
  return values[i]! + (values[i + 1]! - values[i]!) * Math.max(0, Math.min(1, place - i));
}
