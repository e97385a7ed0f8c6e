import type { Raw } from "@delaywright/documents";
import type { ReactNode } from "react";
import { addressOf } from "../app/router.js";
import { useBrief } from "../compute/index.js";
import { flightsOf } from "../prep/flights.js";
import { prepWords } from "../prep/prep-words.js";
import { nextLine, usePrep } from "../prep/use-prep.js";
import { dayWords } from "../standing/day.js";
import { type PlanDocuments, usePlanDocuments } from "../standing/plan-documents.js";
import { weatherAge } from "../standing/weather-age.js";
import { type Entry, useEntries, useSettings } from "../store/index.js";
import { AnswerBody, BrokenBody, WaitingBody } from "./card-body.js";
import { CardMenu } from "./card-menu.js";
import { brokenWords, cardWords } from "./card-words.js";
import { isExample } from "./start-panel.js";

interface PlanCardProps {
  readonly plan: Entry;
  readonly raw: Raw;
  readonly now: Date;
  /** Its next step is the one thing to do next. */
  readonly isNext: boolean;
  /** Says what was done. */
  readonly say: (word: string) => void;
}

/** One plan: what to cut, how good its odds are, how to cut it, what to look at, what is next. */
export function PlanCard({ plan, raw, now, isNext, say }: PlanCardProps) {
  const entries = useEntries();
  const brief = useBrief(plan.path);
  const documents = usePlanDocuments(plan.path);
  const [{ units }] = useSettings();
  const { state, told, issues } = brief;
  // a sheet that nobody began is not worked out here
  const begun = flightsOf(plan.path, entries).length > 0 ? told : null;
  const prep = usePrep(plan.path, { told: begun, issues, fresh: state === "settled", settling: state !== "settled" });
  const prepStep = prep === null ? null : nextLine(prep, units);
  const id = `plan-${encodeURIComponent(plan.path)}`;
  const aside = [dayWords(raw["date"], now) ?? "no day yet", documents?.field?.name].filter(Boolean).join(", ");
  const { body, next, wrong = false, pad = false } = contentOf();
  return (
    <article
      className={wrong ? "bench-card broken" : "bench-card"}
      aria-labelledby={id}
      aria-busy={state === "waiting"}
    >
      <h2>
        <a id={id} href={addressOf({ page: "plan", path: plan.path })}>
          {plan.name}
        </a>
        <small>{aside}</small>
      </h2>
      <p className="bench-made">
        {madeWords(documents)}
        {isExample(plan) && <b className="bench-example">invented example</b>}
      </p>
      {body}
      {prep !== null && prep.flight !== null && (
        <p className="bench-how">
          Prep: {prepWords(prep)}
          {prepStep !== null && `; next: ${prepStep.title}`}
        </p>
      )}
      <div className="bench-do">
        <a className={isNext ? "next-act" : "act"} href={addressOf({ page: pad ? "pad" : "plan", path: plan.path })}>
          <span>
            {next}
            <span className="hidden">, {plan.name}</span>
          </span>
        </a>
        <CardMenu entry={plan} say={say} />
      </div>
    </article>
  );

  function contentOf(): {
    readonly body: ReactNode;
    readonly next: string;
    readonly wrong?: boolean;
    readonly pad?: boolean;
  } {
    const { failure } = brief;
    if (state === "wrong") {
      const nameOf = (path: string) => entries.find((entry) => entry.path === path)?.name ?? path;
      const words = brokenWords(plan.path, issues, nameOf);
      return { body: <BrokenBody words={words} />, next: words.next, wrong: !words.onlyMissing };
    }
    if (told === null || documents === null) return { body: <WaitingBody failure={failure} />, next: "Next: open it" };
    const age = weatherAge(raw, now);
    const words = cardWords({ documents, told, age, units, prepStep });
    const body = (
      <AnswerBody
        told={told}
        words={words}
        settling={state === "waiting"}
        stale={age?.stale === true}
        failure={failure}
      />
    );
    return { body, next: words.next, pad: words.pad };
  }
}

/** What the plan is made of, by name. */
function madeWords(documents: PlanDocuments | null): string {
  const [rocket, motor, inHand] = [documents?.rocket, documents?.motor, documents?.inHand].map((part) => part?.name);
  if (!rocket && !motor) return "no rocket and no motor yet";
  return [rocket || "no rocket yet", motor || "no motor yet", inHand || (motor ? "none in hand" : "")]
    .filter((word) => word !== "")
    .join(", ");
}
