import "./forms.css";
import type { Doubt, Issue } from "@delaywright/documents";
import { memo } from "react";
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
      <div className="form">
        <FormParts path={path} base={within} parts={all} />
      </div>
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
      <div className="form">
        <FormParts path={path} parts={parts} />
      </div>
    </DocumentScope>
  );
});
