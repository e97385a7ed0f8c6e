import { Label, Radio, RadioGroup, Select } from "react-aria-components";
import { ChoiceControl, ChoiceList } from "./choice-list.js";
import { fieldId } from "./field-id.js";
import { FieldAside, FieldHints, FieldProblem, frameClass } from "./field-notes.js";
import type { FieldProps } from "./field-props.js";
import { useField } from "./use-field.js";

export interface ChoiceFieldProps extends FieldProps {
  /** What counts while nothing is chosen: then a way back to that is offered. */
  readonly leftOut?: string | undefined;
  /** Other words for what stands in the document. */
  readonly words?: Readonly<Record<string, string>> | undefined;
}

const LEFT_OUT = "(left out)";

/** One of several words. */
export function ChoiceField(props: ChoiceFieldProps) {
  const { path, field, label, aside, hint, required = false, along, leftOut, words = {} } = props;
  const state = useField(path, field, label, along);
  const chosen = state.draft ?? (typeof state.value === "string" ? state.value : null);
  const needed = state.needed || (required && chosen === null);
  const optional = leftOut !== undefined || state.shape?.required === false;
  const choices = (state.shape?.choices ?? []).map(String).filter((each) => each !== "");
  const items = [
    ...(optional ? [{ id: LEFT_OUT, word: leftOut === undefined ? "not said" : `not said: ${leftOut}` }] : []),
    ...choices.map((id) => ({ id, word: words[id] ?? id })),
  ];
  return (
    <Select
      className={frameClass({ ...state, needed }, "wide")}
      value={chosen ?? (optional ? LEFT_OUT : null)}
      onChange={(key) => (key === LEFT_OUT ? state.clear() : key !== null && state.send(String(key)))}
      isInvalid={state.issue !== undefined}
      isRequired={needed}
      validationBehavior="aria"
      placeholder="choose"
    >
      <Label>{label}</Label>
      <ChoiceControl id={fieldId(path, field)} />
      {(aside !== undefined || needed) && <FieldAside aside={aside} needed={needed} />}
      <FieldProblem state={state} field={field} />
      <FieldHints hint={hint} doubts={state.doubts} />
      <ChoiceList items={items} />
    </Select>
  );
}

export interface AlternativesProps {
  readonly id?: string;
  readonly label: string;
  readonly items: readonly { readonly id: string; readonly label: string }[];
  /** Null: not chosen yet. */
  readonly chosen: string | null;
  readonly onChoose: (id: string) => void;
  /** Says "needed" beside the label. */
  readonly needed?: boolean;
}

/** A few ways of saying one thing, side by side. */
export function Alternatives({ id, label, items, chosen, onChoose, needed = false }: AlternativesProps) {
  return (
    <RadioGroup
      className="choice-row"
      value={chosen}
      onChange={onChoose}
      orientation="horizontal"
      validationBehavior="aria"
      {...(id === undefined ? {} : { id, tabIndex: -1 })}
    >
      <Label className="field-label">
        {label}
        {needed && (
          <>
            {" "}
            <b className="field-aside field-needed">needed</b>
          </>
        )}
      </Label>
      <div className="choice-radios">
        {items.map((item) => (
          <Radio key={item.id} value={item.id} className="choice-radio">
            {item.label}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  );
}
