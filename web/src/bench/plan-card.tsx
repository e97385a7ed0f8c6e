import type { Raw } from "@delaywright/documents";
import { addressOf } from "../app/router.js";
import { dayWords } from "../chrome/day.js";
import { useBrief } from "../compute/index.js";
import { type Entry, useEntries } from "../store/index.js";
import { AnswerBody, BrokenBody, WaitingBody } from "./card-body.js";
import { CardMenu } from "./card-menu.js";
import { brokenWords, cardWords, TO_THE_PAD } from "./card-words.js";
import { type PlanNames, planNames } from "./plan-names.js";
import { isExample } from "./start-panel.js";
import { windAge } from "./wind-age.js";

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
  const names = planNames(raw, entries);
  const id = `plan-${encodeURIComponent(plan.path)}`;
  const aside = [dayWords(raw["date"], now) ?? "no day yet", names.field].filter((word) => word !== null).join(", ");
  const { body, next, wrong } = contentOf();
  return (
    <article className={wrong ? "bench-card broken" : "bench-card"} aria-labelledby={id}>
      <h2>
        <a id={id} href={addressOf({ page: "plan", path: plan.path })}>
          {plan.name}
        </a>
        <small>{aside}</small>
      </h2>
      <p className="bench-made">
        {madeWords(names)}
        {isExample(plan) && <b className="bench-example">invented example</b>}
      </p>
      {body}
      <div className="bench-do">
        <a
          className={isNext ? "next-act" : "act"}
          href={addressOf({ page: next === TO_THE_PAD ? "pad" : "plan", path: plan.path })}
        >
          <span>
            {next}
            <span className="hidden">, {plan.name}</span>
          </span>
        </a>
        <CardMenu entry={plan} say={say} />
      </div>
    </article>
  );

  function contentOf() {
    const { state, told, issues, failure } = brief;
    if (state === "wrong") {
      const nameOf = (path: string) => entries.find((entry) => entry.path === path)?.name ?? path;
      const words = brokenWords(plan.path, issues, nameOf);
      return { body: <BrokenBody words={words} />, next: words.next, wrong: !words.onlyMissing };
    }
    if (told === null) return { body: <WaitingBody failure={failure} />, next: "Next: open it", wrong: false };
    const age = windAge(raw, now);
    const words = cardWords(told.data, told.facts.cutAllowed, names, age);
    const body = (
      <AnswerBody
        told={told}
        words={words}
        settling={state === "waiting"}
        stale={age?.stale === true}
        failure={failure}
      />
    );
    return { body, next: words.next, wrong: false };
  }
}

function madeWords({ rocket, motor, inHand }: PlanNames): string {
  if (rocket === null && motor === null) return "no rocket and no motor yet";
  return [rocket ?? "no rocket yet", motor ?? "no motor yet", inHand ?? (motor === null ? null : "none in hand")]
    .filter((word) => word !== null)
    .join(", ");
}
