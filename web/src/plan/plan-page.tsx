import "./plan-page.css";
import "./print.css";
import { memo, useDeferredValue, useMemo } from "react";
import { addressOf } from "../app/router.js";
import { type PlanAnswer, usePlanAnswer } from "../compute/index.js";
import { IssueList } from "../parts/index.js";
import { type PlanDocuments, usePlanDocuments } from "../standing/plan-documents.js";
import { useNow } from "../standing/use-now.js";
import { weatherAge } from "../standing/weather-age.js";
import { useEntry, useSettings } from "../store/index.js";
import { AnswerBar } from "./answer-bar.js";
import { FootBar } from "./foot-bar.js";
import { nextAct } from "./next-act.js";
import { PlanHeader } from "./plan-header.js";
import { Rail } from "./rail.js";
import { sectionStates } from "./section-state.js";
import { Sections } from "./sections/sections.js";

/** How often the age of a reading is looked at [ms]. */
const LOOK_EVERY = 20_000;

/** A plan: one sheet that follows the day, the answer always in view. */
export function PlanPage({ path }: { readonly path: string }) {
  const documents = usePlanDocuments(path);
  return documents === null ? <NoPlan path={path} /> : <PlanSheet path={path} documents={documents} />;
}

/** Drawn again only where something in it changed. */
const Sheet = memo(Sections);

/** Some of the draws, as far as the sheet is concerned. */
const SOME = { done: 0, of: 1 };

/** The answer without how far its draws have come: the same object for as long as nothing else changes. */
function useSteady({ issues, told, fresh, failure, pictures, progress }: PlanAnswer): PlanAnswer {
  const settled = progress === null;
  return useMemo(
    () => ({ issues, told, fresh, failure, pictures, progress: settled ? null : SOME }),
    [issues, told, fresh, failure, pictures, settled],
  );
}

function PlanSheet({ path, documents }: { readonly path: string; readonly documents: PlanDocuments }) {
  const answer = usePlanAnswer(path);
  const [{ units }] = useSettings();
  const now = useNow(LOOK_EVERY);
  const steady = useSteady(answer);
  const all = useMemo(() => {
    const { issues, told } = steady;
    const age = documents.plan.raw === null ? null : weatherAge(documents.plan.raw, now);
    const next = nextAct({ documents, issues, told, age });
    const states = sectionStates({ documents, issues, told, age, next, units });
    return { documents, answer: steady, age, next, states, units };
  }, [documents, steady, now, units]);
  const { age, next, states } = all;
  // the answer comes first, and typing is never held up: the sheet follows in pieces
  const sheet = useDeferredValue(all, null);
  return (
    <div className="plan" data-state={answer.progress === null ? "settled" : "settling"}>
      <PlanHeader plan={documents.plan} />
      <AnswerBar answer={answer} documents={documents} age={age} next={next} units={units} />
      <div className="plan-frame">
        <Rail states={states} />
        <main className="plan-sheet" id="main" tabIndex={-1} aria-busy={answer.progress !== null || sheet !== all}>
          {sheet !== null && <Sheet {...sheet} />}
        </main>
      </div>
      <FootBar states={states} next={next} plan={documents.plan} />
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
      <IssueList issues={issues} />
      <p>
        <a className="act" href={addressOf({ page: "bench" })}>
          To the bench
        </a>
      </p>
    </main>
  );
}
