import { acceptedWords, deskQuantity, foundWords, type Issue, upperFirst } from "@delaywright/documents";
import { TextField as AriaTextField, FieldError, Input, Label } from "react-aria-components";
import { FieldAside } from "../parts/field-notes.js";
import { useSettings } from "../store/index.js";
import type { TypedField as Typed } from "./desk-form.js";

interface TypedFieldProps extends Typed {
  readonly value: string;
  /** What is wrong in it, or that it is missing. */
  readonly issue: Issue | undefined;
  readonly onType: (text: string) => void;
}

/** One line of a card, as it is typed. It belongs to no document. */
export function TypedField({ field, label, aside, leftOut, value, issue, onType }: TypedFieldProps) {
  const [{ units }] = useSettings();
  const needed = issue?.code === "missing";
  const wrong = issue !== undefined && !needed && value !== "" ? issue : undefined;
  return (
    <AriaTextField
      className={["field", wrong && "wrong", needed && "missing"].filter(Boolean).join(" ")}
      id={`desk-${field}`}
      value={value}
      onChange={onType}
      isInvalid={wrong !== undefined}
      isRequired={needed}
      validationBehavior="aria"
      autoComplete="off"
    >
      <Label>{label}</Label>
      <Input
        className="field-control"
        placeholder={deskQuantity(field, leftOut ?? "", units)}
        spellCheck={false}
        autoCapitalize="off"
      />
      <FieldAside aside={aside} needed={needed} />
      {wrong !== undefined && (
        <FieldError className="field-error">
          <b>{upperFirst(foundWords(wrong))}.</b> {upperFirst(acceptedWords(wrong))}.
        </FieldError>
      )}
    </AriaTextField>
  );
}
