import "./libraries.css";
import { issueSentence } from "@delaywright/documents";
import { useState } from "react";
import { addressOf, type Shelf } from "../app/router.js";
import { PageTop } from "../chrome/page-top.js";
import { kindOfShelf, shelfOf, shelfTitles } from "../chrome/shelf-titles.js";
import { FieldForm, FlyerForm, MotorForm, MotorInHandForm, RocketForm, RuleSetForm, ToolForm } from "../forms/index.js";
import { IssueList } from "../parts/index.js";
import { type Entry, useEntries, useEntry } from "../store/index.js";
import { DocumentActs } from "./document-acts.js";
import { DocumentPictures } from "./document-pictures.js";
import { DocumentText } from "./document-text.js";
import { ownIssues } from "./own-issues.js";
import { Readings } from "./readings.js";
import { usersOf } from "./used-by.js";
import { UsedBy } from "./used-by-list.js";

interface DocumentPageProps {
  readonly shelf: Shelf;
  readonly path: string;
}

/** One document of a library: its form, its picture, what is wrong with it, what uses it. */
export function DocumentPage({ shelf, path }: DocumentPageProps) {
  const entry = useEntry(path);
  if (entry === undefined)
    return (
      <div className="page">
        <PageTop title="There is no such document here" back={backTo(shelf)} />
        <main className="page-panel" id="main" tabIndex={-1}>
          <p>It may have been deleted, or the address is of another device. Undo brings back what was just deleted.</p>
        </main>
      </div>
    );
  return <Sheet key={path} shelf={shelf} entry={entry} />;
}

/** The library of a document; plans lie on the bench. */
function backTo(shelf: Shelf | null): { readonly href: string; readonly word: string } {
  if (shelf === null) return { href: addressOf({ page: "bench" }), word: "Bench" };
  return { href: addressOf({ page: "shelf", shelf }), word: shelfTitles[shelf] };
}

function Sheet({ shelf, entry }: { readonly shelf: Shelf; readonly entry: Entry }) {
  const entries = useEntries();
  const [asText] = useState(entry.raw === null);
  const issues = ownIssues(entry);
  const users = usersOf(entry.path, entries);
  const text = asText || entry.raw === null || entry.text !== null;
  return (
    <div className="page">
      <PageTop title={entry.name} back={backTo(shelfOf(entry))}>
        <DocumentActs shelf={shelf} entry={entry} users={users} />
      </PageTop>
      <main className="document" id="main" tabIndex={-1}>
        <div className="page-panel">
          {issues.length > 0 && (
            <section className="document-issues" aria-label="What is wrong or missing">
              <p>
                <b>{issues.length === 1 ? "One thing is" : `${issues.length} things are`} wrong or missing.</b> What you
                typed is kept as it is.
              </p>
              {entry.kind === null ? (
                issues.map((issue) => <p key={`${issue.path} ${issue.code}`}>{issueSentence(issue)}</p>)
              ) : (
                <IssueList issues={issues} />
              )}
            </section>
          )}
          {text && <DocumentText entry={entry} />}
          {entry.kind !== null && <h2 className="hidden">What is entered</h2>}
          <Form entry={entry} />
        </div>
        <div className="document-beside">
          <DocumentPictures entry={entry} users={users} />
          {entry.kind === "motor-in-hand" && entry.raw !== null && <Readings raw={entry.raw} path={entry.path} />}
          {kindOfShelf(shelf) !== undefined && <UsedBy users={users} />}
        </div>
      </main>
    </div>
  );
}

function Form({ entry }: { readonly entry: Entry }) {
  const { kind, path } = entry;
  switch (kind) {
    case "rocket":
      return <RocketForm path={path} page />;
    case "motor":
      return <MotorForm path={path} page />;
    case "motor-in-hand":
      return <MotorInHandForm path={path} page />;
    case "tool":
      return <ToolForm path={path} page />;
    case "field":
      return <FieldForm path={path} page />;
    case "flyer":
      return <FlyerForm path={path} page />;
    case "rule-set":
      return <RuleSetForm path={path} page />;
    case "plan":
      return (
        <p>
          <a className="act" href={addressOf({ page: "plan", path })}>
            Open the plan
          </a>
        </p>
      );
    case "flight":
      return <OpenDebrief raw={entry.raw} />;
    case null:
      return null;
    default:
      return <p className="second">It is kept, exported and imported with the rest; it has no form of its own.</p>;
  }
}

/** The way to where a flight is debriefed: its plan. */
function OpenDebrief({ raw }: Pick<Entry, "raw">) {
  const plan = [raw?.["planFile"], raw?.["plan"]].find((path) => typeof path === "string");
  if (plan === undefined) return <p className="second">It has its plan inside it, and no sheet of its own.</p>;
  return (
    <p>
      <a className="act" href={addressOf({ page: "plan", path: plan })}>
        Open the plan, with its debrief
      </a>
    </p>
  );
}
