import type { ClimbFit, FlownDelay } from "@delaywright/engine";
import { si, siOr } from "../kinds/si.js";
import { eventReason } from "./event-reasons.js";
import type { Findings, FoundFinding, WrittenFindings } from "./findings.js";

/** Findings as they were written down. */
export function readFindings(written: WrittenFindings): Findings {
  return {
    set: siOr(written.set, "time", null),
    setError: siOr(written.setError, "time", null),
    delay: readDelay(written),
    openedBy: written.openedBy ?? null,
    openedAt: siOr(written.openedAt, "time", null),
    coast: siOr(written.coast, "time", null),
    apogee: siOr(written.apogee, "length", null),
    outcome: written.outcome ?? null,
    outcomeStated: written.outcome !== undefined && written.outcomeBy !== "record",
    events: (written.events ?? []).map(readEvent),
    climb: readClimb(written),
  };
}

/** One sigma of a delay that was written down without one [s]: the delay's reading by eye off a plot, a choice of our own. */
const UNSTATED_DELAY_ERROR = 0.2;

function readDelay({ delay, delayError, delayIs = "seen" }: WrittenFindings): FlownDelay {
  if (delay === undefined) return { kind: "unknown" };
  const seconds = si(delay, "time");
  if (delayIs !== "seen") return { kind: delayIs, delay: seconds };
  return { kind: "seen", delay: seconds, error: siOr(delayError, "time", UNSTATED_DELAY_ERROR) };
}

function readEvent(written: NonNullable<WrittenFindings["events"]>[number]): FoundFinding {
  return {
    name: written.name,
    time: si(written.time, "time"),
    timeError: siOr(written.timeError, "time", null),
    height: siOr(written.height, "length", null),
    heightError: siOr(written.heightError, "length", null),
    reason: eventReason(written.reason),
    movedFrom: siOr(written.movedFrom, "time", null),
  };
}

/** A climb's fit from the factors that were written down; what was not told has an infinite variance. */
function readClimb({ drag, impulse, scalesCorrelation = 0, residual }: WrittenFindings): ClimbFit | null {
  if (drag === undefined && impulse === undefined) return null;
  const variance = (scale: { readonly sd: number } | undefined) =>
    scale === undefined ? Number.POSITIVE_INFINITY : scale.sd * scale.sd;
  const both = drag === undefined || impulse === undefined ? 0 : scalesCorrelation * drag.sd * impulse.sd;
  return {
    lnDrag: Math.log(drag?.factor ?? 1),
    lnImpulse: Math.log(impulse?.factor ?? 1),
    covariance: [
      [variance(drag), both],
      [both, variance(impulse)],
    ],
    residual: siOr(residual, "length", 0),
    from: 0,
    to: 0,
    converged: true,
  };
}
