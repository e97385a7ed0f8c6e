import { backUpNote, cautions, glued, holdsPercent, type Issue, type UnitSystem } from "@delaywright/documents";
import { memo } from "react";
import { Button } from "react-aria-components";
import type { PlanAnswer, Told } from "../compute/index.js";
import { OddsFigure, revealField } from "../parts/index.js";
import { Strip } from "../pictures/strip.js";
import { type NextAct, sectionOfIssue, wordOfField } from "../standing/next-act.js";
import { badWords } from "../standing/outcome-words.js";
import type { PlanDocuments } from "../standing/plan-documents.js";
import { ProgressLine } from "../standing/progress-line.js";
import { targetOf } from "../standing/target.js";
import { ageWords, type WeatherAge } from "../standing/weather-age.js";
import { useListing } from "../store/index.js";
import { answerHeadline, checksWords, issueWords, openingLines, spokenWords } from "./answer-words.js";
import { follow, goToSection } from "./follow.js";

/** Most issues that stand in the bar; each section tells its own. */
const MOST_ISSUES = 3;

interface AnswerBarProps {
  readonly answer: PlanAnswer;
  readonly documents: PlanDocuments;
  readonly age: WeatherAge | null;
  readonly next: NextAct | null;
  readonly units: UnitSystem;
}

/** The answer, which stays in view: what to cut, how good its odds are, what the checks say, what to do next. */
export function AnswerBar(props: AnswerBarProps) {
  const { answer, documents, next } = props;
  const { told } = answer;
  return (
    <section
      className={`plan-answer ${props.age?.stale === true ? "stale" : ""}`}
      aria-label="The answer"
      data-state={answer.settling ? "settling" : "settled"}
    >
      {told === null ? <NotYet {...props} /> : <Answered {...props} told={told} />}
      <NextButton next={next} path={documents.plan.path} />
      <ProgressLine path={documents.plan.path} />
    </section>
  );
}

/** No answer yet: what is missing, or that it is being worked out. */
function NotYet({ answer, documents }: AnswerBarProps) {
  const { issues, failure } = answer;
  const lead = failure !== null ? "No answer" : issues.length > 0 ? "Not yet" : "Cut to …";
  return (
    <>
      <div>
        <p className="plan-figure">{lead}</p>
        <p>{failure ?? (issues.length > 0 ? missingWords(issues.length) : "flying the first draws")}</p>
      </div>
      <ul className="plan-missing">
        {issues.slice(0, MOST_ISSUES).map((issue) => (
          <IssueLine key={`${issue.file} ${issue.path} ${issue.code}`} issue={issue} documents={documents} />
        ))}
      </ul>
    </>
  );
}

/** What is wrong and where, leading there, and what would be right. */
function IssueLine({ issue, documents }: Pick<AnswerBarProps, "documents"> & { readonly issue: Issue }) {
  const { wrong, right } = issueWords(issue);
  return (
    <li>
      <Button
        className="plan-link"
        onPress={() => {
          goToSection(sectionOfIssue(issue, documents));
          revealField(issue.file, issue.path);
        }}
      >
        {wrong}
        <small>{right}</small>
      </Button>
    </li>
  );
}

function missingWords(count: number): string {
  return count === 1 ? "one thing is missing or wrong" : `${count} things are missing or wrong`;
}

/** The one thing to do next. */
const NextButton = memo(function NextButton({ next, path }: Pick<AnswerBarProps, "next"> & { readonly path: string }) {
  return (
    <div className="plan-do">
      {next !== null && (
        <Button className="next-act" onPress={() => follow(next, path)}>
          {next.words}
        </Button>
      )}
    </div>
  );
});

