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
  type PrepLine,
  percent,
  type UnitSystem,
  upperFirst,
} from "@delaywright/documents";
import type { Told } from "../compute/index.js";
import { nextAct } from "../standing/next-act.js";
import type { PlanDocuments } from "../standing/plan-documents.js";
import { targetOf } from "../standing/target.js";
import { ageWords, type WeatherAge } from "../standing/weather-age.js";

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
  /** The next step is made in the pad view. */
  readonly pad: boolean;
}

function isCut(data: DecisionData): boolean {
  const setting = targetOf(data);
  return setting !== null && kindOfCut(setting, data.given.removedDepth) === "as-it-is";
}

function leadOf(data: DecisionData, units: UnitSystem): { readonly lead: string; readonly how: string } {
  if (data.overCut !== null)
    return {
      lead: `Now ${delayWords(data.overCut.delay)}`,
      how: data.overCut.doNotFly ? upperFirst(doNotFlyWords).replace(": see below.", ".") : "cut deeper than meant",
    };
  const { choice } = data;
  if (choice !== null && !isCut(data))
    return { lead: `Own choice ${delayWords(choice.setting.delay)}`, how: headline(data, units)?.lead ?? "" };
  const said = headline(data, units);
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
  const setting = targetOf(data);
  if (data.overCut !== null && setting !== null && setting.odds.clean < limits.leastClean)
    return { word: "look", words: `as it is cut, under ${percent(limits.leastClean)}` };
  if (toCut !== null && !toCut.reachesLeast)
    return { word: "look", words: `no cut reaches ${percent(limits.leastClean)}` };
  const look = first("look");
  return look === undefined ? null : { word: "look", words: checkLine(look).name };
}

/** The motor's charge stands behind electronics: its odds are those of opening alone. */
function isBackUp(data: DecisionData): boolean {
  return (targetOf(data)?.firesFirst ?? null) !== null;
}

/** What a card is told from. */
export interface CardStanding {
  readonly documents: PlanDocuments;
  readonly told: Told;
  /** Of the reading of the weather. */
  readonly age: WeatherAge | null;
  readonly units: UnitSystem;
  /** The next step of the prep sheet of a flight that was begun. */
  readonly prepStep?: PrepLine | null;
}

/** What the card of a plan says that has an answer. */
export function cardWords({ documents, told, age, units, prepStep = null }: CardStanding): CardWords {
  const { data } = told;
  const setting = targetOf(data);
  const { lead, how } = leadOf(data, units);
  const next = nextAct({ documents, told, age, issues: [], prepStep });
  return {
    lead,
    past: isCut(data) && data.overCut === null,
    odds: setting === null ? null : percent(setting.odds.clean),
    oddsNote: age?.stale === true ? `at ${age.taken}` : isBackUp(data) ? "alone" : "clean",
    how: isBackUp(data) ? `Stands behind the electronics. ${upperFirst(how)}` : how,
    old: age?.stale === true ? `The wind was read ${ageWords(age)}.` : null,
    check: checkOf(data),
    next: next?.words ?? "Next: open it",
    pad: next?.pad === true,
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
