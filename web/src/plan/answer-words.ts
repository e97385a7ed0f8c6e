import {
  aboveWords,
  acceptedWords,
  backUpNote,
  belowWords,
  checkCounts,
  checkLine,
  type DecisionData,
  delayWords,
  foundWords,
  type Headline,
  headline,
  type Issue,
  noDelayWords,
  percent,
  type SettingData,
  timingWords,
  type UnitSystem,
  upperFirst,
} from "@delaywright/documents";
import { wordOfField } from "../standing/next-act.js";
import { targetOf } from "../standing/target.js";

/** The answer in large letters and its second line. */
export function answerHeadline(data: DecisionData, units: UnitSystem): Pick<Headline, "lead" | "detail"> {
  if (data.overCut !== null) return { lead: `Now ${delayWords(data.overCut.delay)}`, detail: "cut deeper than meant" };
  return headline(data, units) ?? { lead: "No delay", detail: noDelayWords };
}

/** How a setting opens, in three short lines; null where every flight lands before it opens. */
export interface OpeningLines {
  readonly below: string;
  readonly above: string;
  readonly when: string;
}

export function openingLines(setting: SettingData, units: UnitSystem): OpeningLines | null {
  const { openingSpeed, openingHeight, secondsFromApogee } = setting;
  if (openingSpeed.p90 === null || openingHeight.p10 === null) return null;
  if (secondsFromApogee.p05 === null || secondsFromApogee.p95 === null) return null;
  return {
    below: belowWords(openingSpeed.p90, units),
    above: aboveWords(openingHeight.p10, units),
    when: timingWords(secondsFromApogee.p05, secondsFromApogee.p95),
  };
}

/** What the checks say, weightiest first. */
export interface ChecksWords {
  readonly head: string;
  readonly first: string;
  readonly rest: string;
  /** Some check says stop. */
  readonly stops: boolean;
}

const say = (count: number, word: string): string =>
  `${count === 1 ? "One check says" : `${count} checks say`} ${word}`;

const saysLook = (count: number): string => (count === 1 ? "1 says look" : `${count} say look`);

/** @param rough some of it may change its mind yet */
export function checksWords({ checks }: DecisionData, rough = false): ChecksWords {
  const [stops, looks] = (["stop", "look"] as const).map((verdict) =>
    checks.filter((check) => check.verdict === verdict),
  );
  const { pass: within, notChecked } = checkCounts(checks);
  const without = notChecked === 0 ? "" : `, ${notChecked} not checked`;
  const weighty = stops !== undefined && stops.length > 0 ? stops : (looks ?? []);
  const [first] = weighty;
  if (first === undefined)
    return {
      head: `${notChecked === 0 ? "All checks within" : "No check says stop or look"}${rough ? " so far" : ""}`,
      first: "",
      rest: `${within} ${notChecked === 0 ? "looked at" : "within"}${without}`,
      stops: false,
    };
  const word = first.verdict;
  const others = word === "stop" ? saysLook(looks?.length ?? 0) : "none says stop";
  return {
    head: say(weighty.length, word),
    first: checkLine(first).name,
    rest: `${within} within, ${others}${without}`,
    stops: word === "stop",
  };
}

/** What is wrong in a field, and what would be right. */
export interface IssueWords {
  /** `Fins 1, root: missing`, `Fins 1, root: the unit is missing: "180" found`. */
  readonly wrong: string;
  /** `A length with its unit is accepted, for example "180 mm".` */
  readonly right: string;
}

/** One issue where no field stands beside it. */
export function issueWords(issue: Issue): IssueWords {
  const found = issue.code === "missing" ? "missing" : foundWords(issue);
  return { wrong: `${upperFirst(wordOfField(issue.path))}: ${found}`, right: `${upperFirst(acceptedWords(issue))}.` };
}

/** The whole answer in one line, for who does not see it. */
export function spokenWords(data: DecisionData, units: UnitSystem): string {
  const { lead, detail } = answerHeadline(data, units);
  const target = targetOf(data);
  const backUp = target === null ? null : backUpNote(target);
  const fires = backUp === null ? "" : `, ${backUp.firesFirst}`;
  const odds = target === null ? "" : `${percent(target.odds.clean)} ${backUp?.alone ?? "clean"}${fires}. `;
  return `${lead}. ${detail}. ${odds}${checksWords(data).head}.`;
}
