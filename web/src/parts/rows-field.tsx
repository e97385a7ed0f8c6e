import "./rows.css";
import { issueSentence } from "@delaywright/documents";
import { type ReactNode, useId, useState } from "react";
import { Button } from "react-aria-components";
import { undo, useEntry, useStepLabel } from "../store/index.js";
import { changeRows } from "./change-rows.js";
import { fieldId } from "./field-id.js";
import { joinField, valueAt } from "./field-path.js";
import { useNotes } from "./scope.js";

export interface RowsFieldProps {
  readonly path: string;
  /** The list, as an issue names it. */
  readonly field: string;
  readonly label: string;
  /** One of its rows, in a word: "ring". */
  readonly one: string;
  /** What a new row starts with. */
  readonly start: () => unknown;
  /** The fields of one row. */
  readonly children: (base: string, index: number) => ReactNode;
  readonly hint?: string | undefined;
  /** A row is one line of short fields. */
  readonly flat?: boolean | undefined;
  /** Rows stand in an order of their own, which nobody changes by hand. */
  readonly fixedOrder?: boolean | undefined;
}

/** Rows of a list: added, removed and moved. What was removed comes back by undo. */
export function RowsField(props: RowsFieldProps) {
  const { path, field, label, one, start, children, hint, flat = false, fixedOrder = false } = props;
  const entry = useEntry(path);
  const { issues } = useNotes(path);
  const [gone, setGone] = useState<string | null>(null);
  const titleId = useId();
  const list = valueAt(entry?.raw, field);
  const rows: readonly unknown[] = Array.isArray(list) ? list : [];
  const own = issues.filter((issue) => issue.path === field);
  const order = rows.map((_, index) => index);

  const change = (word: string, next: readonly (number | null)[]) => {
    if (entry !== undefined) changeRows(entry, field, next, start, word);
  };
  const remove = (index: number) => {
    const word = `${label}: ${one} ${index + 1} removed`;
    change(
      word,
      order.filter((each) => each !== index),
    );
    setGone(word);
  };
  const move = (index: number, by: number) => {
    const next = [...order];
    next.splice(index + by, 0, ...next.splice(index, 1));
    change(`${label}: ${one} ${index + 1} moved`, next);
  };

  return (
    <fieldset className="rows" id={fieldId(path, field)} tabIndex={-1} aria-labelledby={titleId}>
      <div className="rows-head">
        <span className="field-label rows-title" id={titleId}>
          {label}
        </span>
        <Button className="act" onPress={() => change(`${label}: ${one} added`, [...order, null])}>
          Add {one}
        </Button>
      </div>
      {hint !== undefined && <p className="field-notes">{hint}</p>}
      {own.map((issue) => (
        <p key={issue.code} className="field-error">
          {issueSentence({ ...issue, path: "" })}
        </p>
      ))}
      <ol className={flat ? "rows-list flat" : "rows-list"}>
        {rows.map((_, index) => {
          const base = joinField(field, `[${index}]`);
          const name = `${one} ${index + 1}`;
          const acts = (
            <span className="rows-row-acts">
              {!fixedOrder && rows.length > 1 && (
                <>
                  <Button
                    className="act"
                    aria-label={`Move ${name} up`}
                    isDisabled={index === 0}
                    onPress={() => move(index, -1)}
                  >
                    ↑
                  </Button>
                  <Button
                    className="act"
                    aria-label={`Move ${name} down`}
                    isDisabled={index === rows.length - 1}
                    onPress={() => move(index, 1)}
                  >
                    ↓
                  </Button>
                </>
              )}
              <Button className="act" aria-label={`Remove ${name}`} onPress={() => remove(index)}>
                {flat ? "×" : "Remove"}
              </Button>
            </span>
          );
          return (
            <li key={base} id={flat ? undefined : fieldId(path, base)} tabIndex={-1}>
              {flat ? (
                <>
                  <div className="rows-cells">{children(base, index)}</div>
                  {acts}
                </>
              ) : (
                <>
                  <div className="rows-row-head">
                    <span>{name}</span>
                    {acts}
                  </div>
                  {children(base, index)}
                </>
              )}
            </li>
          );
        })}
      </ol>
      <Gone word={gone} />
    </fieldset>
  );
}

/** Says what was just removed, and brings it back. */
function Gone({ word }: { readonly word: string | null }) {
  const last = useStepLabel("undo");
  const there = word !== null && last === word;
  return (
    <div role="status">
      {there && (
        <p className="rows-gone">
          {word}.
          <Button className="act" onPress={() => undo()}>
            Undo
          </Button>
        </p>
      )}
    </div>
  );
}
