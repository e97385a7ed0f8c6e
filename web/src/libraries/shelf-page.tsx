import "./libraries.css";
import { useState } from "react";
import { Button, Input, Label, SearchField } from "react-aria-components";
import { addressOf, go, type Shelf } from "../app/router.js";
import { PageTop } from "../chrome/page-top.js";
import { kindOfShelf, shelfOf, shelfTitles } from "../chrome/shelf-titles.js";
import { DemoMotorsAct } from "../exchange/demo-motors-act.js";
import { blankDocument } from "../parts/index.js";
import { addDocument, type Entry, useEntries } from "../store/index.js";
import { factsOf } from "./facts.js";
import { ownIssues, stateWords } from "./own-issues.js";
import { emptyWords, oneOfShelf } from "./shelf-words.js";
import { ShortlistLinks } from "./shortlist-links.js";

/** So many documents need no search. */
const FEW = 8;

/** A library: its documents with what tells them apart. */
export function ShelfPage({ shelf }: { readonly shelf: Shelf }) {
  const entries = useEntries();
  const [sought, setSought] = useState("");
  const own = entries.filter((entry) => shelfOf(entry) === shelf);
  const nameOf = (path: string) => entries.find((entry) => entry.path === path)?.name ?? null;
  const names = own.map(({ name }) => name);
  const lines = own.map((entry) => ({ entry, facts: factsWords(shelf, entry, nameOf, names) }));
  const wanted = sought.trim().toLowerCase();
  const shown = lines.filter(({ entry, facts }) => `${entry.name} ${facts}`.toLowerCase().includes(wanted));
  const kind = kindOfShelf(shelf);
  return (
    <div className="page">
      <PageTop
        title={shelfTitles[shelf]}
        back={{ href: addressOf({ page: "bench" }), word: "Bench" }}
        aside={own.length === 0 ? undefined : `${own.length} on this device`}
      >
        <a className="act" href={addressOf({ page: "import" })}>
          {shelf === "motors" ? "Import, also from CSV" : "Import"}
        </a>
        {kind !== undefined && (
          <Button
            className="act"
            onPress={() => go({ page: "document", shelf, path: addDocument(kind, blankDocument(kind)) })}
          >
            New {oneOfShelf[shelf]}
          </Button>
        )}
      </PageTop>
      <main className="page-panel shelf" id="main" tabIndex={-1}>
        {shelf === "motors" && own.length > 0 && <ShortlistLinks />}
        {own.length > FEW && (
          <SearchField className="shelf-search" value={sought} onChange={setSought}>
            <Label>Find</Label>
            <Input className="field-control" placeholder="name or figure" />
          </SearchField>
        )}
        {own.length === 0 && <p>{emptyWords[shelf]}</p>}
        {own.length > 0 && shown.length === 0 && <p role="status">Nothing here says “{sought.trim()}”.</p>}
        <ul className="shelf-list">
          {shown.map(({ entry, facts }) => (
            <ShelfLine key={entry.path} shelf={shelf} entry={entry} facts={facts} />
          ))}
        </ul>
        {shelf === "motors" && <DemoMotorsAct />}
      </main>
    </div>
  );
}

/** What tells a document from the others; its file where the name does not. */
function factsWords(
  shelf: Shelf,
  { name, path, raw }: Entry,
  nameOf: (path: string) => string | null,
  names: readonly string[],
): string {
  const facts = raw === null ? "" : factsOf(shelf, raw, nameOf);
  const alone = names.indexOf(name) === names.lastIndexOf(name);
  return alone ? facts : [facts, path].filter((word) => word !== "").join(", ");
}

function ShelfLine({ shelf, entry, facts }: { readonly shelf: Shelf; readonly entry: Entry; readonly facts: string }) {
  const state = entry.raw === null ? "cannot be read" : stateWords(ownIssues(entry));
  return (
    <li>
      <a href={addressOf({ page: "document", shelf, path: entry.path })}>
        <b>{entry.name}</b>
        <span>{facts}</span>
        {state !== null && <em>{state}</em>}
      </a>
    </li>
  );
}
