import { issueLine } from "@delaywright/documents";
import { useEffect, useRef } from "react";
import { Button } from "react-aria-components";
import { addressOf, go } from "../app/router.js";
import { addressOfDocument, wordOfKind } from "../parts/index.js";
import { addDocument, type TakenIn } from "../store/index.js";
import type { ImportState } from "./import-box.js";
import { importSentence } from "./import-words.js";

/** Lines of a list that are shown at once. */
const MOST_SHOWN = 40;

function addressOfTaken({ kind, path }: TakenIn): string {
  return (
    (kind === null ? undefined : addressOfDocument(kind, path)) ??
    addressOf({ page: "document", shelf: "others", path })
  );
}

/** What came of an import: what is new, what was there, what is wrong and how it would be right. */
export function ImportReportView({ state }: { readonly state: ImportState }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (state.state === "done" || state.state === "failed") heading.current?.focus();
  }, [state]);
  if (state.state === "idle") return null;
  return (
    <section className="page-panel" aria-busy={state.state === "reading"}>
      <h2 ref={heading} tabIndex={-1}>
        What came of it
      </h2>
      {state.state === "reading" && (
        <p role="status">{state.count === 1 ? "Reading the file …" : `Reading ${state.count} files …`}</p>
      )}
      {state.state === "failed" && (
        <p>The files could not be read: {state.why}. Nothing on the bench was changed. Try one file at a time.</p>
      )}
      {state.state === "done" && <Report state={state} />}
    </section>
  );
}

function Report({ state }: { readonly state: Extract<ImportState, { state: "done" }> }) {
  const { added, same, curves, issues } = state.report;
  return (
    <>
      <p className="import-sum">{importSentence(state.report)}</p>
      {issues.length > 0 && (
        <>
          <h3>What is wrong</h3>
          <ul className="import-list">
            {issues.slice(0, MOST_SHOWN).map((issue) => (
              <li key={`${issue.file} ${issue.path} ${issue.code}`}>{issueLine(issue)}</li>
            ))}
            <Rest count={issues.length} />
          </ul>
        </>
      )}
      {curves.length > 0 && (
        <>
          <h3>Thrust curves without a motor</h3>
          <ul className="import-list">
            {curves.map(({ name, time, newtons }) => (
              <li key={name}>
                {name}, {time.length} points{" "}
                <Button
                  className="act"
                  onPress={() => {
                    const raw = { kind: "motor", version: 1, name, thrust: { time, newtons } };
                    go({ page: "document", shelf: "motors", path: addDocument("motor", raw) });
                  }}
                >
                  Make a motor type of it
                </Button>
              </li>
            ))}
          </ul>
        </>
      )}
      <Documents title="New on the bench" documents={added} />
      <Documents title="There already, unchanged" documents={same} />
    </>
  );
}

function Documents({ title, documents }: { readonly title: string; readonly documents: readonly TakenIn[] }) {
  if (documents.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul className="import-list">
        {documents.slice(0, MOST_SHOWN).map((each) => (
          <li key={each.path}>
            <a href={addressOfTaken(each)}>{each.name}</a>
            <span className="quiet">{each.kind === null ? "cannot be read" : wordOfKind(each.kind)}</span>
          </li>
        ))}
        <Rest count={documents.length} />
      </ul>
    </>
  );
}

function Rest({ count }: { readonly count: number }) {
  return count > MOST_SHOWN ? <li className="quiet">and {count - MOST_SHOWN} more</li> : null;
}
