import { useConverted, useLeftOut } from "./field-notes.js";
import type { FieldProps } from "./field-props.js";
import { TypedText } from "./typed-text.js";
import { useField } from "./use-field.js";

export interface QuantityFieldProps extends FieldProps {
  /** What counts while it is left out: shown in the flyer's units. */
  readonly leftOut?: string | undefined;
  /** A speed of the wind: shown in mph where the flyer's units are imperial. */
  readonly wind?: boolean | undefined;
}

function textOf(value: unknown): string {
  return typeof value === "string" ? value : typeof value === "number" ? String(value) : "";
}

/** A quantity with its unit, as it is typed: "54mm", "2 1/8 in". Nothing of it is ever rewritten. */
export function QuantityField(props: QuantityFieldProps) {
  const { path, field, label, along, leftOut = "", wind = false } = props;
  const state = useField(path, field, label, along);
  const converted = useConverted(state, wind);
  const placeholder = useLeftOut(state, leftOut, wind);
  const shown = state.draft ?? textOf(state.value);
  return <TypedText {...props} state={state} shown={shown} placeholder={placeholder} converted={converted} />;
}
