import "./choice.css";
import { useId } from "react";
import { Switch } from "react-aria-components";
import { fieldId } from "./field-id.js";
import type { FieldProps } from "./field-props.js";
import { useField } from "./use-field.js";

export interface SwitchRowProps {
  readonly id?: string;
  readonly label: string;
  readonly hint?: string | undefined;
  readonly on: boolean;
  readonly onTurn: (on: boolean) => void;
}

/** A switch on its own line. */
export function SwitchRow({ id, label, hint, on, onTurn }: SwitchRowProps) {
  const hintId = useId();
  return (
    <>
      <Switch
        className="choice-switch"
        isSelected={on}
        onChange={onTurn}
        {...(id === undefined ? {} : { id })}
        {...(hint === undefined ? {} : { "aria-describedby": hintId })}
      >
        <span>{label}</span>
        <span className="choice-track" aria-hidden="true" />
      </Switch>
      {hint !== undefined && (
        <p id={hintId} className="field-notes">
          {hint}
        </p>
      )}
    </>
  );
}

/** Yes or no. Nothing is preset: off is written only once it was on. */
export function YesNo({ path, field, label, hint, along }: FieldProps) {
  const state = useField(path, field, label, along);
  return (
    <SwitchRow id={fieldId(path, field)} label={label} hint={hint} on={state.value === true} onTurn={state.send} />
  );
}
