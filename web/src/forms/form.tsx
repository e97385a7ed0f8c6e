import "./forms.css";
import type { Doubt, Issue } from "@delaywright/documents";
import { memo, type ReactNode } from "react";
import { DocumentScope } from "../parts/index.js";
import { FormParts } from "./form-parts.js";
import { headParts, nameParts, noteParts } from "./head-parts.js";
import type { FormPart } from "./model.js";

export interface FormProps {
  /** Path of the document. */
  readonly path: string;
  /** Where in it the form stands, for a document that stands inside another: `rocket`. */
  readonly within?: string | undefined;
  /** Of the plan that it is part of: what its documents say against each other. */
  readonly issues?: readonly Issue[] | undefined;
  readonly doubts?: readonly Doubt[] | undefined;
  /** On its own page: the name first, notes last. Left out: both behind one line at the end. */
  readonly page?: boolean | undefined;
}

/**
 * The frame of a form. Nothing is sent: every field is kept as it is typed. It is a form to the browser too, which looks through
 * the whole form of a field with every key: what stands in none is one form as large as the page.
 */
function FormFrame({ children }: { readonly children: ReactNode }) {
  return (
    <form className="form" onSubmit={(event) => event.preventDefault()}>
      {children}
    </form>
  );
}

/** A form of a whole document. */
export const DocumentForm = memo(function DocumentForm({
  path,
  within = "",
  issues,
  doubts,
  page = false,
  parts,
}: FormProps & { readonly parts: readonly FormPart[] }) {
  const all = page ? [...nameParts, ...parts, ...noteParts] : [...parts, ...headParts];
  return (
    <DocumentScope path={path} issues={issues} doubts={doubts}>
      <FormFrame>
        <FormParts path={path} base={within} parts={all} />
      </FormFrame>
    </DocumentScope>
  );
});

/** A form of a part of a plan. */
export const PlanPartForm = memo(function PlanPartForm({
  path,
  issues,
  doubts,
  parts,
}: FormProps & { readonly parts: readonly FormPart[] }) {
  return (
    <DocumentScope path={path} issues={issues} doubts={doubts}>
      <FormFrame>
        <FormParts path={path} parts={parts} />
      </FormFrame>
    </DocumentScope>
  );
});
