import type { ReactNode } from "react";
import { labelsThatFit, type MiddleLabel } from "./delay-axis.js";
import { amount, secondsFigure, secondsWords, shownUnit } from "./figures.js";
import { hatchFill } from "./hatches.js";
import type { DelayModel } from "./odds-model.js";
import { textWidth } from "./place-labels.js";
import { Plate } from "./plate.js";
import { bandPath, isFigure, linePath, type Point, type Scale, scaleOf, ticksOf, within } from "./scale.js";

/** The scale ends here, as a multiple of the limit, however fast openings get. */
const MOST = 3.5;

/** Heights inside the panel [px]. */
function heights({ small, grow }: DelayModel): {
  readonly upper: number;
  readonly lower: number;
  readonly all: number;
} {
  const upper = (small ? 56 : 76) * grow;
  const lower = upper + (small ? 134 : 176);
  return { upper, lower, all: lower + 18 * grow + 8 };
}

/** How high the panel of the opening speed is [px]. */
export function speedHeight(model: DelayModel): number {
  return heights(model).all;
}

/** Speed to height in the panel, by the settings alone: it stays as it is when the curve comes. */
function speedScale({ data, settings }: DelayModel, upper: number, lower: number): Scale {
  const { openingSpeed: limit } = data.limits;
  const fastest = Math.max(0, ...settings.map(({ openingSpeed: { p95 } }) => p95).filter(isFigure));
  const bound = isFigure(limit) && limit > 0 ? limit : fastest;
  return scaleOf(0, Math.min(MOST * bound, Math.max(1.6 * bound, 1.15 * fastest)), lower, upper);
}

/**
 * Opening speed over the delay: median line, 5-95 % band, above the limit in the early hatch left of the top and in the
 * late one right of it; each setting's median and 95 % on its line.
 */
export function SpeedPanel(props: {
  readonly model: DelayModel;
  /** Upper edge of the panel [px]. */
  readonly from: number;
  readonly id: (part: string) => string;
}): ReactNode {
  const { model, from, id } = props;
  const { data, left, right, grow, small } = model;
  const place = heights(model);
  const [upper, lower] = [from + place.upper, from + place.lower];
  const v = speedScale(model, upper, lower);
  const { unit, perSi } = shownUnit("speed", data.units);
  const limit = data.limits.openingSpeed;
  const limitWords = `limit ${amount(limit, "speed", data.units, 0)}`;
  const limitLeft = figureReaches(model, right - textWidth(limitWords, 13 * grow, true) - 6);
  return (
    <g className={data.state === "settled" ? undefined : `odds-${data.state}`}>
      <text className="tick" x={left} y={from + (small ? 26 : 34) * grow}>
        {`opening speed, ${unit}`}
      </text>
      <TopRange model={model} upper={upper} lower={lower} />
      <Bands model={model} v={v} id={id} />
      {ticksOf(0, v.to * perSi, 4).map((tick) => (
        <g key={tick}>
          <text className="tick" x={left - 8} y={v(tick / perSi) + 4} textAnchor="end">
            {tick}
          </text>
          <line className="axis" x1={left} y1={v(tick / perSi)} x2={left + 4} y2={v(tick / perSi)} />
        </g>
      ))}
      <line className="axis" x1={left} y1={lower} x2={right} y2={lower} />
      <MedianLine model={model} v={v} />
      {isFigure(limit) && <line className="limit" x1={left} y1={v(limit)} x2={right} y2={v(limit)} />}
      <Drops model={model} v={v} lower={lower} />
      {isFigure(limit) && (
        <text
          className="limit-word halo"
          x={limitLeft ? left + 4 : right}
          y={v(limit) + 15 * grow}
          textAnchor={limitLeft ? "start" : "end"}
        >
          {limitWords}
        </text>
      )}
    </g>
  );
}

