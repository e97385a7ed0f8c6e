import { acceptedWords, foundWords, type Issue, upperFirst } from "@delaywright/documents";
import {
  TextField as AriaTextField,
  Button,
  FieldError,
  Input,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Select,
  SelectValue,
} from "react-aria-components";
import { FieldAside } from "../parts/field-notes.js";
import type { TypedField as Typed } from "./desk-form.js";

interface TypedFieldProps extends Typed {
  readonly value: string;
  /** What is wrong in it, or that it is missing. */
  readonly issue: Issue | undefined;
  readonly onType: (text: string) => void;
}

/** One line of a card, as it is typed. It belongs to no document. */
export function TypedField({ field, label, aside, leftOut, value, issue, onType }: TypedFieldProps) {
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
      <Input className="field-control" placeholder={leftOut ?? ""} spellCheck={false} autoCapitalize="off" />
      <FieldAside aside={aside} needed={needed} />
      {wrong !== undefined && (
        <FieldError className="field-error">
          <b>{upperFirst(foundWords(wrong))}.</b> {upperFirst(acceptedWords(wrong))}.
        </FieldError>
      )}
    </AriaTextField>
  );
}

export interface PickFieldProps {
  readonly label: string;
  readonly items: readonly { readonly id: string; readonly word: string }[];
  readonly chosen: string;
  readonly aside?: string | undefined;
  readonly onChoose: (id: string) => void;
}

/** One of several, in no document. */
export function PickField({ label, items, chosen, aside, onChoose }: PickFieldProps) {
  return (
    <Select className="field wide" value={chosen} onChange={(key) => key !== null && onChoose(String(key))}>
      <Label>{label}</Label>
      <Button className="choice-control">
        <SelectValue />
        <span className="choice-mark" aria-hidden="true" />
      </Button>
      {aside !== undefined && <FieldAside aside={aside} needed={false} />}
      <Popover className="choice-list" offset={2}>
        <ListBox items={items}>
          {(item) => (
            <ListBoxItem className="choice-item" textValue={item.word}>
              {item.word}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}
