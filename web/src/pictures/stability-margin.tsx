import { calibresWords } from "@delaywright/documents";
import type { ReactNode } from "react";
import { type Drawing, Picture, type PictureRoom } from "./picture.js";
import { Axes, END, frameOf, LimitLine, lineIn } from "./stability-frame.js";
import { HollowLine, type StabilityPictureProps } from "./stability-swing.js";
import "./stability.css";

/** Static margin over Mach number, with the motor loaded and empty, and as it is flown. */
export function StabilityMargin(props: StabilityPictureProps): ReactNode {
  return (
    <Picture
      name="margin"
      title="Static margin over Mach number"
      description={sentences(props)}
      draw={(room) => drawMargin(props, room)}
      foot={
        <ul className="stability-legend">
          {lines.map(([look, words]) => (
            <li key={look}>
              <svg width={26} height={10} aria-hidden="true">
                {look === "swing-quick" ? <HollowLine d="M1 5H25" /> : <path d="M1 5H25" className={look} />}
              </svg>
              {words}
            </li>
          ))}
        </ul>
      }
    />
  );
}

const lines = [
  ["median", "motor loaded"],
  ["margin-empty", "motor empty"],
  ["swing-quick", "as it is flown"],
] as const;

function sentences({ data: { overMach } }: StabilityPictureProps): string {
  const { mach, loaded, empty } = overMach;
  const last = mach.length - 1;
  const said = (i: number): string =>
    `at Mach ${(mach[i] ?? 0).toFixed(2)} ${calibresWords(loaded[i] ?? 0)} with the motor loaded, ${calibresWords(empty[i] ?? 0)} with it empty`;
  return last < 0 ? "There is no margin to draw." : `Static margin ${said(0)}; ${said(last)}.`;
}

function drawMargin({ data, state }: StabilityPictureProps, { width, grow }: PictureRoom): Drawing {
  const { overMach, stability } = data;
  const { mach, loaded, empty } = overMach;
  const { columns, limits } = stability;
  const all = [...loaded, ...empty, ...columns.margin];
  const top = 24 * grow;
  const frame = frameOf(
    { left: 34 * grow, right: width - END * grow, top, base: top + (width < 430 ? 120 : 150), grow },
    [0, mach.at(-1) ?? 1],
    [Math.min(0, ...all), Math.max(limits.mostMargin * 1.25, 1.1 * Math.max(0, ...all))],
  );
  const marks = (
    <g className={`stability-${state}`}>
      <HollowLine d={lineIn(frame, columns.mach, columns.margin)} />
      <path d={lineIn(frame, mach, loaded)} className="median" />
      <path d={lineIn(frame, mach, empty)} className="margin-empty" />
      <LimitLine frame={frame} at={limits.mostMargin} words={`over-stable above ${limits.mostMargin}`} />
      <Axes frame={frame} up="static margin, calibres" across="Mach number" />
    </g>
  );
  return { height: frame.base + 40 * grow, marks };
}
