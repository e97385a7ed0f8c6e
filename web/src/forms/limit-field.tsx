import { issueSentence, type RuleWords, upperFirst } from "@delaywright/documents";
import { TextField as AriaTextField, FieldError, Input, Label } from "react-aria-components";
import { fieldId } from "../parts/field-id.js";
import { FieldHints, frameClass } from "../parts/field-notes.js";
import { isKeyed, joinField, valueAt } from "../parts/field-path.js";
import { readNumber } from "../parts/number-field.js";
import { useField } from "../parts/use-field.js";
import { useTyped } from "../parts/use-typed.js";
import { entryNow, setField } from "../store/index.js";

export interface LimitFieldProps {
  readonly path: string;
  /** Where the rule stands in the document. */
  readonly at: string;
  readonly which: "look" | "stop";
  readonly label: string;
  readonly rule: RuleWords;
}

/** A limit as it was typed means what stands in the document. */
function means(typed: string, stored: string): boolean {
  const number = readNumber(typed);
  return typed === stored || (number !== undefined && number === readNumber(stored));
}

/**
 * A limit as the document holds it: a number where the rule takes numbers, else as it was typed.
 *
 * @example
 * limitValue("0,05", true); // 0.05
 */
export function limitValue(text: string, plain: boolean): string | number {
  return plain ? (readNumber(text) ?? text.trim()) : text;
}

/** One limit of a rule: a quantity or a number, as the rule has it, or none. */
export function LimitField({ path, at, which, label, rule }: LimitFieldProps) {
  const field = joinField(at, which);
  const state = useField(path, field, label);
  const { value, draft } = state;
  const stored = draft ?? (typeof value === "string" || typeof value === "number" ? String(value) : "");
  const [shown, setTyped] = useTyped(stored, means);
  const change = (text: string): void => {
    setTyped(text);
    if (text.trim() !== "") {
      setField(path, field, limitValue(text, rule.plain), label);
      return;
    }
    // the rule itself stays, though nothing of it is set any more
    const whole = valueAt(entryNow(path)?.raw, at);
    const { [which]: _, ...rest } = isKeyed(whole) ? whole : {};
    setField(path, at, rest, label);
  };
  return (
    <AriaTextField
      className={frameClass(state)}
      id={fieldId(path, field)}
      value={shown}
      onChange={change}
      isInvalid={state.issue !== undefined}
      validationBehavior="aria"
      autoComplete="off"
    >
      <Label>{label}</Label>
      <Input
        className="field-control"
        placeholder={rule[which] === "" ? "as it was" : rule[which]}
        spellCheck={false}
        autoCapitalize="off"
      />
      {state.issue !== undefined && (
        <FieldError className="field-error">{upperFirst(`${issueSentence({ ...state.issue, path: "" })}.`)}</FieldError>
      )}
      <FieldHints hint={`${rule.accepted}, or "none".`} doubts={state.doubts} />
    </AriaTextField>
  );
}
