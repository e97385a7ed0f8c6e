import { piecesWords } from "@delaywright/documents";
import type { ReactNode } from "react";
import {
  bothUnits,
  type CutGeometry,
  type CutPictureData,
  cutGeometry,
  depthRuler,
  secondsRuler,
  secondWords,
} from "./cut-geometry.js";
import { CutRuler } from "./cut-ruler.js";
import { CutSection, section } from "./cut-section.js";
import { amount, secondsFigure, secondsWords } from "./figures.js";
import { Picture } from "./picture.js";
import { textWidth } from "./place-labels.js";
import { within } from "./scale.js";
import "./the-cut.css";

export interface TheCutProps extends CutPictureData {
  /** How far off a cut or a reading may be, in words: "give or take 0.2 mm". */
  readonly toleranceText?: string;
}

/**
 * The cut in section, the grain to scale: tool on the rim, spacers, bit in the grain; what goes white and dashed, what stays
 * dark with its seconds; dimensions above; below, rulers of the delay that is left and of the depth. What is gone stays
 * drawn, and what is cut too deep is black.
 */
export function TheCut({ toleranceText, ...data }: TheCutProps): ReactNode {
  const cut = cutGeometry(data);
  return (
    <Picture
      name="the-cut"
      title="The cut"
      description={inWords(data, cut, toleranceText)}
      firstWidth={500}
      draw={({ width, grow }) => {
        const small = width < 430;
        const { grain, left, right, half, grainHalf, bit, rim, collar } = section;
        const ring = cut.spacer * grain;
        const scale = (width - 4) / (right - left + ring);
        const x = (parts: number): number => 2 + (parts - left + ring) * scale;
        const share = (of: number): number => x(of * grain);
        const words = headWords(data, cut);
        const size = 13 * grow;
        const tw = (text: string): number => textWidth(text, size, true);
        const asideEnd = Math.max(tw(words.aside[0]), tw(words.aside[1]));
        const outFrom = share(cut.at) - 4 - Math.max(tw(words.out[0]), tw(words.out[1]));
        const stacked = cut.at > 0 && asideEnd + 10 > outFrom;
        const head = 22 + (stacked ? 64 : 32) * grow;
        const y = (parts: number): number => head + half * scale + parts * scale;
        const foot = y(half);
        const dimension = head - 12;
        const tool = cut.at > 0 && data.tool !== null;
        const endWords = endOf(data);
        const stays = (1 - cut.at) * grain * scale;
        const stayFrom = within(share(cut.at) + 6, 0, width - Math.max(tw(words.stay[0]), tw(words.stay[1])));
        const [first, second] = [foot + 12, foot + 48 * grow];
        const exact = cut.length !== null;
        const outStart = Math.max(0, outFrom) + Math.max(tw(words.out[0]), tw(words.out[1]));
        return {
          height: foot + (exact ? 84 : 48) * grow,
          marks: (
            <>
              <CutSection cut={cut} place={{ x, y, scale, width }} tool={tool} />
              {tool && tw(endWords[0]) < collar * scale - 4 && (
                <>
                  <text className="value" x={x(rim - ring - collar / 2)} y={y(0) - 3} textAnchor="middle">
                    {endWords[0]}
                  </text>
                  <text className="tick" x={x(rim - ring - collar / 2)} y={y(0) + 13 * grow} textAnchor="middle">
                    {endWords[1]}
                  </text>
                </>
              )}
              {stays > textWidth(secondsWords(cut.left), size, true) + 4 && (
                <text
                  className={`on-grain ${stays > textWidth(secondsWords(cut.left), 22 * grow, true) + 8 ? "big" : "value"}`}
                  x={share((cut.at + 1) / 2)}
                  y={y(0) + 1}
                  textAnchor="middle"
                >
                  {secondsWords(cut.left)}
                </text>
              )}
              {stays > textWidth("is left", 12 * grow) + 8 && (
                <text className="on-grain tick" x={share((cut.at + 1) / 2)} y={y(0) + 19 * grow} textAnchor="middle">
                  {data.state === "not cut" ? "stays" : "is left"}
                </text>
              )}
              {!small && (
                <text
                  className="tick turn"
                  x={x(grain + 2.3)}
                  y={y(0) + 4}
                  textAnchor="middle"
                  transform={`rotate(-90 ${x(grain + 2.3)} ${y(0)})`}
                >
                  propellant
                </text>
              )}
              <text className="tick" x={x(-7)} y={y(-5.1) + 4} textAnchor="middle">
                well
              </text>
              {[0, cut.at, 1].map((at, i) => (
                <line
                  // biome-ignore lint/suspicious/noArrayIndexKey: three lines that keep their order
                  key={i}
                  className="thin"
                  x1={share(at)}
                  x2={share(at)}
                  y1={dimension - 5}
                  y2={i === 1 && cut.at > 0 ? y(-bit) : y(-grainHalf)}
                />
              ))}
              <line className="thin" x1={share(0)} x2={share(1)} y1={dimension} y2={dimension} />
              <Arrows from={share(0)} to={share(cut.at)} y={dimension} />
              <Arrows from={share(cut.at)} to={share(1)} y={dimension} />
              {cut.at > 0 &&
                words.out.map((line, i) => (
                  <text
                    key={line}
                    className="value"
                    x={Math.max(outStart, 0)}
                    y={dimension - (i === 0 ? 22 * grow : 8)}
                    textAnchor="end"
                  >
                    {line}
                  </text>
                ))}
              {words.stay.map((line, i) => (
                <text
                  key={line}
                  className={i === 0 ? "value" : "tick"}
                  x={stayFrom}
                  y={dimension - (i === 0 ? 22 * grow : 8)}
                >
                  {line}
                </text>
              ))}
              {words.aside.map((line, i) => (
                <text
                  key={line}
                  className={i === 0 ? "value" : "tick"}
                  x={2}
                  y={dimension - (stacked ? 32 * grow : 0) - (i === 0 ? 22 * grow : 8)}
                >
                  {line}
                </text>
              ))}
              <CutRuler
                marks={secondsRuler(cut)}
                x={share}
                y={first}
                from={foot}
                at={cut.at}
                words={secondsFigure(cut.left)}
                names={[
                  "delay left, s",
                  ...(data.element.depthPerSecond !== null && exact
                    ? [secondWords(data.element.depthPerSecond, small)]
                    : []),
                ]}
                grow={grow}
              />
              {cut.length !== null && (
                <CutRuler
                  marks={depthRuler(cut, data.units)}
                  x={share}
                  y={second}
                  from={second - 5}
                  at={cut.at}
                  words={depthFigure(cut.at * cut.length, data)}
                  names={[
                    `${small ? "depth" : "depth cut"}, ${data.units === "metric" ? "mm" : "in"}`,
                    ...(toleranceText ? [toleranceText] : []),
                  ]}
                  grow={grow}
                />
              )}
            </>
          ),
        };
      }}
    />
  );
}

