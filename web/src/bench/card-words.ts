import {
  checkLine,
  type DecisionData,
  delayWords,
  doNotFlyWords,
  headline,
  type Issue,
  issueSentence,
  kindOfCut,
  noDelayWords,
  percent,
  type SettingData,
  suggestedSetting,
  upperFirst,
} from "@delaywright/documents";
import type { PlanNames } from "./plan-names.js";
import type { WindAge } from "./wind-age.js";

/** What a card says of an answer. */
export interface CardWords {
  /** `Cut to 9 s`, `Cut, 9 s`, `At best 9 s`, `Now 8.3 s`. */
  readonly lead: string;
  /** What is done already is said more quietly. */
  readonly past: boolean;
  /** `91 %`; null where nothing opens. */
  readonly odds: string | null;
  /** After the odds: `clean`, `at 09:30`. */
  readonly oddsNote: string;
  /** How to cut, or what it means. */
  readonly how: string;
  /** The reading of the wind is old. */
  readonly old: string | null;
  /** The weightiest thing to look at. */
  readonly check: { readonly word: "look" | "stop"; readonly words: string } | null;
  readonly next: string;
}

/** The setting that a card speaks of: the flyer's own choice, else the delay to cut. */
export function settingOf(data: DecisionData): SettingData | null {
  return data.choice?.setting ?? suggestedSetting(data) ?? null;
}

function isCut(data: DecisionData): boolean {
  const setting = settingOf(data);
  return setting !== null && kindOfCut(setting, data.given.removedDepth) === "as-it-is";
}

function leadOf(data: DecisionData): { readonly lead: string; readonly how: string } {
  if (data.overCut !== null)
    return {
      lead: `Now ${delayWords(data.overCut.delay)}`,
      how: data.overCut.doNotFly ? upperFirst(doNotFlyWords).replace(": see below.", ".") : "cut deeper than meant",
    };
  const { choice } = data;
  if (choice !== null && !isCut(data))
    return { lead: `Own choice ${delayWords(choice.setting.delay)}`, how: headline(data)?.lead ?? "" };
  const said = headline(data);
  if (said === null) return { lead: "No delay", how: noDelayWords };
  if (isCut(data) && data.toCut?.reachesLeast === true && data.toCut.reachesHolds)
    return { lead: `Cut, ${delayWords(data.toCut.delay)}`, how: "nothing more to cut" };
  return { lead: said.lead, how: said.detail };
}

function checkOf(data: DecisionData): CardWords["check"] {
  const { toCut, limits } = data;
  const first = (verdict: "stop" | "look") => data.checks.find((check) => check.verdict === verdict);
  const stop = first("stop");
  if (stop !== undefined) return { word: "stop", words: checkLine(stop).name };
  const setting = settingOf(data);
  if (data.overCut !== null && setting !== null && setting.odds.clean < limits.leastClean)
    return { word: "look", words: `as it is cut, under ${percent(limits.leastClean)}` };
  if (toCut !== null && !toCut.reachesLeast)
    return { word: "look", words: `no cut reaches ${percent(limits.leastClean)}` };
  const look = first("look");
  return look === undefined ? null : { word: "look", words: checkLine(look).name };
}

/** The motor's charge stands behind electronics: its odds are those of opening alone. */
function isBackUp(data: DecisionData): boolean {
  return (settingOf(data)?.firesFirst ?? null) !== null;
}

function minutesWords(minutes: number): string {
  return minutes < 100 ? `${minutes}\u202fmin` : `${Math.round(minutes / 60)}\u202fh`;
}

/** The next step of a plan that has an answer, as the plan's own sheet says it. */
function nextOf(data: DecisionData, cutAllowed: boolean, names: PlanNames, age: WindAge | null): string {
  if (data.overCut !== null) return "Next: see the ways out";
  if (data.given.delayKind === "adjustable" && !cutAllowed) return "Next: read the motor's instructions";
  if (age?.stale === true) return "Next: read the wind";
  if (data.toCut !== null && !(data.toCut.reachesLeast && data.toCut.reachesHolds)) return "Next: see what would help";
  if (data.checks.some((check) => check.verdict === "stop")) return "Next: see what says stop";
  const setting = settingOf(data);
  if (setting === null || kindOfCut(setting, data.given.removedDepth) !== "cut") return TO_THE_PAD;
  if (names.inHand === null) return "Next: name the motor in hand";
  return names.measured ? `Next: cut ${names.inHand}, then read it` : `Next: measure ${names.inHand}, then cut`;
}

/** The next step that leads to the pad view. */
export const TO_THE_PAD = "Next: to the pad";

/**
 * What the card of a plan says.
 *
 * @param data the answer
 * @param cutAllowed the motor's instructions are confirmed to allow the cut
 * @param names of the plan's documents
 * @param age of the reading of the weather; null where it does not count
 */
export function cardWords(data: DecisionData, cutAllowed: boolean, names: PlanNames, age: WindAge | null): CardWords {
  const setting = settingOf(data);
  const stale = age?.stale === true;
  const { lead, how } = leadOf(data);
  return {
    lead,
    past: isCut(data) && data.overCut === null,
    odds: setting === null ? null : percent(setting.odds.clean),
    oddsNote: stale ? `at ${age.taken}` : isBackUp(data) ? "alone" : "clean",
    how: isBackUp(data) ? `Stands behind the electronics. ${upperFirst(how)}` : how,
    old: stale ? `The wind reading is ${minutesWords(age.minutes)} old.` : null,
    check: checkOf(data),
    next: nextOf(data, cutAllowed, names, age),
  };
}

/** What a plan says that has no answer. */
export interface BrokenWords {
  readonly lead: string;
  /** Where, what was found, what is accepted; or what is still to be entered. */
  readonly why: string;
  readonly next: string;
  /** Nothing is wrong: it is only not complete. */
  readonly onlyMissing: boolean;
}

/** Most fields that are named as missing. */
const MOST_NAMED = 5;

/**
 * What a plan says whose documents are wrong or not complete.
 *
 * @param plan path of the plan
 * @param issues at least one
 * @param nameOf names of documents by path
 */
export function brokenWords(plan: string, issues: readonly Issue[], nameOf: (path: string) => string): BrokenWords {
  const wrong = issues.filter((issue) => issue.code !== "missing");
  const [first] = wrong;
  if (first !== undefined)
    return {
      lead: wrong.length === 1 ? "One thing is wrong" : `${wrong.length} things are wrong`,
      why: `In ${nameOf(first.file)}, ${issueSentence(first)}.`,
      next: "Next: mend it",
      onlyMissing: false,
    };
  const fields = issues.map(({ file, path }) => (file === plan ? path : `${path} of ${nameOf(file)}`));
  const more = fields.length > MOST_NAMED ? ` and ${fields.length - MOST_NAMED} more` : "";
  return {
    lead: issues.length === 1 ? "One thing is missing" : `${issues.length} things are missing`,
    why: `Still to be entered: ${fields.slice(0, MOST_NAMED).join(", ")}${more}.`,
    next: "Next: enter what is missing",
    onlyMissing: true,
  };
}
