import { useState } from "react";
import { Input, Label, TextField } from "react-aria-components";
import type { Stretch } from "../compute/debrief/protocol.js";
import { readNumber } from "../parts/number-field.js";
import { secondsWords } from "../pictures/figures.js";

export interface MoveFieldProps {
  /** Seconds after lift-off. */
  readonly time: number;
  readonly range: Stretch;
  readonly onTime: (time: number) => void;
}

/** Where an event stands, typed. */
export function MoveField({ time, range, onTime }: MoveFieldProps) {
  const [typed, type] = useState(time.toFixed(2));
  const value = readNumber(typed.replace(/\s*s$/, ""));
  const wrong = value === undefined || value < range.from - 0.005 || value > range.to + 0.005;
  const send = (): void => {
    if (!wrong && value !== undefined && Math.abs(value - time) > 0.004)
      onTime(Math.min(range.to, Math.max(range.from, value)));
  };
  return (
    <form
      className="flown-time"
      onSubmit={(event) => {
        event.preventDefault();
        send();
      }}
    >
      <TextField
        className={wrong ? "field wrong" : "field"}
        value={typed}
        onChange={type}
        onBlur={send}
        isInvalid={wrong}
        validationBehavior="aria"
        autoComplete="off"
        inputMode="decimal"
      >
        <Label>Seconds after lift-off</Label>
        <Input className="field-control" />
        {wrong && (
          <p className="field-error">{`Accepted: ${range.from.toFixed(2)} to ${secondsWords(range.to, 2)}, between the events beside it.`}</p>
        )}
      </TextField>
    </form>
  );
}
