import { TextField as AriaTextField, Input, Label } from "react-aria-components";
import { longDayOf } from "../standing/day.js";
import { fieldId } from "./field-id.js";
import { FieldAside, FieldHints, FieldProblem, frameClass } from "./field-notes.js";
import type { FieldProps } from "./quantity-field.js";
import { useField } from "./use-field.js";

/** A day as it is typed, year first: "2026-05-02". Beside it the day of the week, which shows a slip. */
export function DayField(props: FieldProps) {
  const { path, field, label, aside, hint, required = false, along } = props;
  const state = useField(path, field, label, along);
  const shown = state.draft ?? (typeof state.value === "string" ? state.value : "");
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
      <Input className="field-control" placeholder="year-month-day" spellCheck={false} autoCapitalize="off" />
      <FieldAside aside={aside} converted={longDayOf(state.draft ?? state.value) ?? undefined} needed={needed} />
      <FieldProblem state={state} field={field} />
      <FieldHints hint={hint} doubts={state.doubts} />
    </AriaTextField>
  );
}
