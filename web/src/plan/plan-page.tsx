import "./plan-page.css";
import "./print.css";
import { useDeferredValue, useMemo } from "react";
import { addressOf } from "../app/router.js";
import { type PlanAnswer, usePlanAnswer } from "../compute/index.js";
import { IssueList, useSame } from "../parts/index.js";
import { nextLine, usePrep } from "../prep/use-prep.js";
import { nextAct } from "../standing/next-act.js";
import { type PlanDocuments, usePlanDocuments } from "../standing/plan-documents.js";
import { useNow } from "../standing/use-now.js";
import { weatherAge } from "../standing/weather-age.js";
import { useEntry, useSettings } from "../store/index.js";
import { AnswerBar } from "./answer-bar.js";
import { FootBar } from "./foot-bar.js";
import { PlanHeader } from "./plan-header.js";
import { PlanSheet } from "./plan-sheet.js";
import { Rail } from "./rail.js";
import { sectionStates } from "./section-state.js";
import { useAfterPaint } from "./use-after-paint.js";
import { useCalm } from "./use-calm.js";
import { useTold } from "./use-told.js";

/** How often the age of a reading is looked at [ms]. */
const LOOK_EVERY = 20_000;

/** The first answer fills the sheet as it comes: what is looked for must not move once it has been found. */
const withoutPictures = ({ answer }: { readonly answer: PlanAnswer }): boolean => answer.pictures === null;

/** What is not in view is drawn once nothing has changed for so long [ms]. */
const CALM = 300;

/** Of what a sheet was drawn from last, whichever plan it was of. */
let lastOrder = 0;

/** A plan: one sheet that follows the day, the answer always in view. */
export function PlanPage({ path }: { readonly path: string }) {
  const documents = usePlanDocuments(path);
  return documents === null ? <NoPlan path={path} /> : <PlanOf path={path} documents={documents} />;
}

function PlanOf({ path, documents }: { readonly path: string; readonly documents: PlanDocuments }) {
  const answer = usePlanAnswer(path);
  const [{ units }] = useSettings();
  const now = useNow(LOOK_EVERY, documents.plan.raw);
  const { issues, told, settling } = answer;
  const age = useSame(documents.plan.raw === null ? null : weatherAge(documents.plan.raw, now));
  const prep = usePrep(path, answer);
  const prepStep = prep === null ? null : nextLine(prep, units);
  const next = useSame(nextAct({ documents, issues, told, age, prepStep }));
  const states = useSame(sectionStates({ documents, issues, told, age, next, units, prep }));
  const all = useTold(
    useMemo(
      () => ({ order: ++lastOrder, documents, answer, age, next, states, units }),
      [documents, answer, age, next, states, units],
    ),
  );
  // the answer comes first, and typing is never held up: the sheet follows in pieces, what is not in view last
  const sheet = useAfterPaint(all);
  const around = sheet ?? all;
  const calm = useCalm(all, CALM, { moves: settling, isFirst: withoutPictures });
  const resting = useDeferredValue(calm);
  return (
    <div className="plan">
      <PlanHeader path={path} name={documents.plan.name} />
      <AnswerBar answer={answer} documents={documents} age={age} next={next} units={units} />
      <div className="plan-frame">
        <Rail states={around.states} />
        <PlanSheet now={sheet} calm={resting} busy={settling || sheet !== all || resting !== all} />
      </div>
      <FootBar states={around.states} next={around.next} path={path} />
    </div>
  );
}

/** A plan that is not there, or whose text cannot be read at all. */
function NoPlan({ path }: { readonly path: string }) {
  const entry = useEntry(path);
  const { issues } = usePlanAnswer(path);
  return (
    <main className="plan-none" id="main" tabIndex={-1}>
      <h1>{entry === undefined ? "There is no such plan here" : "This plan cannot be read"}</h1>
      <p>
        {entry === undefined
          ? "It may have been deleted, or it was opened from an address of another device."
          : "It is kept as it is; nothing was thrown away."}
      </p>
      {entry !== undefined && <IssueList issues={issues} />}
      <p>
        <a className="act" href={addressOf({ page: "bench" })}>
          To the bench
        </a>
      </p>
    </main>
  );
}
