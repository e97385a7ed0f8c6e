import type { OutcomeOdds } from "@delaywright/engine";
import type { ReactNode } from "react";
import { percent } from "./figures.js";
import { hatchFill } from "./hatches.js";
import { Picture } from "./picture.js";
import { slicesOf } from "./stacked-bar.js";

export interface StripProps {
  readonly odds: OutcomeOdds;
  /** What the strip is about: "at 9 s". */
  readonly of?: string;
  /** [px] */
  readonly height?: number;
  /** Faded: the reading of the wind is old. */
  readonly stale?: boolean;
}

/** Outcomes in words, in the order they are stacked, without those that never happen. */
export function oddsWords(odds: OutcomeOdds): string {
  return slicesOf(odds)
    .map(({ words, share }) => `${words} ${percent(share)}`)
    .join(", ");
}

/** One setting's outcomes as a strip of 100. */
export function Strip({ odds, of = "", height = 16, stale = false }: StripProps): ReactNode {
  return (
    <Picture
      name="strip"
      title={`Outcomes ${of}`.trim()}
      description={`Of 100 flights: ${oddsWords(odds)}.`}
      saves={false}
      firstWidth={240}
      draw={({ width }) => ({
        height,
        marks: (
          <g className={stale ? "odds-stale" : undefined}>
            {slicesOf(odds).map(({ hatch, from, share }) => (
              <rect
                key={hatch}
                className="part"
                x={from * width}
                y={0}
                width={share * width}
                height={height}
                style={{ fill: hatchFill(hatch) }}
              />
            ))}
            <rect className="box" x={0.5} y={0.5} width={Math.max(0, width - 1)} height={Math.max(0, height - 1)} />
          </g>
        ),
      })}
    />
  );
}
