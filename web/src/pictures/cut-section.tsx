import type { ReactNode } from "react";
import type { CutGeometry } from "./cut-geometry.js";
import { linePath, type Point } from "./scale.js";

/** Measures of the section in parts of which the grain is 11.1 long: only the grain, the cut and the spacers are to scale. */
export const section = {
  grain: 11.1,
  left: -22.5,
  right: 16,
  rim: -14,
  collar: 6,
  half: 9.6,
  well: 7,
  grainHalf: 4.75,
  bit: 3.2,
} as const;

/** Where the section lies in the picture. */
export interface SectionPlace {
  /** [px] */
  readonly x: (parts: number) => number;
  readonly y: (parts: number) => number;
  readonly scale: number;
  readonly width: number;
}

/** Closure, propellant, grain, tool and cut in section. */
export function CutSection(props: { cut: CutGeometry; place: SectionPlace; tool: boolean }): ReactNode {
  const { cut, place, tool } = props;
  const { x, y, scale, width } = place;
  const { grain, right, rim, half, well, grainHalf, bit } = section;
  const box = (x0: number, y0: number, x1: number, y1: number, kind: string): ReactNode => (
    <rect
      className={kind}
      x={x(x0)}
      y={y(y0)}
      width={Math.max(0, (x1 - x0) * scale)}
      height={Math.max(0, (y1 - y0) * scale)}
    />
  );
  const tear: Point[] = Array.from({ length: 13 }, (_, i) => [
    x(right - 0.3) + (i % 2 ? -4 : 0),
    y(-half + (2 * half * i) / 12),
  ]);
  const [out, planned] = [cut.out * grain, cut.planned * grain];
  const white = cut.over ? planned : cut.at * grain;
  const drawn = cut.short ? out : white;
  return (
    <>
      {box(rim, -half, grain, half, "material")}
      {box(grain, -half, right - 0.3, half, "propellant")}
      {box(rim, -well, 0, well, "void")}
      {box(0, -grainHalf, grain, grainHalf, "grain")}
      <path className="outline" d={`M${x(rim)} ${y(-half)}V${y(-well)}H${x(0)}V${y(well)}H${x(rim)}V${y(half)}`} />
      <path className="paper" d={`${linePath(tear)}L${width + 4} ${y(half) + 1}V${y(-half) - 1}Z`} />
      {tool && <Tool cut={cut} place={place} />}
      {drawn > 0 && box(0, -bit, drawn, bit, "gone")}
      {cut.over && box(planned, -bit, out, bit, "over")}
      {cut.short && (
        <rect className="cut-to-go" x={x(out)} y={y(-bit)} width={(planned - out) * scale} height={2 * bit * scale} />
      )}
      {cut.at > 0 && <path className="outline" d={`M${x(0)} ${y(-bit)}H${x(cut.at * grain)}V${y(bit)}H${x(0)}`} />}
    </>
  );
}

/** The tool: collar on the rim, spacers between them, bit down to the cut's end. */
function Tool({ cut, place }: { cut: CutGeometry; place: SectionPlace }): ReactNode {
  const { x, y } = place;
  const { grain, rim, collar, left, bit } = section;
  const ring = cut.spacer * grain;
  const [front, back, end] = [rim - ring, rim - ring - collar, cut.at * grain];
  const tail = left - ring + 0.1;
  return (
    <>
      <path
        className="tool"
        d={`M${x(tail)} ${y(-3.4)}H${x(back)}V${y(-8.4)}H${x(front)}V${y(-bit)}H${x(end)}V${y(bit)}H${x(front)}V${y(8.4)}H${x(back)}V${y(3.4)}H${x(tail)}`}
      />
      <line className="thin" x1={x(front)} y1={y(-bit)} x2={x(front)} y2={y(bit)} />
      {[-1.05, 1.05].map((at) => (
        <line key={at} className="flute" x1={x(front + 0.6)} y1={y(at)} x2={x(-1.2)} y2={y(at)} />
      ))}
      {ring > 0 &&
        [-8.4, 3.6].map((at) => (
          <rect key={at} className="ring" x={x(front)} y={y(at)} width={x(rim) - x(front)} height={y(4.8) - y(0)} />
        ))}
    </>
  );
}
