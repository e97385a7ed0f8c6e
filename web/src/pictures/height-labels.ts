import type { UnitSystem } from "@delaywright/documents";
import { amount, secondsWords } from "./figures.js";
import {
  type FanColumns,
  type FlownColumns,
  type OpenedColumns,
  type OpeningColumns,
  type Panel,
  stretchOf,
} from "./height-panels.js";
import { type Label, type LabelLine, type Obstacle, placeLabels, type Spot } from "./place-labels.js";
import { isFigure, type Scale } from "./scale.js";

/** A label with its place and the classes of its lines. */
export interface HeightLabel {
  readonly key: string;
  readonly lines: readonly LabelLine[];
  readonly spot: Spot;
  readonly looks: readonly string[];
}

/** Flights as heights over time. */
export interface HeightFigures {
  /** Bands up to the last opening and from there down to the ground; null without spread. */
  readonly climb: FanColumns | null;
  readonly descent: FanColumns | null;
  /** One mark each; empty where nothing opens. */
  readonly openings: OpeningColumns;
  /** The nominal flight, opened, and the same if nothing opens. */
  readonly nominal: OpenedColumns;
  readonly unopened: FlownColumns;
  readonly burnout: { readonly time: number; readonly height: number } | null;
  /** Height of the top [m] and when the nominal flight reaches it [s]; null where it never leaves the guide. */
  readonly top: { readonly p05: number; readonly p50: number; readonly p95: number; readonly time: number } | null;
  /** Above the pad [m]; null without one. */
  readonly ceiling: number | null;
  /** Least height of an opening [m]. */
  readonly floor: number;
  readonly units: UnitSystem;
}

export interface HeightLabelInputs extends HeightFigures {
  readonly ceilingShown: boolean;
  readonly panels: readonly Panel[];
  readonly y: Scale;
  readonly base: number;
  readonly left: number;
  readonly grow: number;
  readonly small: boolean;
}

interface Wanted extends Label {
  readonly key: string;
  readonly looks: readonly string[];
}

/** Words on the lines and marks of the picture, each where it covers least. */
export function heightLabels(inputs: HeightLabelInputs): readonly HeightLabel[] {
  const { panels, y, base, left, grow } = inputs;
  const right = panels.at(-1)?.x.end ?? left;
  const wanted = [
    ceilingLabel(inputs),
    burnoutLabel(inputs),
    topLabel(inputs),
    floorLabel(inputs),
    unopenedLabel(inputs),
  ];
  const labels = wanted.filter((label): label is Wanted => label !== null);
  const bounds = { left: left + 2, right: right + 2, top: 0, bottom: base - 1 };
  const floorLine: Obstacle = {
    box: { left, right, top: y(inputs.floor) - 2, bottom: y(inputs.floor) + 2 },
    weight: 4,
  };
  const spots = placeLabels(labels, [floorLine, ...obstaclesOf(inputs, grow)], bounds);
  return labels.map(({ key, lines, looks }, i) => ({ key, lines, looks, spot: spots[i] as Spot }));
}

function ceilingLabel({ ceiling, ceilingShown, y, left, grow, units }: HeightLabelInputs): Wanted | null {
  if (ceiling === null) return null;
  const height = amount(ceiling, "distance", units);
  const words = ceilingShown ? `ceiling ${height}` : `ceiling ${height}, above this picture`;
  const line = { words, size: 13 * grow, strong: ceilingShown };
  const at = ceilingShown ? y(ceiling) - 6 : 14 * grow;
  return {
    key: "ceiling",
    lines: [line],
    spots: [{ x: left + 6, y: at, anchor: "start" }],
    looks: [ceilingShown ? "limit-word" : "tick"],
  };
}

function burnoutLabel({ burnout, panels, base, grow }: HeightLabelInputs): Wanted | null {
  const [panel] = panels;
  if (burnout === null || panel === undefined) return null;
  const x = panel.x(burnout.time);
  return {
    key: "burnout",
    lines: [{ words: `burnout ${secondsWords(burnout.time)}`, size: 12 * grow }],
    spots: [0, 18, 36].map((up) => ({ x: x + 5, y: base - 7 - up, anchor: "start" as const })),
    looks: ["tick halo"],
  };
}