/** Heads of a dimension line, where it is long enough for them. */
function Arrows({ from, to, y }: { from: number; to: number; y: number }): ReactNode {
  if (to - from < 13) return null;
  return <path className="solid" d={`M${from} ${y}l6 -2.6v5.2zM${to} ${y}l-6 -2.6v5.2z`} />;
}

function depthFigure(depth: number, { units }: CutPictureData): string {
  return amount(depth, "depth", units).replace(/\u202f?(mm|in)$/u, "");
}

/** What is written on the collar. */
function endOf({ target, tool }: CutPictureData): readonly [string, string] {
  if (tool?.kind === "stop") return ["stop", "on rim"];
  const end = target?.end ?? null;
  return [
    end === null ? "tool" : /^end\b/i.test(end) ? end : `end ${end}`,
    target && target.spacers.length > 0 ? "on ring" : "on rim",
  ];
}

interface HeadWords {
  readonly aside: readonly [string, string];
  readonly out: readonly [string, string];
  readonly stay: readonly [string, string];
}

/** The words above the section. */
function headWords(data: CutPictureData, cut: CutGeometry): HeadWords {
  const { units, state } = data;
  const depth = (share: number): string => (cut.length === null ? "" : amount(share * cut.length, "depth", units));
  const left = state === "not cut" ? "stay" : "left";
  const both = cut.length === null ? "" : bothUnits(cut.at * cut.length, units);
  return {
    aside: asideWords(data, cut, depth),
    out: [`${secondsWords(cut.longest * cut.at)} out`, state === "not cut" ? both : `${depth(cut.at)}, by the reading`],
    stay: [`${secondsWords(cut.left)} ${left}`, depth(1 - cut.at)],
  };
}

function asideWords(
  data: CutPictureData,
  cut: CutGeometry,
  depth: (share: number) => string,
): readonly [string, string] {
  const { target, tool, state } = data;
  if (cut.over) return [`over by ${depth(cut.out - cut.planned)}`, "drawn in black"];
  if (cut.short) return [`${depth(cut.planned - cut.out)} to go`, "dashed in the grain"];
  if (cut.at <= 0 || target === null) return cut.at > 0 ? ["", ""] : ["No cut", "leave it whole"];
  if (state === "cut") return ["Cut", "nothing goes back"];
  const spacers = tool?.kind === "ends" ? tool.spacers : [];
  const name = spacers.length === 1 ? (spacers[0]?.name ?? "spacer") : "spacer";
  const used = target.spacers;
  if (used.length > 0) return [`With the ${[...new Set(used)].join(" and ")}`, "between collar and rim"];
  return spacers.length > 0 ? [`No ${name}`, `lay the ${name} aside`] : ["", ""];
}

function inWords(data: CutPictureData, cut: CutGeometry, tolerance: string | undefined): string {
  const { units, target, state, reading } = data;
  const depth = (share: number): string => (cut.length === null ? "" : `${bothUnits(share * cut.length, units)}, `);
  const whole = `Delay grain in section, ${depth(1)}${secondsWords(cut.longest)} whole.`;
  const plan =
    target === null || cut.planned <= 0
      ? "It is left whole."
      : `The plan, ${piecesWords(target)}, takes out ${depth(cut.planned)}${secondsWords(cut.longest * cut.planned)}.`;
  const now =
    state === "not cut"
      ? `${secondsWords(cut.left)} stay.`
      : `${reading ? "By the reading " : ""}${depth(cut.out)}${secondsWords(cut.longest * cut.out)} are out, ${secondsWords(cut.left)} are left.`;
  const over =
    cut.over && cut.length !== null
      ? ` Cut too deep by ${amount((cut.out - cut.planned) * cut.length, "depth", units)}.`
      : "";
  return `${whole} ${plan} ${now}${over}${tolerance ? ` ${tolerance}.` : ""}`;
}
