import { TextField as AriaTextField, Input, Label } from "react-aria-components";
import { fieldId } from "./field-id.js";
import { FieldAside, FieldHints, FieldProblem, frameClass, useConverted } from "./field-notes.js";
import { useField } from "./use-field.js";

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

export interface QuantityFieldProps extends FieldProps {
  /** What counts while it is left out. */
  readonly leftOut?: string | undefined;
  /** A speed of the wind: shown in mph where the flyer's units are imperial. */
  readonly wind?: boolean | undefined;
}

function textOf(value: unknown): string {
  return typeof value === "string" ? value : typeof value === "number" ? String(value) : "";
}

/** A quantity with its unit, as it is typed: "54mm", "2 1/8 in". Nothing of it is ever rewritten. */
export function QuantityField(props: QuantityFieldProps) {
  const { path, field, label, aside, hint, required = false, along, leftOut, wind = false } = props;
  const state = useField(path, field, label, along);
  const converted = useConverted(state, wind);
  const shown = state.draft ?? textOf(state.value);
  const needed = state.needed || (required && shown === "");
  return (
    <AriaTextField
      className={frameClass({ ...state, needed })}
      id={fieldId(path, field)}
      value={shown}
      onChange={(text) => (text.trim() === "" ? state.clear() : state.send(text))}
      isInvalid={state.issue !== undefined}
      isRequired={needed}
      validationBehavior="aria"
      autoComplete="off"
    >
      <Label>{label}</Label>
      <Input className="field-control" placeholder={leftOut ?? ""} spellCheck={false} autoCapitalize="off" />
      <FieldAside aside={aside} converted={converted} needed={needed} />
      <FieldProblem state={state} field={field} />
      <FieldHints hint={hint} doubts={state.doubts} />
    </AriaTextField>
  );
}
