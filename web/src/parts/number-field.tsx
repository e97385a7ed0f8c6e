import { checkField } from "@delaywright/documents";
import { TextField as AriaTextField, Input, Label } from "react-aria-components";
import { fieldId } from "./field-id.js";
import { FieldAside, FieldHints, FieldProblem, frameClass } from "./field-notes.js";
import type { FieldProps } from "./field-props.js";
import { useField } from "./use-field.js";
import { useTyped } from "./use-typed.js";

export interface NumberFieldProps extends FieldProps {
  /** What counts while it is left out. */
  readonly leftOut?: string | undefined;
  /** A fraction that may be typed as a percentage too: "80 %". */
  readonly percent?: boolean | undefined;
}

/**
 * A pure number as people type it, with a decimal point or comma; with a percent sign it is a hundredth of it.
 *
 * @returns undefined where it is no number
 * @example
 * readNumber("80 %"); // 0.8
 */
export function readNumber(text: string): number | undefined {
  const match = /^\s*([-+−]?(?:\d+[.,]?\d*|[.,]\d+))\s*(%?)\s*$/.exec(text);
  if (match === null) return undefined;
  const number = Number((match[1] ?? "").replace(",", ".").replace("−", "-"));
  return match[2] === "%" ? Number((number / 100).toPrecision(12)) : number;
}

function means(typed: string, stored: string): boolean {
  return typed === stored || (readNumber(typed) !== undefined && readNumber(typed) === readNumber(stored));
}

function percentOf(value: unknown): string | undefined {
  return typeof value === "number" ? `= ${Number((100 * value).toPrecision(6))}\u202f%` : undefined;
}

/** A pure number. */
export function NumberField(props: NumberFieldProps) {
  const { path, field, label, aside, hint, required = false, along, leftOut, percent = false } = props;
  const found = useField(path, field, label, along);
  const { kind, draft } = found;
  const number = draft === undefined ? undefined : readNumber(draft);
  const state = kind === null || number === undefined ? found : { ...found, issue: checkField(kind, field, number) };
  const stored = draft ?? (typeof state.value === "number" ? String(state.value) : "");
  const [shown, setTyped] = useTyped(stored, means);
  const needed = state.needed || (required && shown === "");
  const change = (text: string) => {
    setTyped(text);
    if (text.trim() === "") return state.clear();
    state.send(readNumber(text) ?? text);
  };
  return (
    <AriaTextField
      className={frameClass({ ...state, needed })}
      id={fieldId(path, field)}
      value={shown}
      onChange={change}
      isInvalid={state.issue !== undefined}
      isRequired={needed}
      validationBehavior="aria"
      autoComplete="off"
      inputMode={percent ? "text" : "decimal"}
    >
      <Label>{label}</Label>
      <Input className="field-control" placeholder={leftOut ?? ""} />
      <FieldAside
        aside={aside}
        converted={percent && draft === undefined ? percentOf(state.value) : undefined}
        needed={needed}
      />
      <FieldProblem state={state} field={field} />
      <FieldHints hint={hint} doubts={state.doubts} />
    </AriaTextField>
  );
}
