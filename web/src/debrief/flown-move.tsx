import { type DebriefEvent, eventWords, upperFirst } from "@delaywright/documents";
import type { EventName } from "@delaywright/engine";
import { memo } from "react";
import { Button } from "react-aria-components";
import type { DebriefTold } from "../compute/debrief/protocol.js";
import { PickField } from "../parts/index.js";
import { MoveField } from "./move-field.js";

export interface FlownMoveProps {
  readonly events: readonly DebriefEvent[];
  readonly ranges: NonNullable<DebriefTold["plot"]>["ranges"];
  /** In hand; null: none. */
  readonly chosen: EventName | null;
  readonly onChoose: (name: EventName | null) => void;
  /** Moves the event in hand, seconds after lift-off; null: back to where it was found. */
  readonly onTime: (time: number | null) => void;
}

/** Takes an event in hand, and moves it by its time. Stays as it is while the plot is zoomed. */
export const FlownMove = memo(({ events, ranges, chosen, onChoose, onTime }: FlownMoveProps) => {
  const movable = events.filter(({ name, flown }) => flown !== null && ranges[name] !== undefined);
  const found = events.find(({ name }) => name === chosen)?.flown ?? null;
  const range = chosen === null ? undefined : ranges[chosen];
  return (
    <div className="flown-move">
      <PickField
        frame="debrief-choice"
        label="Move an event"
        items={[
          { id: "", word: "none" },
          ...movable.map(({ name }) => ({ id: name, word: upperFirst(eventWords(name)) })),
        ]}
        chosen={chosen ?? ""}
        onChoose={(id) => onChoose(id === "" ? null : (id as EventName))}
      />
      {range !== undefined && found !== null && (
        <>
          <MoveField key={`${chosen} ${found.time}`} time={found.time} range={range} onTime={onTime} />
          {found.movedFrom !== null && (
            <Button className="act" onPress={() => onTime(null)}>
              Back to where it was found
            </Button>
          )}
        </>
      )}
    </div>
  );
});
