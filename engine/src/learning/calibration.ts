import { wilsonInterval } from "../math/proportion.js";

/** One past flight: what was said of it, and how it came out. */
export interface PastOdds {
  /** Odds of a clean opening that it was given, 0…1. */
  readonly odds: number;
  readonly clean: boolean;
  /** Height of the top as flown, and the 90 % band it was given [m]. */
  readonly top?: number;
  readonly topBand?: readonly [number, number];
}

/** How often something happened, with its 95 % interval. */
export interface ShareSeen {
  readonly flights: number;
  readonly times: number;
  /** Null without a flight. */
  readonly share: number | null;
  readonly interval: readonly [number, number];
}

/** Flights that were given odds in one range, upper end left out but for the last. */
export interface CalibrationBin extends ShareSeen {
  readonly from: number;
  readonly to: number;
  /** Mean of the odds they were given; null without a flight. */
  readonly given: number | null;
}

/** How past odds came true. */
export interface Calibration {
  readonly bins: readonly CalibrationBin[];
  /** All flights: how often it opened clean, and the mean of the odds given. */
  readonly all: ShareSeen & { readonly given: number | null };
  /** How often the top lay in its 90 % band. */
  readonly tops: ShareSeen;
}

const edges = [0, 0.5, 0.7, 0.8, 0.85, 0.9, 0.95, 1];

function seen(times: number, flights: number): ShareSeen {
  return { flights, times, share: flights > 0 ? times / flights : null, interval: wilsonInterval(times, flights) };
}

function judged(past: readonly PastOdds[]): ShareSeen & { readonly given: number | null } {
  const given = past.length > 0 ? past.reduce((sum, { odds }) => sum + odds, 0) / past.length : null;
  return { ...seen(past.filter(({ clean }) => clean).length, past.length), given };
}

/**
 * How often what was given some odds came clean, and how often the top lay in its band. Few flights prove little: the
 * intervals say so.
 *
 * @param past flights whose odds and outcome are both known
 * @source Wilson's interval
 * @example
 * calibration([{ odds: 0.9, clean: true }]).all.interval; // [0.206…, 1]
 */
export function calibration(past: readonly PastOdds[]): Calibration {
  const bins = edges.slice(1).map((to, i): CalibrationBin => {
    const from = edges[i]!;
    const inside = past.filter(({ odds }) => odds >= from && (odds < to || (to === 1 && odds <= 1)));
    return { from, to, ...judged(inside) };
  });
  const topped = past.filter(({ top, topBand }) => top !== undefined && topBand !== undefined);
  const within = topped.filter(({ top, topBand }) => top! >= topBand![0] && top! <= topBand![1]);
  return { bins, all: judged(past), tops: seen(within.length, topped.length) };
}
