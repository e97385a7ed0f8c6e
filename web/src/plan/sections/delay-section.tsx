import {
  backUpHead,
  backUpSentences,
  choiceSentence,
  cleanAndHoldsSentence,
  delayShareSentence,
  delayWords,
  driversSentence,
  noDelayWords,
  oddsProviso,
  percent,
  restsWords,
  twoCutsSentence,
  type UnitSystem,
  upperFirst,
  whySentences,
} from "@delaywright/documents";
import type { Told } from "../../compute/index.js";
import { PlanLimitsForm, PlanSpreadForm } from "../../forms/index.js";
import { Fold, More, useNarrow } from "../../parts/index.js";
import { Legend } from "../../pictures/legend.js";
import { OddsByDelay } from "../../pictures/odds-by-delay.js";
import { SteadinessPart } from "../../stability/steadiness-part.js";
import { targetOf } from "../../standing/target.js";
import { answerHeadline } from "../answer-words.js";
import { HeightPart, WeatherAndDrivers } from "./delay-pictures.js";
import { OverCutWays } from "./over-cut-ways.js";
import { pictureState, type SectionProps } from "./section-props.js";
import { SettingsTable } from "./settings-table.js";

/** Which delay, why, on what that rests, and every other delay that can be made. */
export function DelaySection(props: SectionProps) {
  const { answer, documents, state } = props;
  const { told, issues } = answer;
  const narrow = useNarrow();
  const { path } = documents.plan;
  return (
    <Fold id={state.id} title={state.title} aside={state.aside} mark={state.mark} open>
      {told === null ? (
        <p className="lead">The odds come with the first flights.</p>
      ) : (
        <Answer {...props} told={told} />
      )}
      {narrow && (
        <>
          <HeightPart {...props} />
          <WeatherAndDrivers {...props} />
        </>
      )}
      {told !== null && <SteadinessPart {...props} />}
      <More title="What counts as clean, and which odds are enough">
        <PlanLimitsForm path={path} issues={issues} doubts={told?.data.doubts} />
      </More>
      <More title="How far the inputs may be off" aside="one sigma each">
        <PlanSpreadForm path={path} issues={issues} doubts={told?.data.doubts} />
      </More>
    </Fold>
  );
}

type AnswerProps = SectionProps & { readonly told: Told };

function Answer(props: AnswerProps) {
  const { told, units } = props;
  const { data } = told;
  const target = targetOf(data);
  if (target === null) return <p className="lead">{noDelayWords}</p>;
  const rests = restsWords(data, target);
  return (
    <>
      <p className="lead">{leadWords(told, units)}</p>
      <p className="quiet">Rests on {rests}.</p>
      <NoneGood {...props} />
      <BackUp {...props} />
      {data.overCut !== null && <OverCutWays overCut={data.overCut} units={units} />}
      <h3 className="sheet-part">Odds by delay</h3>
      <OddsPicture {...props} />
      <SettingsTable {...props} />
      <Notes {...props} />
    </>
  );
}

/** The answer as a sentence with its reason. */
export function leadWords({ data }: Pick<Told, "data">, units: UnitSystem): string {
  const { lead } = answerHeadline(data, units);
  const { why } = whySentences(data, units);
  const reason = why === null ? "" : ` ${upperFirst(why.replace(/^Why [^:]*: /, ""))}`;
  const target = targetOf(data);
  const [next] = data.settings
    .filter(({ delay }) => delay !== target?.delay)
    .sort((a, b) => b.odds.clean - a.odds.clean);
  const other =
    next === undefined ? "" : ` The next best, ${delayWords(next.delay)}, opens clean in ${percent(next.odds.clean)}.`;
  return `${lead}.${reason}${other}`;
}

function NoneGood({ told, units }: AnswerProps) {
  const { noneGood, atTop, helps } = whySentences(told.data, units);
  if (noneGood === null && helps === null) return null;
  return (
    <div className="sheet-box">
      {[noneGood, atTop, helps].map((sentence) => sentence !== null && <p key={sentence}>{sentence}</p>)}
    </div>
  );
}

function BackUp({ told, units }: AnswerProps) {
  const words = backUpSentences(told.data, units);
  if (words === null) return null;
  return (
    <div className="sheet-box">
      <p>
        <b>{backUpHead}.</b> {words.firesFirst}
      </p>
      <p>{words.alone}</p>
    </div>
  );
}

function OddsPicture(props: AnswerProps) {
  const { told, answer, next, units } = props;
  const { data, facts, density } = told;
  const narrow = useNarrow();
  const target = targetOf(data);
  const { clock, removedDepth, removed } = facts.element;
  return (
    <OddsByDelay
      withSpeed
      settings={data.settings}
      curve={answer.pictures?.curve ?? null}
      density={density}
      coast={data.coast}
      limits={data.limits}
      chosen={target?.delay ?? null}
      next={next !== null && next.section === "cut" && next.pad !== true}
      state={pictureState(props)}
      cutSoFar={removedDepth > 0 ? removed : null}
      clock={clock === "ignition" ? { from: "ignition", burnEnd: facts.burnEnd } : { from: "burnout" }}
      units={units}
      foot={<Legend pins odds={narrow ? target?.odds : undefined} />}
    />
  );
}

/** What stands under the table: what the columns mean, the cut at home, the flyer's choice, what drives the spread. */
function Notes({ told, units }: AnswerProps) {
  const { data } = told;
  const notes = [
    choiceSentence(data),
    twoCutsSentence(data, units),
    driversSentence(data),
    delayShareSentence(data),
    cleanAndHoldsSentence(data, units),
    oddsProviso,
  ];
  return <ul className="sheet-lines quiet">{notes.map((note) => note !== null && <li key={note}>{note}</li>)}</ul>;
}
