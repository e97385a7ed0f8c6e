/** What every field of a document is given. */
export interface FieldProps {
  /** Path of the document. */
  readonly path: string;
  /** Where in it, as an issue names it: `fins[0].root`. */
  readonly field: string;
  readonly label: string;
  /** How it is known, in a word or two: "weighed". */
  readonly aside?: string | undefined;
  readonly hint?: string | undefined;
  /** Says "needed" while it is empty, where the schema alone would not. */
  readonly required?: boolean | undefined;
  /** What its object must have beside it, set where it is missing. */
  readonly along?: Readonly<Record<string, unknown>> | undefined;
}
