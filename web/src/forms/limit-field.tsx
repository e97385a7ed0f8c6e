import { checkField, issueSentence, type RuleWords, upperFirst } from "@delaywright/documents";
import { TextField as AriaTextField, FieldError, Input, Label } from "react-aria-components";
import { fieldId } from "../parts/field-id.js";
import { FieldHints, frameClass, lastRightWords } from "../parts/field-notes.js";
import { joinField, withValue } from "../parts/field-path.js";
import { readNumber } from "../parts/number-field.js";
import { useField } from "../parts/use-field.js";
import { useTyped } from "../parts/use-typed.js";
import { changeDocuments, entryNow } from "../store/index.js";

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

/** Takes a limit away with what is typed in it; the rule itself stays, though nothing of it may be set any more. */
function clearLimit(path: string, field: string, label: string): void {
  const entry = entryNow(path);
  if (entry?.raw == null) return;
  const { [field]: _, ...drafts } = entry.drafts;
  changeDocuments(label, [{ path, raw: withValue(entry.raw, field, undefined), drafts }]);
}

/** One limit of a rule: a quantity or a number, as the rule has it, or none. */
export function LimitField({ path, at, which, label, rule }: LimitFieldProps) {
  const field = joinField(at, which);
  const state = useField(path, field, label);
  const { kind, value, draft } = state;
  const issue =
    kind === null || draft === undefined ? state.issue : checkField(kind, field, limitValue(draft, rule.plain));
  const stored = draft ?? (typeof value === "string" || typeof value === "number" ? String(value) : "");
  const [shown, setTyped] = useTyped(stored, means);
  const change = (text: string): void => {
    setTyped(text);
    if (text.trim() === "") clearLimit(path, field, label);
    else state.send(limitValue(text, rule.plain));
  };
  return (
    <AriaTextField
      className={frameClass({ ...state, issue })}
      id={fieldId(path, field)}
      value={shown}
      onChange={change}
      isInvalid={issue !== undefined}
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
      {issue !== undefined && (
        <FieldError className="field-error">
          <b>{upperFirst(`${issueSentence({ ...issue, path: "" })}.`)}</b> {lastRightWords(draft, value)}
        </FieldError>
      )}
      <FieldHints hint={`${rule.accepted}, or "none".`} doubts={state.doubts} />
    </AriaTextField>
  );
}