/** Whether the figures at the chosen setting reach as far to the right as the words on the limit want to begin. */
function figureReaches({ places, chosen, settings, grow, left, top }: DelayModel, from: number): boolean {
  const mine = places[chosen];
  const delay = settings[chosen]?.delay ?? 0;
  if (!mine || (top && delay > top.p50 + 1)) return mine !== undefined && mine.mid + 14 > from;
  const end = mine.mid + 12 + textWidth("000.0", 13 * grow, true);
  return end > from && mine.mid > left + 100 * grow;
}

/** The range of the top behind all, with its words above. */
function TopRange({ model, upper, lower }: { model: DelayModel; upper: number; lower: number }): ReactNode {
  const { top, x, small, grow, left, right } = model;
  if (!top) return null;
  const sky = upper + (small ? 34 : 26) * grow;
  const lines = small
    ? [`the top: ${secondsWords(top.p50, 2)}`, `9 in 10 from ${top.p05.toFixed(2)}`, `to ${secondsWords(top.p95, 2)}`]
    : [
        `the top: half by ${secondsWords(top.p50, 2)}`,
        `9 in 10 from ${top.p05.toFixed(2)} to ${secondsWords(top.p95, 2)}`,
      ];
  const half = Math.max(...lines.map((line) => textWidth(line, 12 * grow))) / 2;
  const mid = within(x(top.p50), left + half, Math.max(left + half, right - half));
  const [from, to] = [within(x(top.p05), left, right), within(x(top.p95), left, right)];
  return (
    <>
      <rect className="veil" x={from} y={sky} width={to - from} height={Math.max(0, lower - sky)} />
      <line className="thin dash" x1={x(top.p50)} y1={sky} x2={x(top.p50)} y2={lower} />
      {lines.map((line, i) => (
        <text
          key={line}
          className="tick halo"
          x={mid}
          y={upper + (i - (small ? 1 : 0)) * 15 * grow}
          textAnchor="middle"
        >
          {line}
        </text>
      ))}
    </>
  );
}

interface BandPoint {
  readonly at: number;
  readonly p05: number;
  readonly p50: number;
  readonly p95: number;
}

/** Stretches of the curve where flights open, within the axis. */
function stretches({ data, x }: DelayModel): readonly (readonly BandPoint[])[] {
  const found: BandPoint[][] = [[]];
  const curve = [...(data.curve ?? [])].filter(({ delay }) => isFigure(delay)).sort((a, b) => a.delay - b.delay);
  for (const { delay, openingSpeed } of curve) {
    if (delay < x.from || delay > x.to) continue;
    const whole =
      openingSpeed && isFigure(openingSpeed.p05) && isFigure(openingSpeed.p50) && isFigure(openingSpeed.p95);
    if (whole) found.at(-1)?.push({ at: x(delay), ...openingSpeed });
    else if (found.at(-1)?.length) found.push([]);
  }
  return found.filter((stretch) => stretch.length > 1);
}

function Bands({ model, v, id }: { model: DelayModel; v: Scale; id: (part: string) => string }): ReactNode {
  const { top, x, left, right, data } = model;
  const cap = (speed: number): number => v(within(speed, 0, v.to));
  const limit = v(within(data.limits.openingSpeed, 0, v.to));
  const turn = top ? within(x(top.p50), left, right) : right;
  const bands = stretches(model)
    .map((stretch) =>
      bandPath(
        stretch.map(({ at, p95 }): Point => [at, cap(p95)]),
        stretch.map(({ at, p05 }): Point => [at, cap(p05)]),
      ),
    )
    .join("");
  if (!bands) return null;
  const [ceiling, floor] = [v.end, v.start];
  const clips = [
    ["early", left, turn, ceiling, limit],
    ["late", turn, right, ceiling, limit],
    ["below", left, right, limit, floor],
  ] as const;
  return (
    <>
      <defs>
        {clips.map(([part, from, to, high, low]) => (
          <clipPath key={part} id={id(part)}>
            <rect x={from} y={high} width={Math.max(0, to - from)} height={Math.max(0, low - high)} />
          </clipPath>
        ))}
      </defs>
      <path d={bands} style={{ fill: hatchFill("early") }} clipPath={`url(#${id("early")})`} />
      <path d={bands} style={{ fill: hatchFill("late") }} clipPath={`url(#${id("late")})`} />
      <path className="band-clean" d={bands} clipPath={`url(#${id("below")})`} />
    </>
  );
}

