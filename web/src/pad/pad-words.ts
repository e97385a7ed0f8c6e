import {
  amountIn,
  delayWords,
  endWords,
  holdsPercent,
  kindOfCut,
  percent,
  type SettingData,
  type UnitSystem,
  windBound,
  windBoundSaid,
} from "@delaywright/documents";
import type { OverCut, WindowEnd } from "@delaywright/engine";
import type { PlanWindow, Told, WindowAnswer } from "../compute/index.js";
import { timeOf } from "../standing/motor-cut.js";
import { badWords } from "../standing/outcome-words.js";
import { targetOf } from "../standing/target.js";
import { type WeatherAge, wantsReading } from "../standing/weather-age.js";

/** What the pad view is told from. */
export interface PadStanding {
  readonly told: Told;
  readonly window: PlanWindow | null;
  readonly age: WeatherAge | null;
  /** Name of the motor in hand; null: none chosen. */
  readonly hand: string | null;
  /** When its depth was last read; null: never after a cut. */
  readonly readAt: string | null;
  readonly units: UnitSystem;
}

/** One glance: whose cut, whether it still is good, and what to do if not. */
export interface PadWords {
  readonly head: string;
  readonly detail: string;
  /** `Yes, to 4.5 m/s`. */
  readonly answer: string;
  readonly odds: string;
  readonly oddsNote: string;
  /** What stands below the map; empty where all is well. */
  readonly note: { readonly lead: string; readonly text: string } | null;
  /** `read`: the wind is to be confirmed; `plan`: the plan says more. */
  readonly act: "read" | "plan" | null;
}

/** The edge for the lean that the guide has today; null while it is not known. */
export function edgeOf(window: PlanWindow | null, tilt: number): WindowEnd | null {
  if (window === null) return null;
  let at = 0;
  window.tilts.forEach((each, i) => {
    if (Math.abs(each - tilt) < Math.abs((window.tilts[at] ?? 0) - tilt)) at = i;
  });
  return window.ends[at] ?? null;
}

/**
 * What ends it past the edge; empty where nothing does in the winds that were tried.
 *
 * @example
 * pastEdgeWords(edge, limits, "metric"); // "Past the edge a check says stop: wind, most 8.94 m/s."
 */
export function pastEdgeWords(edge: WindowEnd, limits: Told["data"]["limits"], units: UnitSystem): string {
  const why = endWords(edge, limits, units);
  if (why === "") return "";
  return edge.wind === null ? `In any wind ${why}.` : `Past the edge ${why}.`;
}

/**
 * Why there is no edge, or not that of now; empty where there is.
 *
 * @example
 * edgeNote(told, winds); // "The edge follows: other winds are being flown."
 */
export function edgeNote(told: Pick<Told, "data">, { state, window, failure }: WindowAnswer): string {
  if (settingNow(told) === null) return "A motor without delay has no edge of wind.";
  if (state === "failed")
    return `${window === null ? "The edge is not known." : "The edge is that of before."} ${failure ?? ""}`.trim();
  if (window !== null) return "";
  if (state === "wrong") return "The edge is not known while a field of the plan is wrong.";
  return state === "ready" ? "The edge is not known." : "The edge follows: other winds are being flown.";
}

/** The motor as it is now: its setting as cut, else the one that is meant. */
export function settingNow({ data }: Pick<Told, "data">): SettingData | null {
  const asCut = data.settings.find((setting) => kindOfCut(setting, data.given.removedDepth) === "as-it-is");
  return asCut ?? targetOf(data);
}

function goodWords(told: Told, edge: WindowEnd | null, units: UnitSystem): string {
  if (edge === null || edge.wind === null) return "Yes";
  // what is said is rounded down: past it nobody is told "to" a calmer wind than it blows
  if (edge.wind > 0 && told.facts.wind.speed > windBoundSaid(edge.wind, units)) return "Yes, at the edge";
  return edge.beyond ? `Yes, past ${windBound(edge.wind, units)}` : `Yes, to ${windBound(edge.wind, units)}`;
}

function headOf({ told, hand, readAt, units }: PadStanding): Pick<PadWords, "head" | "detail"> {
  const { data, facts } = told;
  const motor = data.context.motor;
  const name = hand ?? motor;
  const target = targetOf(data);
  if (target === null) return { head: `${name} has no delay`, detail: hand === null ? "" : motor };
  if (facts.element.kind === "fixed")
    return { head: `${name}: ${delayWords(target.delay)}, fixed`, detail: hand === null ? "" : motor };
  const out = facts.element.removedDepth;
  const left = settingNow(told)?.delay ?? target.delay;
  const read = readAt === null ? "" : `, read at ${timeOf(readAt)}`;
  const detail = `${motor}, ${amountIn(out, "depth", units)} out${read}`;
  if (data.overCut !== null) return { head: `${name} is over-cut: ${delayWords(data.overCut.delay)}`, detail };
  const kind = kindOfCut(target, data.given.removedDepth);
  if (out > 0)
    return kind === "cut"
      ? { head: `${name} is at ${delayWords(left)}, to be cut to ${delayWords(target.delay)}`, detail }
      : { head: `${name} is cut to ${delayWords(left)}`, detail };
  if (kind === "uncut")
    return { head: `${name} is left whole: ${delayWords(target.delay)}`, detail: hand === null ? "" : motor };
  return {
    head: `${name} is not cut yet`,
    detail: `${motor}, planned: ${delayWords(target.delay)}`,
  };
}

/**
 * One glance at the pad.
 *
 * @param standing the answer, the window of the weather, the age of the reading, the motor in hand
 */
