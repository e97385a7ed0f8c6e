import "./shortlist.css";
import { aimNote, aimWords, cautions } from "@delaywright/documents";
import { useMemo, useState } from "react";
import { ProgressBar } from "react-aria-components";
import { addressOf, go } from "../app/router.js";
import { PageTop } from "../chrome/page-top.js";
import { useShortlist } from "../compute/use-shortlist.js";
import { DemoMotorsAct } from "../exchange/demo-motors-act.js";
import { IssueList, Notice, Section } from "../parts/index.js";
import { type PlanDocuments, usePlanDocuments } from "../standing/plan-documents.js";
import { addDocument, changeDocuments, useSettings } from "../store/index.js";
import { aimOf, firstAim, type TypedAim } from "./aim.js";
import { AimChooser } from "./aim-chooser.js";
import { MotorRow } from "./motor-row.js";
import { withMotor } from "./put-into-plan.js";
import { Refusals } from "./refusals.js";
import { sharedNotes } from "./row-words.js";
import { basisWords, standingWords } from "./standing-words.js";
import { Unjudged } from "./unjudged.js";

/** What was aimed at, by plan: whoever comes back finds it again. */
const aims = new Map<string, TypedAim>();

/** The motors of the library against a plan: what is left with its cut, odds and looks, what is refused and why. */
export function ShortlistPage({ path }: { readonly path: string }) {
  const documents = usePlanDocuments(path);
  if (documents !== null) return <Shortlist path={path} documents={documents} />;
  return (
    <main className="page-none" id="main" tabIndex={-1}>
      <h1>There is no such plan here</h1>
      <a className="act" href={addressOf({ page: "bench" })}>
        To the bench
      </a>
    </main>
  );
}

function Shortlist({ path, documents }: { readonly path: string; readonly documents: PlanDocuments }) {
  const [{ units }] = useSettings();
  const [typed, setTyped] = useState(aims.get(path) ?? firstAim);
  const aim = useMemo(() => aimOf(typed), [typed]);
  const { answer, data, progress } = useShortlist(path, aim);
  const [said, say] = useState("");
  const { plan } = documents;
  const { shelf, state, issues, waiting, failure } = answer;
  const of = shelf?.motors.length ?? 0;
  const words = standingWords({ state, data, of, done: of - waiting.size }, units);
  const shared = useMemo(() => sharedNotes(data?.ranked ?? [], units), [data, units]);
  const note = data === null ? null : aimNote(data);
  const change = (next: TypedAim): void => {
    aims.set(path, next);
    setTyped(next);
  };
  const put = (motor: string, name: string): void => {
    if (plan.raw === null) return;
    changeDocuments(`motor: ${name}`, [{ path, raw: withMotor(plan.raw, motor) }]);
    say(`${name} is in the plan.`);
  };
  const begin = (motor: string, name: string): void => {
    if (plan.raw === null) return;
    const raw = { ...withMotor(plan.raw, motor), name: `${plan.name}, ${name}` };
    go({ page: "plan", path: addDocument("plan", raw) });
  };
  return (
    <div className="page">
      <PageTop
        title="Shortlist of my motors"
        back={{ href: addressOf({ page: "plan", path }), word: plan.name }}
        aside={[documents.rocket?.name, documents.field?.name].filter((name) => name !== undefined).join(", ")}
      >
        <a className="act" href={addressOf({ page: "shelf", shelf: "motors" })}>
          Motor types
        </a>
      </PageTop>
      <main className="page-panel shortlist" id="main" tabIndex={-1} aria-busy={state === "waiting"}>
        <AimChooser aim={typed} hasCeiling={shelf?.ceiling != null} onChange={change} />
        <p className="shortlist-words">{words}</p>
        <Progress share={progress} />
        <p className="hidden" role="status">
          {said !== "" ? said : state === "waiting" ? "" : words}
        </p>
        {failure !== null && <Notice urgent>{failure}</Notice>}
        {issues.length > 0 && (
          <Section
            title={state === "wrong" ? "What the plan still needs" : "What cannot be read yet"}
            aside={state === "wrong" ? undefined : "the last right values count"}
          >
            <IssueList issues={issues} />
          </Section>
        )}
        {data !== null && data.ranked.length > 0 && (
          <Section title="Not refused" aside={`${aimWords(data.aim, units)} first`}>
            {note !== null && <p className="second">{note}</p>}
            {shared.size > 0 && <p className="second">All of them: {[...shared].join("; ")}.</p>}
            <ol className="motor-rows">
              {data.ranked.map((row) => (
                <MotorRow
                  key={row.file}
                  row={row}
                  draws={data.draws}
                  units={units}
                  shared={shared}
                  waiting={waiting.has(row.file)}
                  inPlan={documents.motor?.path === row.file}
                  plan={path}
                  onPut={() => put(row.file, row.name)}
                  onNew={() => begin(row.file, row.name)}
                />
              ))}
            </ol>
          </Section>
        )}
        {data !== null && <Refusals data={data} units={units} />}
        {data !== null && <Unjudged motors={data.unjudged} />}
        {data !== null && of > 0 && (
          <p className="second shortlist-foot">
            {basisWords(data)} {cautions.authority.join(" ")}
          </p>
        )}
        <DemoMotorsAct />
      </main>
    </div>
  );
}

/** How many motors are judged; its place is kept when it is not needed. */
function Progress({ share }: { readonly share: number | null }) {
  if (share === null) return <div className="shortlist-progress" />;
  return (
    <ProgressBar className="shortlist-progress" aria-label="Motors judged" value={Math.round(100 * share)}>
      <span style={{ transform: `scaleX(${share.toFixed(2)})` }} />
    </ProgressBar>
  );
}
