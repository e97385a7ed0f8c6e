import type { FinShape } from "../rocket.js";

/** What the aerodynamics needs of one fin's outline. */
export interface Planform {
  /** Of one side of one fin [m²]. */
  readonly area: number;
  /** From root to tip [m]. */
  readonly span: number;
  /** [m] */
  readonly rootChord: number;
  /** Mean aerodynamic chord [m]. */
  readonly meanChord: number;
  /** Area centroid's distance from the root [m]. */
  readonly spanStation: number;
  /** Quarter-chord point of the mean aerodynamic chord, behind the root's leading edge [m]. */
  readonly quarterChordAt: number;
  /** Sweep of the mid-chord line, from the root's middle to the area-weighted mean of the fin's [rad]. */
  readonly midChordSweep: number;
  /** Sweep of the leading edge, from its root to its area-weighted mean [rad]. */
  readonly leadingSweep: number;
  /** Of the two-fin wing without body, 2 S²/A. */
  readonly aspectRatio: number;
}

type Point = readonly [chordwise: number, spanwise: number];

interface Moments {
  area: number;
  chordSquared: number;
  spanwise: number;
  leading: number;
}

/** Where an edge stands chordwise at spanwise station `y`. */
export function crossing([x1, y1]: Point, [x2, y2]: Point, y: number): number {
  return x1 + ((x2 - x1) * (y - y1)) / (y2 - y1);
}

/** A trapezoid's corners, from the root's leading edge. */
export function trapezoidCorners({
  root,
  tip,
  span,
  sweep,
}: Extract<FinShape, { kind: "trapezoid" }>): readonly Point[] {
  return [
    [0, 0],
    [sweep, span],
    [sweep + tip, span],
    [root, 0],
  ];
}

const EDGE_STATIONS = [0.5 - Math.sqrt(1 / 12), 0.5 + Math.sqrt(1 / 12)] as const;

/** Integrals over the outline, exact: strips between corners, where every chord is linear, by a two-point rule. */
function polygonMoments(points: readonly Point[]): Moments {
  const edges = points.map((point, i): readonly [Point, Point] => [point, points[(i + 1) % points.length] ?? point]);
  const stations = [...new Set(points.map(([, y]) => y))].sort((a, b) => a - b);
  const sum: Moments = { area: 0, chordSquared: 0, spanwise: 0, leading: 0 };
  for (const [i, low] of stations.entries()) {
    const high = stations[i + 1];
    if (high === undefined) break;
    for (const part of EDGE_STATIONS) {
      const y = low + part * (high - low);
      const weight = (high - low) / 2;
      const crossings = edges
        .filter(([from, to]) => (from[1] < y && to[1] > y) || (from[1] > y && to[1] < y))
        .map(([from, to]) => crossing(from, to, y))
        .sort((a, b) => a - b);
      for (let k = 0; k + 1 < crossings.length; k += 2) {
        const leading = crossings[k] ?? 0;
        const chord = (crossings[k + 1] ?? leading) - leading;
        sum.area += weight * chord;
        sum.chordSquared += weight * chord * chord;
        sum.spanwise += weight * chord * y;
        sum.leading += weight * chord * leading;
      }
    }
  }
  return sum;
}

function fromMoments(moments: Moments, span: number, rootChord: number, rootLeading: number): Planform {
  const { area } = moments;
  const meanChord = moments.chordSquared / area;
  const spanStation = moments.spanwise / area;
  const meanLeading = moments.leading / area;
  return {
    area,
    span,
    rootChord,
    meanChord,
    spanStation,
    quarterChordAt: meanLeading + meanChord / 4,
    midChordSweep: Math.atan((meanLeading + meanChord / 2 - rootLeading - rootChord / 2) / spanStation),
    leadingSweep: Math.atan((meanLeading - rootLeading) / spanStation),
    aspectRatio: (2 * span * span) / area,
  };
}

/**
 * Area, mean chord and sweeps of one fin.
 *
 * Trapezoids and polygons exactly, the half ellipse by its closed forms. For the trapezoid, whose mid-chord line is
 * straight, the sweep is that line's.
 *
 * @param shape one fin's outline [m]
 * @returns lengths [m], areas [m²], angles [rad]
 * @source area, mean aerodynamic chord and its quarter point as defined in wing theory; the half ellipse: 8 CR/(3π), 4 S/(3π)
 * @example
 * finPlanform({ kind: "trapezoid", root: 0.2, tip: 0.1, span: 0.1, sweep: 0.1 }).quarterChordAt; // 0.0833333333
 */
export function finPlanform(shape: FinShape): Planform {
  switch (shape.kind) {
    case "trapezoid": {
      return fromMoments(polygonMoments(trapezoidCorners(shape)), shape.span, shape.root, 0);
    }
    case "ellipse": {
      const { root, span } = shape;
      const area = (Math.PI * root * span) / 4;
      const meanChord = (8 * root) / (3 * Math.PI);
      const moments = {
        area,
        chordSquared: area * meanChord,
        spanwise: (area * 4 * span) / (3 * Math.PI),
        leading: (area * (root - meanChord)) / 2,
      };
      return fromMoments(moments, span, root, 0);
    }
    case "polygon": {
      const { points } = shape;
      const first = points[0]?.[0] ?? 0;
      const last = points.at(-1)?.[0] ?? first;
      const span = Math.max(...points.map(([, y]) => y));
      return fromMoments(polygonMoments(points), span, last - first, first);
    }
  }
}
