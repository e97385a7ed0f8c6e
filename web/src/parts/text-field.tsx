import { TextField as AriaTextField, Input, Label, TextArea } from "react-aria-components";
import { fieldId } from "./field-id.js";
import { FieldAside, FieldHints, FieldProblem, frameClass } from "./field-notes.js";
import type { FieldProps } from "./field-props.js";
import { useField } from "./use-field.js";

export interface TextFieldProps extends FieldProps {
  /** Several lines. */
  readonly long?: boolean | undefined;
}

/** A text. */
export function TextField(props: TextFieldProps) {
  const { path, field, label, aside, hint, required = false, along, long = false } = props;
  const state = useField(path, field, label, along);
  const shown = state.draft ?? (typeof state.value === "string" ? state.value : "");
  const needed = state.needed || (required && shown === "");
  return (
    <AriaTextField
      className={frameClass({ ...state, needed }, long ? "long" : "wide")}
      id={fieldId(path, field)}
      value={shown}
      onChange={(text) => (text === "" ? state.clear() : state.send(text))}
      isInvalid={state.issue !== undefined}
      isRequired={needed}
      validationBehavior="aria"
      autoComplete="off"
    >
      <Label>{label}</Label>
      {long ? <TextArea className="field-control" /> : <Input className="field-control" />}
      {(aside !== undefined || needed) && <FieldAside aside={aside} needed={needed} />}
      <FieldProblem state={state} field={field} />
      <FieldHints hint={hint} doubts={state.doubts} />
    </AriaTextField>
  );
}