function MedianLine({ model, v }: { model: DelayModel; v: Scale }): ReactNode {
  return stretches(model).map((stretch) => (
    <path
      key={stretch[0]?.at}
      className="median"
      d={linePath(stretch.filter(({ p50 }) => p50 <= v.to).map(({ at, p50 }): Point => [at, v(p50)]))}
    />
  ));
}

/** Each setting's median and 95 % on its line; figures where there is room, the chosen one's always. */
function Drops(props: { readonly model: DelayModel; readonly v: Scale; readonly lower: number }): ReactNode {
  const { model, v, lower } = props;
  const { settings, places, chosen, grow, data, small, top } = model;
  const { perSi } = shownUnit("speed", data.units);
  const figure = (speed: number): string => (speed * perSi).toFixed(data.units === "metric" ? 1 : 0);
  const names: MiddleLabel[] = settings.map(({ delay }, i) => ({
    mid: places[i]?.mid ?? 0,
    words: secondsFigure(delay),
    size: (i === chosen ? 13 : 12) * grow,
    strong: i === chosen,
  }));
  const named = labelsThatFit(names, chosen, 5 * grow);
  const figures = labelsThatFit(
    settings.map(({ openingSpeed: { p95 } }, i) => ({
      mid: places[i]?.mid ?? 0,
      words: isFigure(p95) ? `${figure(p95)}000` : "",
      size: 12 * grow,
    })),
    chosen,
    8 * grow,
  );
  const few = Math.min(...places.map(({ gap }) => gap)) > 92 * grow && !small;
  const dense = settings.length > 12;
  return settings.map(({ delay, openingSpeed: { p50, p95 } }, i) => {
    const mid = places[i]?.mid ?? 0;
    const mine = i === chosen;
    const drawn = isFigure(p50) && isFigure(p95);
    const fast = drawn ? v(within(p95, 0, v.to)) : lower;
    const half = drawn ? v(within(p50, 0, v.to)) : lower;
    const side = top && delay > top.p50 + 1 ? -1 : 1;
    const first = few && i === 0 && !mine;
    const written = drawn && (mine || (!small && figures[i] === true && few));
    const halfWords = drawn ? `${first ? "half below " : ""}${figure(p50)}` : "";
    return (
      <g key={delay}>
        {drawn && (!dense || mine) && (
          <>
            <line className={mine ? "drop mine" : "drop"} x1={mid} y1={fast} x2={mid} y2={lower} />
            {p95 <= v.to && <line className="drop mine" x1={mid - 5} y1={fast} x2={mid + 5} y2={fast} />}
          </>
        )}
        {drawn && p50 <= v.to && (!dense || mine) && <circle className="dot" cx={mid} cy={half} r={mine ? 5 : 3.5} />}
        {written && p95 <= v.to && (
          <Plate
            x={mine ? mid + 9 : mid}
            y={mine ? fast - 3 : fast - 8}
            words={`${first ? "95 % below " : ""}${figure(p95)}`}
            strong={mine}
            anchor={mine ? "start" : "middle"}
            grow={grow}
            limit={v(data.limits.openingSpeed)}
          />
        )}
        {written && p50 <= v.to && (
          <Plate
            x={mid + side * 12}
            y={mine ? half + 18 * grow : half - 9}
            words={halfWords}
            strong={mine}
            anchor={side < 0 ? "end" : "start"}
            grow={grow}
            limit={v(data.limits.openingSpeed)}
          />
        )}
        {named[i] && (
          <text className={mine ? "value" : "tick"} x={mid} y={lower + 17 * grow} textAnchor="middle">
            {names[i]?.words}
          </text>
        )}
      </g>
    );
  });
}
