import { useState } from "react";
import { Button } from "react-aria-components";
import { addressOf, go, type Shelf } from "../app/router.js";
import { copyOf } from "../chrome/copy.js";
import { shelfOf } from "../chrome/shelf-titles.js";
import { exportOne } from "../exchange/export-bench.js";
import { ConfirmDialog } from "../parts/index.js";
import { addDocument, changeDocuments, type Entry } from "../store/index.js";
import { referencesOf } from "../store/references.js";

interface DocumentActsProps {
  readonly shelf: Shelf;
  readonly entry: Entry;
  /** What refers to it. */
  readonly users: readonly Entry[];
}

/** What can be done with a document as a whole. */
export function DocumentActs({ shelf, entry, users }: DocumentActsProps) {
  const { path, name, kind, raw } = entry;
  const [asks, setAsks] = useState(false);
  return (
    <>
      {kind === "motor-in-hand" && (
        <a className="act" href={addressOf({ page: "label", path })}>
          Label for the bag
        </a>
      )}
      {kind !== null && raw !== null && (
        <Button className="act" onPress={() => go({ page: "document", shelf, path: addDocument(kind, copyOf(raw)) })}>
          Duplicate
        </Button>
      )}
      <Button
        className="act"
        onPress={() => void exportOne(path, raw !== null && (kind === "log" || referencesOf(raw).length > 0))}
      >
        Export
      </Button>
      <Button className="act" onPress={() => setAsks(true)}>
        Delete
      </Button>
      <ConfirmDialog
        isOpen={asks}
        title={`Delete ${name}?`}
        act="Delete it"
        back="Keep it"
        onAct={() => {
          changeDocuments(`deletion of ${name}`, [{ path, remove: true }]);
          go(shelfOf(entry) === null ? { page: "bench" } : { page: "shelf", shelf });
        }}
        onClose={() => setAsks(false)}
      >
        <p>{usedWords(users)}</p>
        {kind === "motor-in-hand" && <p>The readings of its cut go with it; what is cut stays cut.</p>}
        <p>Undo brings it back until this page is closed.</p>
      </ConfirmDialog>
    </>
  );
}

/** Most names that a sentence carries. */
const MOST_NAMED = 4;

function usedWords(users: readonly Entry[]): string {
  if (users.length === 0) return "Nothing else uses it.";
  const names = users.slice(0, MOST_NAMED).map((user) => user.name);
  const more = users.length > MOST_NAMED ? ` and ${users.length - MOST_NAMED} more` : "";
  return `Used by ${names.join("; ")}${more}: without it they give no answer.`;
}