/** The figures are drawn again once new ones are told, and not when they are asked for. */
function Answered({ answer, told, age, units }: AnswerBarProps & { readonly told: Told }) {
  const { settling } = answer;
  return (
    <>
      <Figures told={told} age={age} units={units} />
      <div className="plan-says">
        <Says told={told} />
        <Standing answer={answer} age={age} />
      </div>
      <Authority told={told} />
      <p className="hidden" role="status">
        {settling ? "" : spokenWords(told.data, units)}
      </p>
    </>
  );
}

interface FiguresProps extends Pick<AnswerBarProps, "age" | "units"> {
  readonly told: Told;
}

const Figures = memo(function Figures({ told, age, units }: FiguresProps) {
  const { data } = told;
  const { lead, detail } = answerHeadline(data, units);
  const target = targetOf(data);
  const opening = target === null ? null : openingLines(target, units);
  const backUp = target === null ? null : backUpNote(target);
  const clean = backUp?.alone ?? "clean";
  return (
    <>
      <div className="plan-what">
        <p className="plan-figure">{lead}</p>
        <p className="plan-how">{detail}</p>
        {data.choice !== null && data.toCut !== null && (
          <p className="quiet">your own choice: {glued(String(data.choice.setting.delay), "s")}</p>
        )}
      </div>
      <div className="plan-odds">
        {target === null ? (
          <p className="plan-figure">–</p>
        ) : (
          <>
            <p className="plan-figure">
              <OddsFigure odds={target.odds.clean} error={target.odds.error / 3} draws={told.draws} of={clean} />{" "}
              <small>
                {clean}
                {age?.stale === true ? ` at ${age.taken}` : ""}
              </small>
            </p>
            <Strip odds={target.odds} stale={age?.stale === true} />
            {backUp !== null && <p className="quiet plan-back-up">{backUp.firesFirst}</p>}
            <p className="quiet plan-outcomes">{badWords(target.odds)}</p>
          </>
        )}
      </div>
      <div className="plan-opening">
        {opening === null ? (
          <p>{target === null ? "The motor fires no charge." : "Every flight lands before it opens."}</p>
        ) : (
          <>
            <p>
              {backUp === null ? "9 in 10 open" : "Alone, 9 in 10 open"} below <b>{opening.below}</b>
            </p>
            <p>
              <span className="plan-again">9 in 10 open </span>above <b>{opening.above}</b>
            </p>
            <p className="plan-when">{opening.when}</p>
          </>
        )}
        {target !== null && (
          <p className="quiet">
            holds {holdsPercent(target.odds.holds)} (least {holdsPercent(data.limits.leastHolds)})
          </p>
        )}
      </div>
    </>
  );
});

/** What the checks say. */
const Says = memo(function Says({ told }: { readonly told: Told }) {
  const { head, first, rest } = checksWords(told.data, told.draws < told.of);
  return (
    <>
      <Button className="plan-link" onPress={() => goToSection("checks")}>
        <b>{head}</b>
      </Button>
      {first !== "" && <p className="quiet plan-first">{first}</p>}
      <p className="quiet">{rest}</p>
    </>
  );
});

/** Whose word comes first, where a check says stop. */
const Authority = memo(function Authority({ told }: { readonly told: Told }) {
  const { stops } = checksWords(told.data);
  return stops ? <p className="plan-authority quiet">{cautions.authority.join(" ")}</p> : null;
});

/** Why the answer is not quite that of now: an error in a field, an old reading, computing that failed. */
function Standing({ answer, age }: Pick<AnswerBarProps, "answer" | "age">) {
  const entries = useListing();
  const { issues, fresh, failure } = answer;
  if (failure !== null) return <p className="plan-warn">{failure}</p>;
  const [issue] = issues;
  if (!fresh && issue !== undefined) {
    const name = entries.find((entry) => entry.path === issue.file)?.name ?? issue.file;
    return (
      <p className="plan-warn">
        With the last right value of {name}: {wordOfField(issue.path)}
      </p>
    );
  }
  return age?.stale === true ? <p className="plan-warn">The wind was read {ageWords(age)}.</p> : null;
}
