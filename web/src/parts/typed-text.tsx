import { TextField as AriaTextField, Input, Label } from "react-aria-components";
import { fieldId } from "./field-id.js";
import { FieldAside, FieldHints, FieldProblem, frameClass } from "./field-notes.js";
import type { FieldProps } from "./field-props.js";
import type { Field } from "./use-field.js";

interface TypedTextProps extends FieldProps {
  readonly state: Field;
  readonly shown: string;
  readonly placeholder: string;
  /** The same in other words or units, beside it. */
  readonly converted: string | undefined;
}

/** One line of text as it is typed, with what it means, what is wrong and what is unlikely beside it. */
export function TypedText(props: TypedTextProps) {
  const { path, field, label, aside, hint, required = false, state, shown, placeholder, converted } = props;
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
      <Input className="field-control" placeholder={placeholder} spellCheck={false} autoCapitalize="off" />
      <FieldAside aside={aside} converted={converted} needed={needed} />
      <FieldProblem state={state} field={field} />
      <FieldHints hint={hint} doubts={state.doubts} />
    </AriaTextField>
  );
}
