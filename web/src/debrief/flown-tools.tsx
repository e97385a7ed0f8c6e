import { memo } from "react";
import { Button } from "react-aria-components";
import type { Stretch } from "../compute/debrief/protocol.js";
import { movedWindow, zoomedWindow } from "../pictures/flown-view.js";

export interface FlownToolsProps {
  readonly window: Stretch;
  readonly whole: Stretch;
  readonly isWhole: boolean;
  /** Stays in view; null: the middle does. */
  readonly about: number | null;
  readonly climb: Stretch;
  /** Null: the whole flight. */
  readonly show: (stretch: Stretch | null) => void;
}

/** What of a flight its plot shows. */
export const FlownTools = memo(({ window, whole, isWhole, about, climb, show }: FlownToolsProps) => {
  const zoom = (by: number): void => show(zoomedWindow(window, by, whole, about ?? undefined));
  const move = (by: number): void => show(movedWindow(window, by, whole));
  return (
    <div className="flown-tools" role="toolbar" aria-label="What of the flight is shown">
      <Button className="act" onPress={() => zoom(0.5)} isDisabled={window.to - window.from < 0.6}>
        Closer
      </Button>
      <Button className="act" onPress={() => zoom(2)} isDisabled={isWhole}>
        Farther
      </Button>
      <Button className="act" onPress={() => move(-0.5)} isDisabled={window.from <= whole.from}>
        Earlier
      </Button>
      <Button className="act" onPress={() => move(0.5)} isDisabled={window.to >= whole.to}>
        Later
      </Button>
      <Button className="act" onPress={() => show(null)} isDisabled={isWhole}>
        Whole flight
      </Button>
      <Button className="act" onPress={() => show(climb)}>
        Climb
      </Button>
    </div>
  );
});
