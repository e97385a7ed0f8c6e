import {
  aboveWords,
  assumptionWords,
  backUpNote,
  belowWords,
  cautions,
  checkCounts,
  climbSentence,
  coastSentence,
  type DecisionData,
  descentSentence,
  headline,
  holdsPercent,
  lookOutSentences,
  noDelayWords,
  notCheckedSentence,
  type SettingData,
  stabilitySentence,
  statedHeadline,
  timingWords,
  type UnitSystem,
  unopenedSentences,
  upperFirst,
} from "@delaywright/documents";
import { useSyncExternalStore } from "react";
import { progressOf, type Told } from "../compute/index.js";
import { More, OddsFigure, Section } from "../parts/index.js";
import { Strip } from "../pictures/strip.js";
import { badWords } from "../standing/outcome-words.js";
import { targetOf } from "../standing/target.js";
import { DeskChecks } from "./desk-checks.js";
import type { Desk } from "./use-desk.js";

interface DeskAnswerProps {
  readonly desk: Desk;
  readonly told: Told;
  readonly units: UnitSystem;
}

/** What another flyer's card comes to: its odds, its checks, its flight, and all that had to be assumed. */
export function DeskAnswer({ desk, told, units }: DeskAnswerProps) {
  const { data } = told;
  const target = targetOf(data);
  // a card that is typed off states a delay, one read by its code carries the element that is cut
  const said = told.facts.element.kind === "fixed" ? statedHeadline(data) : headline(data, units);
  const { settling } = desk.answer;
  return (
    <>
      <div className={`desk-figures ${settling || desk.document === null ? "settling" : ""}`}>
        <p className="plan-figure">{said?.lead ?? "No delay"}</p>
        <p>{upperFirst(said?.detail ?? noDelayWords)}</p>
        {target !== null && <Odds target={target} told={told} units={units} settling={settling} />}
      </div>
      {desk.document === null && (
        <p className="sheet-line">
          <b>These are the figures of what stood here before.</b> Something is missing or wrong now.
        </p>
      )}
      <Settling path={desk.path} />
      <Section title="Checks" part>
        <DeskChecks checks={data.checks} units={units} />
        <Counts data={data} assumed={desk.assumptions.length > 0} />
      </Section>
      <ComingDown data={data} units={units} />
      {desk.assumptions.length > 0 && (
        <Section title="Not on the card, so assumed" part>
          <ul className="desk-assumed">
            {desk.assumptions.map((each) => (
              <li key={each.field}>{assumptionWords(each, units)}</li>
            ))}
          </ul>
        </Section>
      )}
      <More title="Its way up">
        {flightSentences(data, units).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </More>
      <p className="quiet">{cautions.authority.join(" ")}</p>
    </>
  );
}

interface OddsProps {
  readonly target: SettingData;
  readonly told: Told;
  readonly units: UnitSystem;
  readonly settling: boolean;
}

function Odds({ target, told, units, settling }: OddsProps) {
  const { odds, openingSpeed, openingHeight, secondsFromApogee } = target;
  const backUp = backUpNote(target);
  const clean = backUp?.alone ?? "clean";
  const [below, above] = [openingSpeed.p90, openingHeight.p10];
  const [first, last] = [secondsFromApogee.p05, secondsFromApogee.p95];
  return (
    <>
      <p className="plan-figure">
        <OddsFigure odds={odds.clean} error={odds.error / 3} draws={told.draws} of={clean} settling={settling} />{" "}
        <small>{clean}</small>
      </p>
      <Strip odds={odds} />
      <p className="quiet">
        {[backUp?.firesFirst, badWords(odds), `holds ${holdsPercent(odds.holds)}`].filter(Boolean).join("; ")}
      </p>
      <p>
        {below === null || above === null || first === null || last === null
          ? "Every flight lands before it opens."
          : `9 in 10 open below ${belowWords(below, units)} and above ${aboveWords(above, units)}, ${timingWords(first, last)}.`}
      </p>
    </>
  );
}

interface CountsProps {
  readonly data: DecisionData;
  /** What is not given is told as assumed. */
  readonly assumed: boolean;
}

function Counts({ data, assumed }: CountsProps) {
  const { pass } = checkCounts(data.checks);
  const { warnings, unlikely } = lookOutSentences({ ...data, doubts: ownDoubts(data, assumed) });
  const notChecked = notCheckedSentence(data.checks);
  return (
    <>
      <p className="sheet-line">{pass} within.</p>
      {notChecked !== null && <p className="sheet-line">{notChecked}</p>}
      {[...warnings, ...unlikely].map((sentence) => (
        <p className="sheet-line" key={sentence}>
          {sentence}
        </p>
      ))}
    </>
  );
}

/** What is unlikely in the card. Everything stands in one document, which has no name of its own. */
function ownDoubts({ doubts }: DecisionData, assumed: boolean): DecisionData["doubts"] {
  return doubts.filter(({ code }) => !(assumed && code.endsWith("not-given"))).map((doubt) => ({ ...doubt, file: "" }));
}

function flightSentences(data: DecisionData, units: UnitSystem): readonly string[] {
  return [climbSentence(data.flight, units), coastSentence(data, units), stabilitySentence(data, units)];
}

/** What the people on the field have to know of it. */
function ComingDown({ data, units }: { readonly data: DecisionData; readonly units: UnitSystem }) {
  const descent = descentSentence(data, units);
  return (
    <Section title="Coming down" part>
      {descent !== null && <p className="sheet-line">{descent}</p>}
      <p className="sheet-line">
        <b>If nothing opens.</b> {unopenedSentences(data, units).join(" ")}
      </p>
    </Section>
  );
}

function Settling({ path }: { readonly path: string }) {
  const { get, subscribe } = progressOf(path);
  const share = useSyncExternalStore(subscribe, get);
  return (
    <p className="quiet desk-settling">{share === null ? "" : `${Math.round(100 * share)} % of the flights flown`}</p>
  );
}
