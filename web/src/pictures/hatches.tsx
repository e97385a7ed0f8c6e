import type { OutcomeOdds } from "@delaywright/engine";
import type { ReactNode } from "react";
import "./hatches.css";

/** One of the six outcomes, as pictures and legends show it. */
export interface Outcome {
  readonly key: keyof OutcomeOdds;
  /** Class beside `hatch` in HTML, and the end of the pattern's id. */
  readonly hatch: "clean" | "early" | "late" | "lean" | "low" | "grounded";
  readonly words: string;
}

/** The outcomes in the order they are stacked, from the base. */
export const outcomes: readonly Outcome[] = [
  { key: "clean", hatch: "clean", words: "clean" },
  { key: "earlyFast", hatch: "early", words: "early fast" },
  { key: "lateFast", hatch: "late", words: "late fast" },
  { key: "leanFast", hatch: "lean", words: "lean fast" },
  { key: "low", hatch: "low", words: "low" },
  { key: "grounded", hatch: "grounded", words: "grounded" },
];

/** The element that holds the patterns: saved pictures take their copy from it. */
export const HATCHES = "hatches";

/**
 * The fill of an outcome inside an svg, also in print.
 *
 * @example
 * <rect style={{ fill: hatchFill("late") }} />
 */
export function hatchFill(hatch: Outcome["hatch"]): string {
  return hatch === "clean" ? "var(--clean)" : `url(#hatch-${hatch})`;
}

function Pattern(props: { hatch: Outcome["hatch"]; size: number; turn: number; children: ReactNode }): ReactNode {
  const { hatch, size, turn, children } = props;
  return (
    <pattern
      id={`hatch-${hatch}`}
      width={size}
      height={size}
      patternUnits="userSpaceOnUse"
      patternTransform={`rotate(${turn})`}
    >
      <rect width={size} height={size} style={{ fill: `var(--${hatch}-tint)` }} />
      {children}
    </pattern>
  );
}

const stroke = (hatch: Outcome["hatch"], width = "var(--hatch)"): { stroke: string; strokeWidth: string } => ({
  stroke: `var(--${hatch})`,
  strokeWidth: width,
});

/**
 * The hatches as svg patterns, once a page, near the root. A hatch says which way the rocket was going when it opened:
 * rising strokes early, falling strokes late, level strokes lean, dots low, crossed strokes on the ground.
 */
export function Hatches(): ReactNode {
  return (
    <svg id={HATCHES} className="hatches" width={0} height={0} aria-hidden="true">
      <defs>
        <Pattern hatch="early" size={5} turn={45}>
          <line x1={2.5} y1={0} x2={2.5} y2={5} style={stroke("early")} />
        </Pattern>
        <Pattern hatch="late" size={5} turn={-45}>
          <line x1={2.5} y1={0} x2={2.5} y2={5} style={stroke("late")} />
        </Pattern>
        <Pattern hatch="lean" size={5} turn={0}>
          <line x1={0} y1={2.5} x2={5} y2={2.5} style={stroke("lean")} />
        </Pattern>
        <Pattern hatch="low" size={5} turn={0}>
          <circle cx={2.5} cy={2.5} r={1.3} style={{ fill: "var(--low)" }} />
        </Pattern>
        <Pattern hatch="grounded" size={6} turn={45}>
          <line x1={3} y1={0} x2={3} y2={6} style={stroke("grounded", "1.2px")} />
          <line x1={0} y1={3} x2={6} y2={3} style={stroke("grounded", "1.2px")} />
        </Pattern>
      </defs>
    </svg>
  );
}
