import "./rows.css";
import { checkField, issueSentence, type Raw } from "@delaywright/documents";
import { useState } from "react";
import { Button } from "react-aria-components";
import { changeDocuments, type Entry, setField, useEntry } from "../store/index.js";
import { fieldId } from "./field-id.js";
import { joinField, valueAt, withValue } from "./field-path.js";
import { readNumber } from "./number-field.js";
import { useNotes } from "./scope.js";
import { useTyped } from "./use-typed.js";

export interface ColumnsFieldProps {
  readonly path: string;
  /** The object whose lists stand side by side. */
  readonly field: string;
  readonly label: string;
  readonly columns: readonly { readonly key: string; readonly label: string }[];
}

/** Rows that are shown before more are asked for. */
const PAGE = 60;

function listAt(raw: unknown, field: string): readonly unknown[] {
  const list = valueAt(raw, field);
  return Array.isArray(list) ? list : [];
}

/** Lists of numbers that belong together, side by side: one row is one point. */
export function ColumnsField({ path, field, label, columns }: ColumnsFieldProps) {
  const entry = useEntry(path);
  const { issues } = useNotes(path);
  const [shown, setShown] = useState(PAGE);
  if (entry === undefined) return null;
  const lists = columns.map((column) => listAt(entry.raw, joinField(field, column.key)));
  const count = Math.max(0, ...lists.map((list) => list.length));
  const own = issues.filter((issue) => columns.some((column) => issue.path === joinField(field, column.key)));
  const change = (word: string, edit: (list: readonly unknown[]) => readonly unknown[]) => {
    const raw = columns.reduce(
      (whole, column, index) => withValue(whole, joinField(field, column.key), edit(lists[index] ?? [])),
      entry.raw ?? {},
    );
    changeDocuments(`${label}: ${word}`, [{ path, raw: raw as Raw }]);
  };
  return (
    <div className="rows">
      <div className="rows-head">
        <span className="field-label">
          {label} <span className="quiet">{count} points</span>
        </span>
        <Button
          className="act"
          onPress={() => {
            change("point added", (list) => [...list, list.at(-1) ?? 0]);
            setShown(Math.max(shown, count + 1));
          }}
        >
          Add point
        </Button>
      </div>
      {own.map((issue) => (
        <p key={issue.path + issue.code} className="field-error">
          {issueSentence(issue)}
        </p>
      ))}
      {count > 0 && (
        <table className="columns">
          <thead>
            <tr>
              {columns.map((column) => (
                <th key={column.key} scope="col">
                  {column.label}
                </th>
              ))}
              <th>
                <span className="hidden">remove</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {Array.from({ length: Math.min(count, shown) }, (_, index) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a point is its place
              <tr key={index}>
                {columns.map((column) => (
                  <td key={column.key}>
                    <Cell
                      entry={entry}
                      field={joinField(joinField(field, column.key), `[${index}]`)}
                      label={`${column.label}, point ${index + 1}`}
                      undoLabel={label}
                    />
                  </td>
                ))}
                <td>
                  <Button
                    className="act"
                    aria-label={`Remove point ${index + 1}`}
                    onPress={() => change(`point ${index + 1} removed`, (list) => list.toSpliced(index, 1))}
                  >
                    ×
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {count > shown && (
        <Button className="act" onPress={() => setShown(shown + 4 * PAGE)}>
          Show more of the {count} points
        </Button>
      )}
    </div>
  );
}

interface CellProps {
  readonly entry: Entry;
  readonly field: string;
  readonly label: string;
  readonly undoLabel: string;
}

function Cell({ entry, field, label, undoLabel }: CellProps) {
  const { issues } = useNotes(entry.path);
  const draft = entry.drafts[field];
  const value = valueAt(entry.raw, field);
  const stored = draft ?? (typeof value === "number" ? String(value) : "");
  const same = (typed: string, text: string) =>
    typed === text || (readNumber(typed) !== undefined && readNumber(typed) === readNumber(text));
  const [shown, setTyped] = useTyped(stored, same);
  const wrong =
    draft === undefined || entry.kind === null
      ? issues.find((issue) => issue.path === field)
      : checkField(entry.kind, field, readNumber(draft) ?? draft);
  const noteId = `${fieldId(entry.path, field)}-note`;
  return (
    <>
      <input
        id={fieldId(entry.path, field)}
        aria-label={label}
        aria-invalid={wrong !== undefined}
        {...(wrong === undefined ? {} : { "aria-describedby": noteId })}
        value={shown}
        inputMode="decimal"
        autoComplete="off"
        onChange={({ target }) => {
          setTyped(target.value);
          setField(entry.path, field, readNumber(target.value) ?? target.value, undoLabel);
        }}
      />
      {wrong !== undefined && (
        <p id={noteId} className="field-error">
          {issueSentence({ ...wrong, path: "" })}
        </p>
      )}
    </>
  );
}
