import type { ClimbFit, FlownDelay } from "@delaywright/engine";
import { given } from "../kinds/si.js";
import { formatQuantity } from "../quantity/format.js";
import type { Findings, FoundFinding, WrittenFindings } from "./findings.js";

const time = (value: number): string => formatQuantity(value, "time", "s", { digits: 5 });
const metres = (value: number): string => formatQuantity(value, "length", "m", { digits: 5 });
const rounded = (value: number): number => Number(value.toPrecision(6));

/** The findings as a flight document holds them. */
export function writtenFindings(findings: Findings): WrittenFindings {
  const { set, setError, delay, openedBy, openedAt, coast, apogee, outcome, outcomeStated, events, climb } = findings;
  return {
    ...given("set", set === null ? undefined : time(set)),
    ...given("setError", setError === null ? undefined : time(setError)),
    ...writtenDelay(delay),
    ...given("openedBy", openedBy ?? undefined),
    ...given("openedAt", openedAt === null ? undefined : time(openedAt)),
    ...given("coast", coast === null ? undefined : time(coast)),
    ...given("apogee", apogee === null ? undefined : metres(Math.max(0, apogee))),
    ...given("outcome", outcome ?? undefined),
    ...(outcome === null ? {} : { outcomeBy: outcomeStated ? "flyer" : "record" }),
    ...(events.length === 0 ? {} : { events: events.map(writtenEvent) }),
    ...(climb === null ? {} : writtenClimb(climb)),
  };
}

function writtenDelay(delay: FlownDelay): Pick<WrittenFindings, "delay" | "delayError" | "delayIs"> {
  if (delay.kind === "unknown") return {};
  if (delay.kind === "seen") return { delay: time(delay.delay), delayError: time(delay.error) };
  return { delay: time(Math.max(0, delay.delay)), delayIs: delay.kind };
}

function writtenEvent(event: FoundFinding): NonNullable<WrittenFindings["events"]>[number] {
  const { name, timeError, height, heightError, reason, movedFrom } = event;
  return {
    name,
    time: time(event.time),
    ...given("timeError", timeError === null ? undefined : time(timeError)),
    ...given("height", height === null ? undefined : metres(height)),
    ...given("heightError", heightError === null ? undefined : metres(heightError)),
    ...given("reason", reason ?? undefined),
    ...given("movedFrom", movedFrom === null ? undefined : time(movedFrom)),
  };
}

function writtenClimb(climb: ClimbFit): Partial<WrittenFindings> {
  const [[drag, both], [, impulse]] = climb.covariance;
  const told = Number.isFinite(drag) && Number.isFinite(impulse);
  return {
    ...(Number.isFinite(drag)
      ? { drag: { factor: rounded(Math.exp(climb.lnDrag)), sd: rounded(Math.sqrt(drag)) } }
      : {}),
    ...(Number.isFinite(impulse)
      ? { impulse: { factor: rounded(Math.exp(climb.lnImpulse)), sd: rounded(Math.sqrt(impulse)) } }
      : {}),
    ...(told && drag > 0 && impulse > 0 ? { scalesCorrelation: rounded(both / Math.sqrt(drag * impulse)) } : {}),
    ...(Number.isFinite(climb.residual) ? { residual: metres(climb.residual) } : {}),
  };
}