export function padWords(standing: PadStanding): PadWords {
  const { told, window, age, units } = standing;
  const { data, facts } = told;
  const heading = headOf(standing);
  const setting = settingNow(told);
  if (setting === null) return { ...heading, answer: "No delay", odds: "", oddsNote: "", note: null, act: null };
  const { leastClean, leastHolds } = data.limits;
  const { clean, holds } = setting.odds;
  const good = clean >= leastClean && holds >= leastHolds;
  const stale = wantsReading(age);
  const shown = {
    ...heading,
    odds: percent(clean),
    oddsNote: stale
      ? age === null
        ? "clean"
        : `clean at ${age.taken}`
      : clean < leastClean
        ? `clean, least ${percent(leastClean)}`
        : "clean",
  };
  const target = targetOf(data);
  const toCut = target !== null && kindOfCut(target, data.given.removedDepth) === "cut";
  if (data.overCut !== null) {
    const lead = `Do not fly ${standing.hand ?? "it"} like this.`;
    return { ...shown, answer: "No: cut too deep", note: { lead, text: wayWords(data.overCut, units) }, act: "plan" };
  }
  if (facts.element.kind === "adjustable" && toCut)
    return {
      ...shown,
      answer: "Not cut yet",
      oddsNote: facts.element.removedDepth > 0 ? shown.oddsNote : `${shown.oddsNote} once cut`,
      note: { lead: "Cut it first.", text: "Then read the depth and record it in the plan." },
      act: "plan",
    };
  if (stale)
    return {
      ...shown,
      answer: "Read the wind",
      note: {
        lead: age?.stale === true ? "The reading is older than an hour." : "The wind was not read today.",
        text: "The cut stands; the odds wait for a new wind.",
      },
      act: "read",
    };
  const edge = edgeOf(window, data.given.guide.tilt);
  const stops = stopNote(told, edge);
  if (good && stops === null && isStopped(told, edge)) return { ...shown, ...waitWords(told, edge, units) };
  if (good && stops !== null) return { ...shown, answer: "No: see the plan", note: stops, act: "plan" };
  if (good) return { ...shown, answer: goodWords(told, edge, units), note: null, act: null };
  return { ...shown, ...notGood(told, setting, edge, units) };
}

/** The first way out of an over-cut, short. */
function wayWords({ ballast, rockets }: OverCut, units: UnitSystem): string {
  const [first] = ballast;
  if (first !== undefined) {
    const { mass, clean } = first.best;
    const looks = first.checks.some(({ verdict }) => verdict === "look" || verdict === "stop")
      ? " Its checks do not all pass."
      : "";
    return `${amountIn(mass, "smallMass", units)} of ballast at ${amountIn(first.at, "length", units)} brings ${percent(clean)}.${looks}`;
  }
  const [rocket] = rockets;
  return rocket === undefined
    ? "Nothing here makes it good enough."
    : `${rocket.name} would suit it: ${percent(rocket.clean)}.`;
}

/** Whether it blows past an edge that a calmer wind would be short of. */
function isOver({ facts }: Told, edge: WindowEnd | null): edge is WindowEnd & { readonly wind: number } {
  return edge !== null && edge.wind !== null && edge.wind > 0 && facts.wind.speed > edge.wind;
}

function overWords({ facts }: Told, edge: { readonly wind: number }, units: UnitSystem): string {
  return `Over the edge by ${amountIn(facts.wind.speed - windBoundSaid(edge.wind, units), "wind", units)}.`;
}

/** Whether the check that ends it says stop already, for want of a calmer wind. */
function isStopped(told: Told, edge: WindowEnd | null): edge is WindowEnd & { readonly wind: number } {
  const { checks } = told.data;
  return isOver(told, edge) && checks.some(({ id, verdict }) => verdict === "stop" && id === edge.check?.id);
}

function waitWords(
  told: Told,
  edge: WindowEnd & { readonly wind: number },
  units: UnitSystem,
): Pick<PadWords, "answer" | "note" | "act"> {
  const text = pastEdgeWords(edge, told.data.limits, units);
  return { answer: "No: wait", note: { lead: overWords(told, edge, units), text }, act: null };
}

/** What else says stop though the odds are good: it comes before a yes is believed. */
function stopNote(told: Told, edge: WindowEnd | null): PadWords["note"] {
  const waits = isStopped(told, edge) ? edge.check?.id : null;
  const stops = told.data.checks.filter(({ id, verdict }) => verdict === "stop" && id !== waits).length;
  if (stops === 0) return null;
  return {
    lead: stops === 1 ? "One check says stop." : `${stops} checks say stop.`,
    text: "See the plan before anything else.",
  };
}

function notGood(
  told: Told,
  setting: SettingData,
  edge: WindowEnd | null,
  units: UnitSystem,
): Pick<PadWords, "answer" | "note" | "act"> {
  const { data } = told;
  const bad = badWords(setting.odds);
  const of = bad === "" ? "" : `Of 100: ${bad}.`;
  const holds =
    setting.odds.holds < data.limits.leastHolds
      ? ` Holds ${holdsPercent(setting.odds.holds)}, least ${holdsPercent(data.limits.leastHolds)}.`
      : "";
  if (isOver(told, edge))
    return { answer: "No: wait", note: { lead: overWords(told, edge, units), text: `${of}${holds}` }, act: null };
  const lead =
    edge !== null && (edge.wind === null || edge.wind === 0)
      ? "No wind makes it good enough."
      : "Not good enough as it is.";
  return { answer: "No", note: { lead, text: `${of}${holds}` }, act: "plan" };
}
