import type { SettingData } from "@delaywright/documents";
import type { ReactNode } from "react";
import type { Told } from "../compute/told.js";
import { delayScale, labelsThatFit, type MiddleLabel, notchPlaces, type TopRange, topHill } from "./delay-axis.js";
import { percent, secondsFigure, secondsWords } from "./figures.js";
import { near } from "./odds-model.js";
import { Picture } from "./picture.js";
import { textWidth } from "./place-labels.js";
import { hillPath, isFigure, type Point, scaleOf, within } from "./scale.js";
import { StackedBar } from "./stacked-bar.js";

export interface ThumbnailProps {
  /** Empty before there is an answer: the ruler alone. */
  readonly settings: readonly Pick<SettingData, "delay" | "odds">[];
  /** Least odds of a clean opening, 0…1. */
  readonly least: number;
  /** The delay that stands first [s]. */
  readonly chosen: number | null;
  readonly density?: Told["density"];
  readonly coast?: TopRange | null;
  /** Faded: the reading of the wind is old. */
  readonly stale?: boolean;
}

/** Heights [px]. */
const TOP = 6;
const BASE = 74;

/** One plan as its notches, for a card on the bench. */
export function Thumbnail(props: ThumbnailProps): ReactNode {
  const { least, chosen, density = null, coast = null, stale = false } = props;
  const settings = props.settings.filter(({ delay }) => isFigure(delay)).sort((a, b) => a.delay - b.delay);
  const description =
    settings.length === 0
      ? "No odds yet."
      : `Clean: ${settings.map(({ delay, odds }) => `${secondsWords(delay)} ${percent(odds.clean)}`).join(", ")}.`;
  return (
    <Picture
      name="thumbnail"
      title="Odds by delay"
      description={description}
      saves={false}
      firstWidth={296}
      draw={({ width, grow }) => {
        const x = delayScale({ settings, coast }, 4, Math.max(5, width - 4));
        const places = notchPlaces(
          settings.map(({ delay }) => delay),
          x,
          14,
        );
        const y = scaleOf(0, 1, BASE, TOP);
        const mine = settings.findIndex(({ delay }) => chosen !== null && near(delay, chosen));
        const labels: MiddleLabel[] = settings.map(({ delay }, i) => ({
          mid: places[i]?.mid ?? 0,
          words: secondsFigure(delay),
          size: (i === mine ? 13 : 12) * grow,
          strong: i === mine,
        }));
        const written = labelsThatFit(labels, mine, 5);
        const hill = topHill(density, 0);
        const highest = Math.max(0, ...hill.map(([, value]) => value));
        const points = hill
          .map(([at, value]): Point => [x(at), BASE - (value / (highest || 1)) * 60])
          .filter(([at]) => at >= 0 && at <= width);
        const notches = places.map(({ mid, notch }) => `H${mid - notch / 2}v6h${notch}v-6`).join("");
        const axis = "s after burnout";
        const axisFrom = width - textWidth(axis, 12 * grow);
        const axisFits = labels.every(
          ({ mid, words, size }, i) => !written[i] || mid + textWidth(words, size, true) / 2 < axisFrom - 8,
        );
        return {
          height: BASE + 25 * grow,
          marks: (
            <g className={stale ? "odds-stale" : undefined}>
              {highest > 0 && <path className="veil" d={hillPath(points, BASE)} />}
              <line className="thin dash" x1={0} x2={width} y1={y(within(least, 0, 1))} y2={y(within(least, 0, 1))} />
              <path className="edge" d={`M0 ${BASE}${notches}H${width}`} />
              {settings.map((setting, i) => (
                <g key={setting.delay}>
                  <StackedBar
                    odds={setting.odds}
                    mid={places[i]?.mid ?? 0}
                    bar={places[i]?.bar ?? 2}
                    top={TOP}
                    base={BASE}
                    strong={i === mine}
                  />
                  {written[i] && (
                    <text
                      className={i === mine ? "value" : "tick"}
                      x={labels[i]?.mid}
                      y={BASE + 21 * grow}
                      textAnchor="middle"
                    >
                      {labels[i]?.words}
                    </text>
                  )}
                </g>
              ))}
              {axisFits && (
                <text className="tick" x={width} y={BASE + 21 * grow} textAnchor="end">
                  {axis}
                </text>
              )}
            </g>
          ),
        };
      }}
    />
  );
}
