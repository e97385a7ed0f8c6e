import type { SettingData, UnitSystem } from "@delaywright/documents";
import type { Limits } from "@delaywright/engine";
import type { PictureData, Told } from "../compute/told.js";
import { delayScale, type NotchPlace, notchPlaces, type TopRange } from "./delay-axis.js";
import { isFigure, type Scale } from "./scale.js";

/** What the pictures of the odds and of the opening speed over the delay show. */
export interface DelayPictureData {
  readonly settings: readonly SettingData[];
  /** Odds over any delay; null while they are not known yet. */
  readonly curve: PictureData["curve"] | null;
  /** Of the time to the top, seconds after burnout; null without spread. */
  readonly density: Told["density"];
  /** Time to the top, seconds after burnout; null where no flight gets there. */
  readonly coast: TopRange | null;
  readonly limits: Pick<Limits, "openingSpeed" | "leastClean">;
  /** The delay that stands first: the flyer's choice, else the delay to cut [s]; null: none. */
  readonly chosen: number | null;
  /** The notch of the chosen delay is the next act: nothing else is in the accent. */
  readonly next: boolean;
  readonly state: "settling" | "settled" | "stale";
  /** Seconds that have been cut out of the motor in hand [s]; null: nothing. */
  readonly cutSoFar: number | null;
  /** Delays that the tool could make of the whole element, and that are gone by now [s]. */
  readonly gone?: readonly number[];
  /** Clock of the delay, and burnout from ignition [s] where it counts from ignition. */
  readonly clock?: { readonly from: "burnout" } | { readonly from: "ignition"; readonly burnEnd: number };
  readonly units: UnitSystem;
}

/** The same, sorted and laid out on the axis. */
export interface DelayModel {
  readonly data: DelayPictureData;
  readonly settings: readonly SettingData[];
  readonly places: readonly NotchPlace[];
  /** Index of the chosen setting; −1: none. */
  readonly chosen: number;
  readonly gone: readonly number[];
  readonly x: Scale;
  readonly left: number;
  readonly right: number;
  readonly top: TopRange | null;
  /** Added to seconds after burnout for the axis [s]. */
  readonly shift: number;
  readonly small: boolean;
  readonly grow: number;
  readonly width: number;
}

/** Where the panel of the odds lies [px]. */
export interface OddsPlace {
  readonly top: number;
  readonly base: number;
}

/** Delays closer than this are the same [s]. */
const SAME = 1e-3;
/** Below this width a picture is drawn for the phone [px]. */
const PHONE = 560;

/** Lays the settings out over the room there is. */
export function delayModel(data: DelayPictureData, width: number, grow: number): DelayModel {
  const small = width < PHONE;
  const left = (small ? 30 : 46) * grow;
  const right = Math.max(left + 1, width - (small ? 6 : 14));
  const shift = data.clock?.from === "ignition" && isFigure(data.clock.burnEnd) ? data.clock.burnEnd : 0;
  const { coast } = data;
  const top =
    coast && isFigure(coast.p05) && isFigure(coast.p50) && isFigure(coast.p95)
      ? { p05: coast.p05 + shift, p50: coast.p50 + shift, p95: coast.p95 + shift }
      : null;
  const settings = data.settings.filter(({ delay }) => isFigure(delay)).sort((a, b) => a.delay - b.delay);
  const gone = (data.gone ?? []).filter((delay) => isFigure(delay) && !settings.some((s) => near(s.delay, delay)));
  const x = delayScale({ settings, gone, coast: top }, left, right);
  const all = [...settings.map(({ delay }) => delay), ...gone].sort((a, b) => a - b);
  const spread = notchPlaces(all, x, small ? 24 : 30);
  const places = settings.map(({ delay }) => spread[all.indexOf(delay)] ?? { mid: x(delay), bar: 2, notch: 2, gap: 2 });
  const chosen = settings.findIndex((s) => data.chosen !== null && near(s.delay, data.chosen));
  return { data, settings, places, chosen, gone, x, left, right, top, shift, small, grow, width };
}

/** Two delays are the same. */
export function near(a: number, b: number): boolean {
  return Math.abs(a - b) < SAME;
}

/** The whole element [s]: what a setting leaves and what it takes out. */
export function wholeDelay(settings: readonly SettingData[]): number {
  return Math.max(0, ...settings.map(({ delay, removed }) => delay + removed).filter(isFigure));
}
