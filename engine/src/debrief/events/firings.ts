import { firstAtLeast } from "../interpolated.js";
import { accelerometerLag, type Look, rowTimeError } from "./look.js";

/** Sigma of a moment anywhere between two rows, as a share of their spacing: its 90 % interval holds 90 % (0.9 / 2 over the normal's 1.645). */
const BETWEEN_ROWS = 0.45 / 1.6449;
/** Where rows are farther apart than this [s] the first after a charge may not stand out: one row late, once in some 15. Own study, no source. */
const SPARSE = 0.15;
const ROW_LATE = 1 / Math.sqrt(15);
/** A pressure that jumps and an acceleration that jolts within this time are one charge [s]. */
const TOGETHER = 0.25;

/** A moment at which a charge may have fired. */
export interface Firing {
  readonly time: number;
  /** One sigma [s]. */
  readonly error: number;
  readonly reason: "pressure-spike" | "acceleration-spike";
  /** The barometer and the accelerometer saw it. */
  readonly twice: boolean;
}

/** Onsets of pressure spikes and jolts, rising. */
export function firingsOf({ record }: Look, from: number, jolts: readonly number[]): Firing[] {
  const { time, rate } = record;
  const found: Firing[] = [];
  const spacing = 1 / rate;
  const late = spacing > SPARSE ? ROW_LATE * spacing : 0;
  for (const flaw of record.flaws) {
    if (flaw.kind !== "spike" || flaw.from < from) continue;
    const row = firstAtLeast(time, flaw.from);
    const gap = row > 0 ? time[row]! - time[row - 1]! : 1 / rate;
    // the gas shows only once it stands out: half of that time is not known
    const { rise = 0 } = flaw;
    const error = Math.hypot(BETWEEN_ROWS * gap, rowTimeError(gap), 0.5 * rise, late);
    const twice = jolts.some((jolt) => Math.abs(jolt - flaw.from) < TOGETHER);
    found.push({ time: flaw.from - 0.5 * gap - rise, error, reason: "pressure-spike", twice });
  }
  const error = Math.hypot(BETWEEN_ROWS * spacing, rowTimeError(spacing), accelerometerLag.error);
  for (const jolt of jolts)
    if (!found.some((f) => Math.abs(f.time - jolt) < TOGETHER))
      found.push({ time: jolt, error, reason: "acceleration-spike", twice: false });
  return found.sort((a, b) => a.time - b.time);
}
