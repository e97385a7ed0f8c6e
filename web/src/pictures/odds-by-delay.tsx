import type { ReactNode } from "react";
import { cutPieces } from "./cut-words.js";
import { labelsThatFit, type MiddleLabel } from "./delay-axis.js";
import { secondsFigure, secondsWords } from "./figures.js";
import { GrainMark } from "./grain-icon.js";
import { type DelayModel, type DelayPictureData, delayModel, wholeDelay } from "./odds-model.js";
import { OddsPanel } from "./odds-panel.js";
import { oddsDescription, oddsTable, speedDescription } from "./odds-words.js";
import { type Drawing, Picture } from "./picture.js";
import { textWidth } from "./place-labels.js";
import { within } from "./scale.js";
import { SpeedPanel, speedHeight } from "./speed-panel.js";
import "./odds-by-delay.css";

export interface OddsByDelayProps extends DelayPictureData {
  /** The opening speed below, on the same axis. */
  readonly withSpeed?: boolean;
  /** Adds the figures as a hidden table: where no table stands beside the picture. */
  readonly withTable?: boolean;
  /** Stands under the picture: the legend of the hatches. */
  readonly foot?: ReactNode;
}

/**
 * Odds by delay: across, seconds after burnout; a notch for each setting with its outcomes stacked on it; behind them the
 * time to the top and when the charge fires; below, how each is cut and, where asked for, the opening speed.
 *
 * @example
 * <OddsByDelay settings={told.data.settings} curve={null} density={told.density} coast={told.data.coast} … />
 */
export function OddsByDelay({ withSpeed = false, withTable = false, foot, ...data }: OddsByDelayProps): ReactNode {
  const words = delayModel(data, 800, 1);
  return (
    <Picture
      name="odds-by-delay"
      title={withSpeed ? "Odds and opening speed by delay" : "Odds by delay"}
      description={`${oddsDescription(words)}${withSpeed ? ` ${speedDescription(words)}` : ""}`}
      table={withTable ? oddsTable(words, data.units) : undefined}
      foot={foot}
      firstWidth={784}
      draw={({ width, grow, id }) => {
        const model = delayModel(data, width, grow);
        const above = drawOdds(model);
        if (!withSpeed) return above;
        return {
          height: above.height + speedHeight(model),
          marks: (
            <>
              {above.marks}
              <SpeedPanel model={model} from={above.height} id={id} />
            </>
          ),
        };
      }}
    />
  );
}

/** The picture of the odds in the room that its model has. */
function drawOdds(model: DelayModel): Drawing {
  const { small, grow, data, settings } = model;
  const top = (small ? 40 : 46) * grow;
  const base = top + (small ? 150 : 190);
  const made = base + (small ? 62 : 66) * grow;
  const cuts = data.cutSoFar === null && settings.some(({ removed }) => removed > 0);
  const height = cuts ? made + 30 + (small ? 20 : 8) * grow : made + (data.cutSoFar === null ? -8 : 14) * grow;
  return {
    height,
    marks: (
      <>
        <OddsPanel model={model} place={{ top, base }} />
        <Way model={model} y={base + 46 * grow} />
        {cuts && <Grains model={model} y={made - (small ? 6 : 2)} />}
        {data.cutSoFar !== null && settings.length > 0 && <AsRead model={model} y={made + 6 * grow} />}
      </>
    ),
  };
}

/** What the axis is, and that a cut only goes one way. */
function Way({ model, y }: { model: DelayModel; y: number }): ReactNode {
  const { small, left, right, grow, data, settings } = model;
  const clock = data.clock?.from === "ignition" ? "ignition" : "burnout";
  const axis = small ? `s after ${clock}` : `seconds after ${clock}`;
  const way = small ? "a cut only goes left" : "a cut only goes this way";
  const [tip, tail] = [right - (small ? 60 : 100), right - 4];
  const fits = left + textWidth(axis, 12 * grow) + 16 < tip - 8 - textWidth(way, 12 * grow);
  const cuts = settings.some(({ removed }) => removed > 0);
  return (
    <>
      <text className="tick" x={left} y={y}>
        {axis}
      </text>
      {cuts && (
        <>
          <line className="axis" x1={tail} y1={y - 4} x2={tip} y2={y - 4} />
          <path className="solid" d={`M${tip - 1} ${y - 4}l7 -4v8z`} />
          {fits && (
            <text className="tick" x={tip - 8} y={y} textAnchor="end">
              {way}
            </text>
          )}
        </>
      )}
    </>
  );
}

/** What a reading has told: what lies to the right of it is gone. */
function AsRead({ model, y }: { model: DelayModel; y: number }): ReactNode {
  const { settings, left, gone, small } = model;
  const now = Math.max(...settings.map(({ delay }) => delay));
  const gonePart =
    gone.length === 0 ? "" : small ? "what lies to the right is gone" : "What lies to the right cannot come back.";
  return (
    <text className="tick" x={left} y={y}>
      {small && gonePart ? gonePart : `As read it has ${secondsWords(now)}. ${gonePart}`.trim()}
    </text>
  );
}

/** How each setting is made: the grain cut to scale under its notch, with words where they fit. */
function Grains({ model, y }: { model: DelayModel; y: number }): ReactNode {
  const { settings, places, chosen, grow, small, data, width: room } = model;
  const whole = wholeDelay(settings);
  const [width, height] = [small ? 9 : 12, small ? 27 : 36];
  const size = 12 * grow;
  const how = settings.map((setting) => cutPieces(setting, data.units));
  const out = settings.map(({ delay, removed }) =>
    removed > 0 ? `${secondsFigure(removed)} s out` : `${secondsFigure(delay)} s, whole`,
  );
  const least = Math.min(...places.map(({ gap }) => gap));
  const longest = Math.max(0, ...[...how, ...out].map((words, i) => textWidth(words, size, i === chosen)));
  const beside = !small && least > longest + width + 20;
  const below: MiddleLabel[] = how.map((words, i) => ({
    mid: places[i]?.mid ?? 0,
    words: words.replace(/^end /, ""),
    size,
    strong: i === chosen,
  }));
  const written = labelsThatFit(below, chosen, 6);
  const icons = labelsThatFit(
    below.map((label) => ({ ...label, words: "00" })),
    chosen,
    4,
  );
  const half = (longest + width + 8) / 2;
  return settings.map((setting, i) => {
    const mid = places[i]?.mid ?? 0;
    if (!icons[i]) return null;
    const x = beside ? within(mid - half, 0, room - 2 * half) : mid - width / 2;
    const kind = i === chosen ? "tick mine" : "tick";
    return (
      <g key={setting.delay}>
        <GrainMark removed={setting.removed / whole} width={width} height={height} x={x} y={y} />
        {beside && (
          <>
            <text className={kind} x={x + width + 8} y={y + 13 * grow}>
              {how[i]}
            </text>
            <text className="tick" x={x + width + 8} y={y + 28 * grow}>
              {out[i]}
            </text>
          </>
        )}
        {!beside && written[i] && (
          <text
            className={kind}
            x={within(
              mid,
              textWidth(below[i]?.words ?? "", size, true) / 2,
              room - textWidth(below[i]?.words ?? "", size, true) / 2,
            )}
            y={y + height + 15 * grow}
            textAnchor="middle"
          >
            {below[i]?.words}
          </text>
        )}
      </g>
    );
  });
}
