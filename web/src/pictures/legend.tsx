import type { OutcomeOdds } from "@delaywright/engine";
import type { ReactNode } from "react";
import { hundredths } from "./figures.js";
import { outcomes } from "./hatches.js";

export interface LegendProps {
  /** Writes the figures of one setting behind the words, as on the phone. */
  readonly odds?: OutcomeOdds | undefined;
  /** Adds the pins of what the tool cannot make. */
  readonly pins?: boolean;
}

/** The legend of the hatches. */
export function Legend({ odds, pins = false }: LegendProps): ReactNode {
  return (
    <ul className="legend">
      {outcomes.map(({ key, hatch, words }) => (
        <li key={key}>
          <span className={`hatch ${hatch}`} aria-hidden="true" />
          {words}
          {odds && <b>{hundredths(odds[key])}</b>}
        </li>
      ))}
      {pins && (
        <li>
          <span className="thin" aria-hidden="true">
            <i />
            <i />
            <i />
            <i />
          </span>
          the tool cannot make it
        </li>
      )}
    </ul>
  );
}