function topLabel({ top, panels, y, grow, units, small }: HeightLabelInputs): Wanted | null {
  const [panel] = panels;
  if (top === null || panel === undefined || !isFigure(top.p50)) return null;
  const height = amount(top.p50, "distance", units);
  const [low, high] = [amount(top.p05, "distance", units).split(/\s/)[0], amount(top.p95, "distance", units)];
  const words =
    low === high.split(/\s/)[0]
      ? [`top ${height}`]
      : small
        ? [`top ${height}`, "9 in 10 from", `${low} to ${high}`]
        : [`top: half above ${height}`, `9 in 10 from ${low} to ${high}`];
  const shares = [0.78, 0.7, 0.62, 0.54, 0.46, 0.38, 0.3];
  const x = panel.x(Math.min(top.time, panel.to));
  return {
    key: "top",
    lines: words.map((each, i) => ({ words: each, size: (i === 0 ? 13 : 12) * grow, strong: i === 0 })),
    spots: shares.flatMap((share) =>
      [0, 30, 60, -30].map((aside) => ({ x: x + aside, y: y(top.p50 * share), anchor: "middle" as const })),
    ),
    looks: ["value halo", "tick halo"],
  };
}

function floorLabel({ floor, panels, y, grow, units, base }: HeightLabelInputs): Wanted | null {
  const [panel] = panels;
  if (panel === undefined || !(floor > 0)) return null;
  const [above, below] = [y(floor) - 5, Math.min(base - 5, y(floor) + 14 * grow)];
  const beside = [panel.x.end - 4, panel.x.end - 60, (panel.x.start + panel.x.end) / 2 + 40];
  return {
    key: "floor",
    lines: [{ words: `floor ${amount(floor, "distance", units)}`, size: 12 * grow }],
    spots: beside.flatMap((x) => [above, below].map((at) => ({ x, y: at, anchor: "end" as const }))),
    looks: ["tick halo"],
  };
}

/** Beside the dotted line, wherever there is room along it. */
function unopenedLabel({ unopened, nominal, panels, y, grow, small }: HeightLabelInputs): Wanted | null {
  const opening = nominal.opening === null ? undefined : nominal.time[nominal.opening];
  if (opening === undefined) return null;
  const words = small ? ["unopened"] : ["if nothing", "opens"];
  const spots = [...panels].reverse().flatMap((panel) => {
    const rows = stretchOf(unopened, Math.max(opening, panel.from), panel.to);
    return rows.flatMap(([time, height]): readonly Spot[] => [
      { x: panel.x(time) + 9, y: y(height), anchor: "start" },
      { x: panel.x(time) - 9, y: y(height), anchor: "end" },
    ]);
  });
  if (spots.length === 0) return null;
  const middle = spots.length / 2;
  const order = spots.map((_, i) => i).sort((a, b) => Math.abs(a - middle) - Math.abs(b - middle));
  const kept = order.filter((_, i) => i % Math.ceil(order.length / 40) === 0);
  return {
    key: "unopened",
    lines: words.map((each) => ({ words: each, size: 12 * grow })),
    spots: kept.map((i) => spots[i] as Spot),
    looks: ["tick halo"],
  };
}

function obstaclesOf(inputs: HeightLabelInputs, grow: number): readonly Obstacle[] {
  const { nominal, unopened, climb, descent, openings, panels, y } = inputs;
  const boxes: Obstacle[] = [];
  const dot = (x: number, at: number, half: number, weight: number): void => {
    boxes.push({ box: { left: x - half, right: x + half, top: at - half, bottom: at + half }, weight });
  };
  for (const panel of panels) {
    for (const flown of [nominal, unopened]) {
      const rows = Array.from({ length: 60 }, (_, i) => panel.from + ((panel.to - panel.from) * i) / 59);
      for (const time of rows) {
        const at = stretchOf(flown, time, time)[0];
        if (at !== undefined && at[1] > 0) dot(panel.x(time), y(at[1]), 5, 3);
      }
    }
    for (const fan of [climb, descent]) {
      if (fan === null) continue;
      for (let i = 0; i < fan.times.length; i += Math.max(1, Math.floor(fan.times.length / 48))) {
        const time = fan.times[i] ?? Number.NaN;
        if (time < panel.from || time > panel.to) continue;
        const x = panel.x(time);
        const [top, bottom] = [y(fan.p95[i] ?? 0), y(fan.p05[i] ?? 0)];
        boxes.push({ box: { left: x - 5, right: x + 5, top, bottom }, weight: 0.6 });
      }
    }
  }
  for (let i = 0; i < openings.time.length; i++) {
    const time = openings.time[i] ?? Number.NaN;
    const panel = panels.find(({ from, to }) => time >= from && time <= to);
    const height = openings.height[i] ?? Number.NaN;
    if (panel !== undefined && Number.isFinite(height)) dot(panel.x(time), y(height), 4 * grow, 6);
  }
  return boxes;
}
