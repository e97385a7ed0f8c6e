import type { SettingData } from "@delaywright/documents";
import type { Told } from "../compute/told.js";
import { textWidth } from "./place-labels.js";
import { isFigure, type Scale, scaleOf } from "./scale.js";

/** The time to the top [s], on the clock of the delay. */
export interface TopRange {
  readonly p05: number;
  readonly p50: number;
  readonly p95: number;
}

/** What decides how far the axis of the delay reaches. */
export interface AxisData {
  readonly settings: readonly Pick<SettingData, "delay">[];
  /** Delays that a deeper cut has taken away. */
  readonly gone?: readonly number[];
  readonly coast: TopRange | null;
}

/** A setting's place on the axis [px]. */
export interface NotchPlace {
  readonly mid: number;
  /** Width of its bar. */
  readonly bar: number;
  /** Width of its notch, no less than the bar. */
  readonly notch: number;
  /** Distance to the nearest other one, or to the end of the axis. */
  readonly gap: number;
}

/** The axis is never shorter than this [s]. */
const LEAST_SPAN = 4;
/** Bars are never thinner than this [px]. */
const THINNEST = 2;

/**
 * From and to of the axis: all settings and the range of the top, with some room beside them.
 *
 * @returns [s]
 * @example
 * axisSpan({ settings: [{ delay: 6 }, { delay: 14 }], coast: { p05: 9.4, p50: 9.9, p95: 10.4 } }); // [5.2, 14.8]
 */
export function axisSpan({ settings, gone = [], coast }: AxisData): readonly [number, number] {
  const seen = [...settings.map(({ delay }) => delay), ...gone, ...(coast ? [coast.p05, coast.p95] : [])].filter(
    isFigure,
  );
  if (seen.length === 0) return [0, LEAST_SPAN];
  const [least, most] = [Math.min(...seen), Math.max(...seen)];
  const beside = Math.max(0.6, (most - least) * 0.1, (LEAST_SPAN - (most - least)) / 2);
  return [Math.max(-beside / 3, least - beside), most + beside];
}

/** The axis in the picture: seconds of delay to px. */
export function delayScale(data: AxisData, left: number, right: number): Scale {
  const [from, to] = axisSpan(data);
  return scaleOf(from, to, left, Math.max(left + 1, right));
}

/**
 * Where notches lie and how wide they may be without touching each other.
 *
 * @param delays rising [s]
 * @param widest a bar where there is room [px]
 */
export function notchPlaces(delays: readonly number[], x: Scale, widest: number): readonly NotchPlace[] {
  return delays.map((delay, i) => {
    const mid = x(delay);
    const before = i > 0 ? mid - x(delays[i - 1] ?? delay) : Number.POSITIVE_INFINITY;
    const after = i < delays.length - 1 ? x(delays[i + 1] ?? delay) - mid : Number.POSITIVE_INFINITY;
    const near = Math.min(before, after);
    const gap = Number.isFinite(near) ? near : x.end - x.start;
    const bar = Math.max(THINNEST, Math.min(widest, gap * 0.62));
    return { mid, bar, notch: bar + Math.min(4, Math.max(0, gap - bar - 1.5)), gap };
  });
}

/** A label that wants to stand at the middle of its mark. */
export interface MiddleLabel {
  readonly mid: number;
  readonly words: string;
  readonly size: number;
  readonly strong?: boolean;
}

/** Left and right end of a label's words [px]. */
export function labelEnds({ mid, words, size, strong }: MiddleLabel): readonly [number, number] {
  const half = textWidth(words, size, strong) / 2;
  return [mid - half, mid + half];
}

/** Above this many labels, they are thinned out evenly or not at all. */
const FEW = 8;

/**
 * Which labels of a row are written so that none touches another: the first choice always, the others evenly thinned.
 *
 * @param labels in the order of their places
 * @param first index of the label that is always written; −1: none
 * @param apart least distance between two labels [px]
 * @returns whether each label is written
 * @example
 * labelsThatFit([{ mid: 0, words: "6", size: 12 }, { mid: 3, words: "7", size: 12 }], 0, 4); // [true, false]
 */
export function labelsThatFit(labels: readonly MiddleLabel[], first: number, apart: number): readonly boolean[] {
  const written = labels.map((_, i) => i === first);
  const ends = labels.map(labelEnds);
  const touches = (i: number, j: number): boolean => {
    const [a, b] = [ends[i], ends[j]];
    return a !== undefined && b !== undefined && a[0] < b[1] + apart && b[0] < a[1] + apart;
  };
  const from = Math.max(0, first);
  let stride = 1;
  while (stride < labels.length) stride *= 2;
  for (; stride >= 1; stride /= 2) {
    const step = stride;
    const more = labels.map((_, i) => i).filter((i) => !written[i] && (i - from) % step === 0);
    const free = more.filter((i) => !labels.some((_, j) => written[j] && touches(i, j)));
    const even = more.every((i) => free.includes(i) || (first >= 0 && touches(i, first)));
    if (!even && labels.length > FEW) break;
    for (const i of free) if (!labels.some((_, j) => written[j] && touches(i, j))) written[i] = true;
  }
  return written;
}

/**
 * Whole seconds for the axis, as many as there is room for.
 *
 * @param room least distance of two [px]
 */
export function wholeSeconds(x: Scale, room: number): readonly number[] {
  const second = Math.abs(x(x.from + 1) - x(x.from));
  const step = [1, 2, 5, 10, 20, 50].find((each) => each * second >= room) ?? 100;
  const ticks: number[] = [];
  for (let at = Math.ceil(x.from / step - 1e-9) * step; at <= x.to + 1e-9 && ticks.length < 200; at += step)
    ticks.push(at === 0 ? 0 : at);
  return ticks;
}

/** A hill on the axis: seconds and density [1/s]. */
export type Hill = readonly (readonly [seconds: number, density: number])[];

/** The time to the top as a hill; empty without spread. */
export function topHill(density: Told["density"], shift: number): Hill {
  if (!density || !isFigure(density.from) || !(density.step > 0)) return [];
  const { from, step } = density;
  return density.values.flatMap((value, i) =>
    isFigure(value) && value >= 0 ? [[from + i * step + shift, value] as const] : [],
  );
}

/**
 * When the charge fires, as a hill of the same area: the delay with its scatter.
 *
 * @param delay [s]
 * @param deviation one sigma [s]
 */
export function firesHill(delay: number, deviation: number): Hill {
  if (!(deviation > 0) || !Number.isFinite(delay) || !Number.isFinite(deviation)) return [];
  const steps = 60;
  return Array.from({ length: steps + 1 }, (_, i) => {
    const z = -3.2 + (6.4 * i) / steps;
    return [delay + z * deviation, Math.exp(-0.5 * z * z) / (deviation * Math.sqrt(2 * Math.PI))] as const;
  });
}
