import "./popover.css";
import { GLUE, percent } from "@delaywright/documents";
import { Button, Dialog, DialogTrigger, Popover } from "react-aria-components";

export interface OddsFigureProps {
  /** 0…1 */
  readonly odds: number;
  /** Sampling error at one sigma, 0…1. */
  readonly error: number;
  /** How many flights it rests on. */
  readonly draws?: number;
  /** What they are the odds of: "clean". */
  readonly of?: string;
  /** Figures still move. */
  readonly settling?: boolean;
}

const NARROW = "\u202f";

/** Whole percent, as the command line says it; near the ends it never says that something is certain. */
export function percentWords(odds: number): string {
  if (!Number.isFinite(odds)) return "–";
  return percent(odds).replaceAll(GLUE, " ").replace(/ %$/, `${NARROW}%`);
}

function errorWords(error: number): string {
  if (!Number.isFinite(error)) return "The error is not known yet.";
  const points = 200 * error;
  const figure = points < 0.1 ? "0.1" : points < 1 ? points.toFixed(1) : String(Math.round(points));
  return `Within ${figure}${NARROW}% in 19 of 20 samples.`;
}

/** Odds as whole percent, with their sampling error on a tap. */
export function OddsFigure({ odds, error, draws, of, settling = false }: OddsFigureProps) {
  return (
    <DialogTrigger>
      <Button className={settling ? "odds-figure settling" : "odds-figure"}>
        {percentWords(odds)}
        <span className="hidden">{of === undefined ? "" : ` ${of}`}, how exact</span>
      </Button>
      <Popover className="popover" placement="bottom">
        <Dialog aria-label="How exact these odds are">
          <p>
            {errorWords(error)}
            {draws === undefined ? "" : ` From ${draws.toLocaleString("en").replaceAll(",", NARROW)} flights.`}
          </p>
          <p>This is the error of counting flights. How far the inputs themselves are off is in the spread.</p>
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
