import { useState } from "react";
import { Button } from "react-aria-components";
import { AskReason } from "../prep/ask-reason.js";
import { changeFlight } from "./log-store.js";

export interface ExcludePartProps {
  /** Of the flight's document. */
  readonly path: string;
  readonly excluded: { readonly reason: string; readonly when: string | null } | null;
}

/** Leaves a flight out of all learning, with the reason, which is kept; or takes it in again. */
export function ExcludePart({ path, excluded }: ExcludePartProps) {
  const [asks, ask] = useState(false);
  if (excluded !== null) {
    const day = excluded.when === null ? null : excluded.when.slice(0, 10);
    return (
      <div className="sheet-box">
        <p>
          <b>Nothing is learned from this flight.</b> {excluded.reason}
          {day === null ? "" : ` (${day})`}
        </p>
        <Button
          className="act"
          onPress={() =>
            changeFlight(path, "flight taken in again", (raw) => {
              const { excluded: _, ...rest } = raw;
              return rest as typeof raw;
            })
          }
        >
          Learn from it again
        </Button>
      </div>
    );
  }
  return (
    <p className="sheet-line">
      <Button className="act" onPress={() => ask(true)}>
        Exclude this flight
      </Button>
      <AskReason
        isOpen={asks}
        title="Exclude this flight?"
        act="Exclude it"
        label="Why"
        isRequired
        onAct={(reason) =>
          changeFlight(path, "flight excluded", (raw) => ({
            ...raw,
            excluded: { reason, when: new Date().toISOString() },
          }))
        }
        onClose={() => ask(false)}
      >
        <p>Nothing is learned from it then, here or in the trends. It stays in the library, and the reason with it.</p>
      </AskReason>
    </p>
  );
}
