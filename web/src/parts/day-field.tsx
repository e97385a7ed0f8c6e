import { longDayOf } from "../standing/day.js";
import type { FieldProps } from "./field-props.js";
import { TypedText } from "./typed-text.js";
import { useField } from "./use-field.js";

/** A day as it is typed, year first: "2026-05-02". Beside it the day of the week, which shows a slip. */
export function DayField(props: FieldProps) {
  const { path, field, label, along } = props;
  const state = useField(path, field, label, along);
  const shown = state.draft ?? (typeof state.value === "string" ? state.value : "");
  const converted = longDayOf(state.draft ?? state.value) ?? undefined;
  return <TypedText {...props} state={state} shown={shown} placeholder="year-month-day" converted={converted} />;
}
