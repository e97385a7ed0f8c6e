import "./field.css";
import { type Issue, issueSentence, type Kind, shownQuantity, spellings } from "@delaywright/documents";
import { FieldError, Text } from "react-aria-components";
import { useSettings } from "../store/index.js";
import type { Field } from "./use-field.js";

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** What counts while a draft stands in a field: nothing to say without a draft, or where nothing stood before it. */
export function lastRightWords(draft: string | undefined, last: unknown): string {
  return draft !== undefined && (typeof last === "string" || typeof last === "number")
    ? `The last right value counts: ${last}.`
    : "";
}

/** What is wrong in a field, two right spellings, and what counts until then. */
export function problemWords(
  issue: Issue,
  kind: Kind,
  field: string,
  draft: string | undefined,
  last: unknown,
): { readonly wrong: string; readonly mend: string } {
  const right = issue.path === field ? spellings(kind, field) : [];
  const wrong =
    draft?.trim() === "" ? "Nothing stands here" : capital(issueSentence({ ...issue, path: "", example: "" }));
  const write = right.length === 0 ? "" : `Write ${right.join(" or ")}.`;
  return { wrong: `${wrong}.`, mend: `${write} ${lastRightWords(draft, last)}`.trim() };
}

/** The error of a field, under it. */
export function FieldProblem({ state, field }: { readonly state: Field; readonly field: string }) {
  if (state.issue === undefined || state.kind === null) return null;
  const { wrong, mend } = problemWords(state.issue, state.kind, field, state.draft, state.value);
  return (
    <FieldError className="field-error">
      <b>{wrong}</b> {mend}
    </FieldError>
  );
}

/** How quantities of a field are shown: a rocket is measured with a tape. */
const shownBy = ({ kind }: Field, wind: boolean) => ({ wind, parts: kind === "rocket" });

/** What a quantity is in the flyer's other units; undefined where it was typed in them. */
export function useConverted(state: Field, wind: boolean): string | undefined {
  const [{ units }] = useSettings();
  const { value, draft, shape } = state;
  if (draft !== undefined || typeof value !== "string" || shape?.dimension === undefined) return undefined;
  for (const dimension of shape.dimensions ?? [shape.dimension]) {
    const shown = shownQuantity(value, dimension, units, shownBy(state, wind));
    if (shown !== value) return `= ${shown}`;
  }
  return undefined;
}

/** What counts while a quantity is left out, in the flyer's units. */
export function useLeftOut(state: Field, leftOut: string, wind: boolean): string {
  const [{ units }] = useSettings();
  const dimension = state.shape?.dimension;
  const options = { ...shownBy(state, wind), digits: 3 };
  return dimension === undefined ? leftOut : shownQuantity(leftOut, dimension, units, options);
}

export interface FieldAsideProps {
  readonly aside?: string | undefined;
  readonly converted?: string | undefined;
  readonly needed: boolean;
}

/** Beside a field: how it is known, the other units, or that it is needed. */
export function FieldAside({ aside, converted, needed }: FieldAsideProps) {
  return (
    <span className="field-aside">
      {needed && <b className="field-needed">needed</b>}
      {aside !== undefined && !needed && <span>{aside}</span>}
      {converted !== undefined && <span className="nowrap">{converted}</span>}
    </span>
  );
}

/** Under a field: its hint, and what is unlikely about it. */
export function FieldHints({
  hint,
  doubts,
}: {
  readonly hint?: string | undefined;
  readonly doubts: readonly string[];
}) {
  if (hint === undefined && doubts.length === 0) return null;
  return (
    <Text slot="description" className="field-notes">
      {hint !== undefined && <span>{hint}</span>}
      {doubts.map((doubt) => (
        <span key={doubt} className="field-doubt">
          {doubt}
        </span>
      ))}
    </Text>
  );
}

/** The classes of a field's frame. */
export function frameClass(state: Field, more = ""): string {
  return ["field", more, state.issue === undefined ? "" : "wrong", state.needed ? "missing" : ""]
    .filter((each) => each !== "")
    .join(" ");
}
