import type { SteadinessData, SwingData } from "@delaywright/documents";
import type { ReactNode } from "react";
import { type Frame, lineIn } from "./stability-frame.js";
import "./stability.css";

/** What the pictures of a rocket's steadiness are drawn from. */
export interface StabilityPictureProps {
  readonly data: SteadinessData;
  readonly state: "settling" | "settled" | "stale";
}

const DEGREES = 180 / Math.PI;

/** Least and most that an axis of angles reaches to [deg]. */
const LEAST = 1;
const MOST = 45;

/** The last moments before the top are slow: their angles would dwarf all others [s]. */
const BEFORE_TOP = 1.5;

/** The largest angle of all three flights within a stretch of time [deg], with room above it. */
export function angleSpan(data: SteadinessData, from: number, to: number): readonly [number, number] {
  const top = data.rigid.top?.time ?? to;
  const end = to >= top ? Math.max(from, top - BEFORE_TOP) : to;
  let most = 0;
  for (const { time, angleOfAttack } of flownOf(data))
    time.forEach((at, i) => {
      if (at >= from && at <= end) most = Math.max(most, (angleOfAttack[i] ?? 0) * DEGREES);
    });
  return [0, Math.min(MOST, Math.max(LEAST, most * 1.15))];
}

/** The flights that are drawn: without wind both rigid ones are the same. */
function flownOf({ quick, rigid, rough, calm }: SteadinessData): readonly SwingData[] {
  return calm ? [quick, rigid] : [quick, rigid, rough];
}

/** A hollow line: others can run inside it and both are seen. */
export function HollowLine({ d }: { readonly d: string }): ReactNode {
  return (
    <>
      <path d={d} className="swing-quick" />
      <path d={d} className="swing-quick-core" />
    </>
  );
}

/** Angles of attack of all three flights in a panel: a hollow line, a dashed one, a dark one on top. */
export function SwingLines(props: {
  readonly data: SteadinessData;
  readonly frame: Frame;
  /** Id of the clip path, that no other panel has. */
  readonly clip: string;
}): ReactNode {
  const { data, frame, clip } = props;
  const { left, right, top, base, x } = frame;
  const path = ({ time, angleOfAttack }: SwingData): string => {
    const rows = time.flatMap((at, i) => (at >= x.from && at <= x.to ? [i] : []));
    // a row beyond each end, so that the line reaches the edges
    const [first, last] = [Math.max(0, (rows[0] ?? 0) - 1), (rows.at(-1) ?? -1) + 2];
    return lineIn(
      frame,
      time.slice(first, last),
      angleOfAttack.slice(first, last).map((angle) => angle * DEGREES),
    );
  };
  return (
    <>
      <defs>
        <clipPath id={clip}>
          <rect x={left} y={top} width={Math.max(0, right - left)} height={Math.max(0, base - top + 2)} />
        </clipPath>
      </defs>
      <g clipPath={`url(#${clip})`}>
        <HollowLine d={path(data.quick)} />
        {!data.calm && <path d={path(data.rough)} className="swing-rough" />}
        <path d={path(data.rigid)} className="median" />
      </g>
    </>
  );
}

const looks = [
  ["median", "rigid, mean wind"],
  ["swing-quick", "default model"],
  ["swing-rough", "rigid, in turbulence"],
] as const;

/** What the lines are. */
export function SwingLegend({ data }: Pick<StabilityPictureProps, "data">): ReactNode {
  return (
    <ul className="stability-legend">
      {looks
        .filter(([look]) => !(data.calm && look === "swing-rough"))
        .map(([look, words]) => (
          <li key={look}>
            <svg width={26} height={10} aria-hidden="true">
              {look === "swing-quick" ? <HollowLine d="M1 5H25" /> : <path d="M1 5H25" className={look} />}
            </svg>
            {words}
            {look === "swing-rough" && `, seed ${data.seed}`}
          </li>
        ))}
    </ul>
  );
}
