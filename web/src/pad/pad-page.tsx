import "./pad-page.css";
import { addressOf } from "../app/router.js";
import { usePlanAnswer, useWindow } from "../compute/index.js";
import { IssueList } from "../parts/index.js";
import { landingProps } from "../pictures/from-answer.js";
import { PadMap } from "../pictures/pad-map.js";
import { motorCutOf } from "../standing/motor-cut.js";
import { type PlanDocuments, usePlanDocuments } from "../standing/plan-documents.js";
import { useNow } from "../standing/use-now.js";
import { wantsReading, weatherAge } from "../standing/weather-age.js";
import { useSettings } from "../store/index.js";
import { PadFoot } from "./pad-foot.js";
import { PadPrep } from "./pad-prep.js";
import { PadWind } from "./pad-wind.js";
import { padWords } from "./pad-words.js";
import { useSunlight } from "./use-sunlight.js";
import { useWakeLock } from "./use-wake-lock.js";

/** How often the age of the reading is looked at [ms]. */
const LOOK_EVERY = 10_000;

/** One glance at the pad: this motor, its cut, the wind, whether it is still good, which way it lands. */
export function PadPage({ path }: { readonly path: string }) {
  const documents = usePlanDocuments(path);
  useSunlight();
  if (documents !== null) return <Pad path={path} documents={documents} />;
  return (
    <main className="pad-view pad-none" id="main" tabIndex={-1}>
      <h1>There is no such plan here</h1>
      <p>
        <a className="pad-act" href={addressOf({ page: "bench" })}>
          To the bench
        </a>
      </p>
    </main>
  );
}

function Pad({ path, documents }: { readonly path: string; readonly documents: PlanDocuments }) {
  const answer = usePlanAnswer(path);
  const { told, pictures, pictured, settling } = answer;
  const winds = useWindow(path, told !== null && !settling);
  const [{ units }] = useSettings();
  const now = useNow(LOOK_EVERY, documents.plan.raw);
  const awake = useWakeLock();
  const plan = documents.plan.raw ?? {};
  const age = weatherAge(plan, now);
  const cut = motorCutOf(documents);
  const link = addressOf({ page: "plan", path });
  if (told === null)
    return (
      <main className="pad-view pad-none" id="main" tabIndex={-1}>
        <Head head={documents.plan.name} detail="no answer yet" link={link} />
        <p className="pad-answer">
          {answer.failure ?? (answer.issues.length > 0 ? "Not yet" : "Flying the first draws")}
        </p>
        <IssueList issues={answer.issues} />
      </main>
    );
  const words = padWords({
    told,
    window: winds.window,
    age,
    hand: documents.inHand?.name ?? null,
    readAt: cut?.readAt ?? null,
    units,
  });
  const state = settling ? "settling" : wantsReading(age) ? "stale" : "settled";
  return (
    <main className="pad-view" id="main" tabIndex={-1} data-state={state}>
      <Head head={words.head} detail={words.detail} link={link} />
      <section className="pad-good" aria-label="Still good?">
        <p className="pad-ask">
          <span>Still good?</span>
          <span className="pad-odds">
            <b>{words.odds}</b> {words.oddsNote}
          </span>
        </p>
        <h2>{words.answer}</h2>
        <p className="hidden" role="status">
          {!settling ? `Still good? ${words.answer}. ${words.odds} ${words.oddsNote}.` : ""}
        </p>
      </section>
      <PadWind told={told} winds={winds} age={age} plan={documents.plan} units={units} />
      <section className="pad-lands" aria-label="Where it lands">
        <PadMap {...landingProps(told.facts, pictures)} units={units} state={pictured ? state : "settling"} />
      </section>
      <PadFoot
        words={words}
        plan={documents.plan}
        awake={awake}
        problems={answer.issues.length}
        fresh={answer.fresh}
        units={units}
      />
      <PadPrep plan={documents.plan} answer={answer} units={units} isNext={words.act === null} />
    </main>
  );
}

function Head({ head, detail, link }: { readonly head: string; readonly detail: string; readonly link: string }) {
  return (
    <header className="pad-head">
      <div>
        <h1>{head}</h1>
        <p>{detail}</p>
      </div>
      <a href={link}>Plan</a>
    </header>
  );
}
