import { delayNumber, type Raw } from "@delaywright/documents";
import { addressOf } from "../app/router.js";
import { dayWords } from "../chrome/day.js";
import { type Brief, type Told, useBrief } from "../compute/index.js";
import { Verdict } from "../parts/index.js";
import { Thumbnail } from "../pictures/thumbnail.js";
import { type Entry, useEntries } from "../store/index.js";
import { CardMenu } from "./card-menu.js";
import { brokenWords, cardWords, settingOf, TO_THE_PAD } from "./card-words.js";
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
  const broken = brief.state === "wrong";
  const id = `plan-${encodeURIComponent(plan.path)}`;
  const example = isExample(plan);
  const aside = [dayWords(raw["date"], now) ?? "no day yet", names.field].filter((word) => word !== null).join(", ");
  return (
    <article className={broken ? "bench-card broken" : "bench-card"} aria-labelledby={id}>
      <h2>
        <a id={id} href={addressOf({ page: "plan", path: plan.path })}>
          {plan.name}
        </a>
        <small>{aside}</small>
      </h2>
      <p className="bench-made">
        {madeWords(names)}
        {example && <b className="bench-example">invented example</b>}
      </p>
      {broken ? (
        <Broken brief={brief} plan={plan} isNext={isNext} say={say} />
      ) : (
        <Answer brief={brief} plan={plan} raw={raw} names={names} now={now} isNext={isNext} say={say} />
      )}
    </article>
  );
}

function madeWords({ rocket, motor, inHand }: PlanNames): string {
  if (rocket === null && motor === null) return "no rocket and no motor yet";
  return [rocket ?? "no rocket yet", motor ?? "no motor yet", inHand ?? (motor === null ? null : "none in hand")]
    .filter((word) => word !== null)
    .join(", ");
}

interface BodyProps {
  readonly brief: Brief;
  readonly plan: Entry;
  readonly isNext: boolean;
  readonly say: (word: string) => void;
}

/** Documents that are wrong or not complete. */
function Broken({ brief, plan, isNext, say }: BodyProps) {
  const entries = useEntries();
  const nameOf = (path: string) => entries.find((entry) => entry.path === path)?.name ?? path;
  const { lead, why, next } = brokenWords(brief.issues, nameOf);
  return (
    <>
      <p className="bench-lead">{lead}</p>
      <p className="bench-why">{why}</p>
      <p className="bench-why">The plan is kept as it is; nothing was thrown away.</p>
      <Do plan={plan} next={next} isNext={isNext} say={say} />
    </>
  );
}

function Answer({
  brief,
  plan,
  raw,
  names,
  now,
  isNext,
  say,
}: BodyProps & { readonly raw: Raw; readonly names: PlanNames; readonly now: Date }) {
  const { told, state, failure } = brief;
  if (told === null)
    return (
      <>
        <div className="bench-answer settling">
          <b>{failure === null ? "Cut to …" : "No answer"}</b>
          <span>
            <b>…</b> clean
          </span>
        </div>
        <Thumbnail settings={[]} least={0.8} chosen={null} />
        <p className="bench-how">{failure ?? "flying the first draws"}</p>
        <Do plan={plan} next="Next: open it" isNext={isNext} say={say} />
      </>
    );
  const age = windAge(raw, now);
  const words = cardWords(told.data, told.facts.cutAllowed, names, age);
  const settling = state === "waiting";
  const quiet = [settling && "settling", words.past && "past", age?.stale && "stale"].filter(Boolean).join(" ");
  return (
    <>
      <div className={`bench-answer ${quiet}`}>
        <b>{words.lead}</b>
        {words.odds !== null && (
          <span>
            <b>{words.odds}</b> {words.oddsNote}
          </span>
        )}
      </div>
      <Notches told={told} stale={age?.stale === true} />
      <p className="bench-how">{failure ?? words.how}</p>
      {words.check !== null && (
        <p className="bench-check">
          <Verdict word={words.check.word} /> {words.check.words}
        </p>
      )}
      <Do plan={plan} next={words.next} isNext={isNext} say={say} />
    </>
  );
}

function Notches({ told, stale }: { readonly told: Told; readonly stale: boolean }) {
  const { data, density } = told;
  const setting = settingOf(data);
  const near = data.settings.filter(({ delay }) => delayNumber(delay) === delayNumber(setting?.delay ?? -1));
  const own = setting === null || near.length > 0 ? [] : [setting];
  return (
    <Thumbnail
      settings={[...data.settings, ...own]}
      least={data.limits.leastClean}
      chosen={setting?.delay ?? null}
      density={density}
      coast={data.coast}
      stale={stale}
    />
  );
}

function Do({ plan, next, isNext, say }: Omit<BodyProps, "brief"> & { readonly next: string }) {
  const page = next === TO_THE_PAD ? "pad" : "plan";
  return (
    <div className="bench-do">
      <a className={isNext ? "next-act" : "act"} href={addressOf({ page, path: plan.path })}>
        {next}
        <span className="hidden">, {plan.name}</span>
      </a>
      <CardMenu entry={plan} say={say} />
    </div>
  );
}
