import { memo } from "react";
import { Button } from "react-aria-components";

/** How a plot's window is changed. */
export type FlownStep = "closer" | "farther" | "earlier" | "later" | "whole" | "climb";

export interface FlownToolsProps {
  readonly isWhole: boolean;
  /** No shorter stretch is shown. */
  readonly isClosest: boolean;
  readonly isFirst: boolean;
  readonly isLast: boolean;
  /** The same function for as long as the plot is there. */
  readonly onStep: (step: FlownStep) => void;
}

/** What of a flight its plot shows. Drawn again only where a button can be pressed that could not before, or the other way round. */
export const FlownTools = memo(({ isWhole, isClosest, isFirst, isLast, onStep }: FlownToolsProps) => (
  <div className="flown-tools" role="toolbar" aria-label="What of the flight is shown">
    <Button className="act" onPress={() => onStep("closer")} isDisabled={isClosest}>
      Closer
    </Button>
    <Button className="act" onPress={() => onStep("farther")} isDisabled={isWhole}>
      Farther
    </Button>
    <Button className="act" onPress={() => onStep("earlier")} isDisabled={isFirst}>
      Earlier
    </Button>
    <Button className="act" onPress={() => onStep("later")} isDisabled={isLast}>
      Later
    </Button>
    <Button className="act" onPress={() => onStep("whole")} isDisabled={isWhole}>
      Whole flight
    </Button>
    <Button className="act" onPress={() => onStep("climb")}>
      Climb
    </Button>
  </div>
));
