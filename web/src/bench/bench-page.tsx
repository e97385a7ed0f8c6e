import "./bench.css";
import { cautions } from "@delaywright/documents";
import { type ReactNode, useState } from "react";
import { Button } from "react-aria-components";
import { addressOf, go } from "../app/router.js";
import { DisplayMenu } from "../chrome/display-menu.js";
import { UndoButton } from "../chrome/page-top.js";
import { SavingLine, useSavingWords } from "../chrome/saving-line.js";
import { importFilesIn } from "../exchange/import-box.js";
import { blankDocument } from "../parts/index.js";
import { dayOf, longDay } from "../standing/day.js";
import { useNow } from "../standing/use-now.js";
import { addDocument, useEntries, useSaving } from "../store/index.js";
import { foremost, inOrder, placed } from "./order.js";
import { PlanCard } from "./plan-card.js";
import { Side } from "./side.js";
import { isExample, StartPanel } from "./start-panel.js";
import { UnreadableCard } from "./unreadable-card.js";
import { useFileDrop } from "./use-file-drop.js";
import { isPlan } from "./which-plans.js";

/** How often the day and the age of readings are looked at [ms]. */
const LOOK_EVERY = 20_000;

/** Makes a plan for today and opens its sheet, which says what it needs. */
function newPlan(today: string): void {
  go({ page: "plan", path: addDocument("plan", { ...blankDocument("plan"), date: today }) });
}

/** Home: the plans with what to cut, the libraries, and how to keep all of it. */
export function BenchPage() {
  const entries = useEntries();
  const now = useNow(LOOK_EVERY, entries);
  const { state } = useSaving();
  const writing = useSavingWords() !== "";
  const [word, say] = useState("");
  const today = dayOf(now);
  const over = useFileDrop((files) => {
    void importFilesIn(files);
    go({ page: "import" });
  });
  const plans = entries.filter(isPlan);
  const own = plans.filter((entry) => !isExample(entry));
  const ordered = inOrder(
    plans.map((entry) => ({ ...placed(entry), entry })),
    today,
  );
  const kept = state !== "failed" && state !== "upgraded-elsewhere";
  const first = own.length > 0 && kept ? foremost(own.map(placed), today) : null;
  const start = () => newPlan(today);
  return (
    <div className="page">
      <header className="page-head bench-head">
        <h1>Bench</h1>
        <p>{headWords(own.length, now, kept, writing)}</p>
        <SavingLine />
        <span className="page-push" />
        <span className="page-acts">
          <UndoButton />
          <DisplayMenu />
          <a className="act" href={addressOf({ page: "card-desk" })}>
            Card desk
          </a>
          <a className="act" href={addressOf({ page: "import" })}>
            Import
          </a>
          {own.length > 0 && (
            <Button className="act" onPress={start}>
              New plan
            </Button>
          )}
        </span>
      </header>
      <p className="hidden" role="status">
        {word}
      </p>
      <div className="bench-columns">
        <main className="bench-plans" id="main" tabIndex={-1} aria-label="Plans">
          {own.length === 0 && <StartPanel onNew={start} isNext={kept} alone={plans.length === 0} />}
          {ordered.map(({ entry, path }) =>
            entry.raw === null ? (
              <UnreadableCard key={path} entry={entry} say={say} />
            ) : (
              <PlanCard key={path} plan={entry} raw={entry.raw} now={now} isNext={path === first} say={say} />
            ),
          )}
          {plans.length > 0 && <p className="quiet">{cautions.authority.join(" ")}</p>}
        </main>
        <Side entries={entries} now={now} />
      </div>
      {over && <DropHint>Drop the files to take them in</DropHint>}
    </div>
  );
}

function headWords(count: number, now: Date, kept: boolean, writing: boolean): string {
  if (!kept) return `${longDay(now)}; not everything is kept, see above`;
  if (count === 0) return `${longDay(now)}; what you make stays on this device`;
  const plans = count === 1 ? "1 plan" : `${count} plans`;
  return `${plans}, ${longDay(now)}${writing ? "" : ", all of it on this device"}`;
}

function DropHint({ children }: { readonly children: ReactNode }) {
  return (
    <div className="bench-drop" aria-hidden="true">
      <p>{children}</p>
    </div>
  );
}
