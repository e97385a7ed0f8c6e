import type { ReactNode } from "react";
import { labelEnds, labelsThatFit, type MiddleLabel, wholeSeconds } from "./delay-axis.js";
import { hundredths, percent, SPACE, secondsFigure } from "./figures.js";
import { Hills, HillsInFront } from "./odds-hills.js";
import { type DelayModel, near, type OddsPlace } from "./odds-model.js";
import { textWidth } from "./place-labels.js";
import { isFigure, type Scale, scaleOf, within } from "./scale.js";
import { StackedBar, slicesOf } from "./stacked-bar.js";

/** Depth of a notch [px]. */
const NOTCH = 9;

/** Odds by delay: a ruler's edge with a notch and a stack for each setting, behind them the time to the top. */
export function OddsPanel({ model, place }: { model: DelayModel; place: OddsPlace }): ReactNode {
  const { data, left, right, small, places, grow } = model;
  const y = scaleOf(0, 1, place.base, place.top);
  const least = within(data.limits.leastClean, 0, 1);
  const state = data.state === "settled" ? undefined : `odds-${data.state}`;
  return (
    <g className={state}>
      <Hills model={model} place={place} />
      {[0, 0.5, 1].map(
        (share) =>
          Math.abs(y(share) - y(least)) > 11 && (
            <text key={share} className="tick" x={left - 8} y={y(share) + 4} textAnchor="end">
              {share === 0 ? `0${SPACE}%` : `${share * 100}`}
            </text>
          ),
      )}
      <line className="thin dash" x1={left} y1={y(least)} x2={right} y2={y(least)} />
      <text className="value" x={left - 8} y={y(least) + 4} textAnchor="end">
        {Math.round(least * 100)}
      </text>
      {!small && places.every(({ mid }) => mid > left + 20 * grow) && (
        <text className="tick" x={left - 8} y={place.top - 12} textAnchor="end">
          clean
        </text>
      )}
      <Pins model={model} y={y} base={place.base} />
      <Edge model={model} base={place.base} />
      <Bars model={model} y={y} place={place} />
      <HillsInFront model={model} place={place} />
      <Slices model={model} place={place} />
      {!small && leastWordFits(model) && (
        <text className="tick halo" x={left + 3} y={y(least) - 5}>
          least
        </text>
      )}
    </g>
  );
}

function leastWordFits({ places, left, grow }: DelayModel): boolean {
  const end = left + 3 + textWidth("least", 12 * grow);
  return places.every(({ mid, bar }) => mid - bar / 2 > end);
}

/** What the tool cannot make: thin pins at their clean odds. */
function Pins({ model, y, base }: { model: DelayModel; y: Scale; base: number }): ReactNode {
  const { data, x, left, right, settings, places, gone } = model;
  const most = data.cutSoFar === null ? Number.POSITIVE_INFINITY : Math.max(0, ...settings.map(({ delay }) => delay));
  const taken = [
    ...places.map(({ mid, notch }) => [mid - notch / 2 - 3, mid + notch / 2 + 3] as const),
    ...gone.map((delay) => [x(delay) - 12, x(delay) + 12] as const),
  ];
  let last = Number.NEGATIVE_INFINITY;
  return (data.curve ?? []).map(({ delay, odds }) => {
    const at = x(delay);
    const free = at > left + 2 && at < right - 2 && delay < most && taken.every(([from, to]) => at < from || at > to);
    if (!isFigure(delay) || !isFigure(odds.clean) || !free || at - last < 12) return null;
    last = at;
    return (
      <g key={delay}>
        <line className="ghost" x1={at} y1={base} x2={at} y2={y(odds.clean)} />
        <circle className="ghost-dot" cx={at} cy={y(odds.clean)} r={2} />
      </g>
    );
  });
}

/** The ruler's edge, with a notch for each setting and for each that is gone. */
function Edge({ model, base }: { model: DelayModel; base: number }): ReactNode {
  const { places, gone, x, left, right, small } = model;
  const wide = small ? 28 : 34;
  const notches = [
    ...places.map(({ mid, notch }) => ({ mid, notch })),
    ...gone.map((d) => ({ mid: x(d), notch: wide })),
  ];
  const path = notches
    .sort((a, b) => a.mid - b.mid)
    .map(({ mid, notch }) => `H${round(mid - notch / 2)}v${NOTCH}h${round(notch)}v-${NOTCH}`)
    .join("");
  return <path className="edge" d={`M${round(left)} ${base}${path}H${round(right)}`} />;
}

const round = (value: number): number => Math.round(value * 100) / 100;

function Bars({ model, y, place }: { model: DelayModel; y: Scale; place: OddsPlace }): ReactNode {
  const { settings, places, chosen, data, grow, gone, x, small } = model;
  const { top, base } = place;
  const oddsLabels = (sign: boolean): readonly MiddleLabel[] =>
    settings.map(({ odds: { clean } }, i) => ({
      mid: places[i]?.mid ?? 0,
      words: i === chosen || sign ? percent(clean) : hundredths(clean),
      size: (i === chosen ? 22 : 13) * grow,
      strong: true,
    }));
  const signed = labelsThatFit(oddsLabels(true), chosen, 4 * grow).every(Boolean);
  const odds = oddsLabels(signed);
  const delays: MiddleLabel[] = settings.map(({ delay }, i) => ({
    mid: places[i]?.mid ?? 0,
    words: secondsFigure(delay),
    size: 18 * grow,
    strong: i === chosen,
  }));
  const oddsWritten = labelsThatFit(odds, chosen, signed ? 4 * grow : 2);
  const delaysWritten = labelsThatFit(delays, chosen, 5 * grow);
  const mine = places[chosen];
  const solid =
    data.cutSoFar !== null && near(settings[chosen]?.delay ?? -1, Math.max(...settings.map((s) => s.delay)));
  const written = delays.filter((_, i) => delaysWritten[i]).map(labelEnds);
  const lost = small ? 24 : 30;
  return (
    <>
      {settings.map((setting, i) => {
        const { mid, bar } = places[i] ?? { mid: 0, bar: 2 };
        const { clean, error } = setting.odds;
        return (
          <g key={setting.delay}>
            <StackedBar odds={setting.odds} mid={mid} bar={bar} top={top} base={base} strong={i === chosen} />
            {data.state === "settling" && error > 0 && (
              <line
                className="whisker"
                x1={mid}
                x2={mid}
                y1={y(within(clean + error, 0, 1))}
                y2={y(within(clean - error, 0, 1))}
              />
            )}
            {oddsWritten[i] && (
              <text className={i === chosen ? "big" : "value"} x={mid} y={top - 12} textAnchor="middle">
                {odds[i]?.words}
              </text>
            )}
            {delaysWritten[i] && (
              <text
                className={i === chosen ? "setting mine" : "setting"}
                x={mid}
                y={base + 27 * grow}
                textAnchor="middle"
              >
                {delays[i]?.words}
              </text>
            )}
          </g>
        );
      })}
      {mine && (data.next || solid) && (
        <rect
          className={data.next ? "next" : "solid"}
          x={mine.mid - mine.notch / 2}
          y={base}
          width={mine.notch}
          height={NOTCH}
        />
      )}
      {gone.map((delay) => (
        <rect key={delay} className="lost" x={x(delay) - lost / 2} y={top} width={lost} height={base - top} />
      ))}
      <GoneWords model={model} place={place} taken={written} />
      <Seconds model={model} base={base} taken={written} />
    </>
  );
}

type Ends = readonly [number, number];
const clear = ([from, to]: Ends, taken: readonly Ends[]): boolean => taken.every(([a, b]) => to < a || from > b);

/** "gone" over what a deeper cut took away, its delay below. */
function GoneWords(props: { model: DelayModel; place: OddsPlace; taken: readonly Ends[] }): ReactNode {
  const { model, place, taken } = props;
  const { gone, x, grow, places, chosen } = model;
  const big = places[chosen];
  const words: MiddleLabel[] = gone.map((delay) => ({ mid: x(delay), words: "gone", size: 12 * grow }));
  const figures: MiddleLabel[] = gone.map((delay) => ({ mid: x(delay), words: secondsFigure(delay), size: 12 * grow }));
  const above = labelsThatFit(words, -1, 4);
  const below = labelsThatFit(figures, -1, 4);
  const bigEnds: readonly Ends[] = big ? [[big.mid - 34 * grow, big.mid + 34 * grow]] : [];
  return words.map((word, i) => (
    <g key={word.mid}>
      {above[i] && clear(labelEnds(word), bigEnds) && (
        <text className="odds-gone" x={word.mid} y={place.top - 12} textAnchor="middle">
          gone
        </text>
      )}
      {below[i] && clear(labelEnds(word), taken) && (
        <text className="tick" x={word.mid} y={place.base + 26 * grow} textAnchor="middle">
          {figures[i]?.words}
        </text>
      )}
    </g>
  ));
}

/** Whole seconds between the notches. */
function Seconds({ model, base, taken }: { model: DelayModel; base: number; taken: readonly Ends[] }): ReactNode {
  const { x, grow, places, gone, settings } = model;
  const marks = [...places.map(({ mid, notch }) => [mid - notch / 2, mid + notch / 2] as const)];
  const others = gone.map((delay): Ends => [x(delay) - 15 * grow, x(delay) + 15 * grow]);
  const ticks = wholeSeconds(x, 22 * grow);
  const crowded = settings.length > 12;
  return ticks.map((at) => {
    const mid = x(at);
    const label: MiddleLabel = { mid, words: `${at}`, size: 12 * grow };
    const [from, to] = labelEnds(label);
    if (crowded || !clear([mid - 2, mid + 2], [...marks, ...others])) return null;
    return (
      <g key={at}>
        <line className="axis" x1={mid} y1={base} x2={mid} y2={base + 5} />
        {clear([from - 9, to + 9], [...taken, ...others]) && (
          <text className="tick" x={mid} y={base + 26 * grow} textAnchor="middle">
            {label.words}
          </text>
        )}
      </g>
    );
  });
}

/** What the slices of the chosen setting are, beside its stack where there is room. */
function Slices({ model, place }: { model: DelayModel; place: OddsPlace }): ReactNode {
  const { settings, places, chosen, grow, small, right } = model;
  const mine = places[chosen];
  const setting = settings[chosen];
  if (!mine || !setting || small) return null;
  const lines = [...slicesOf(setting.odds)]
    .reverse()
    .filter(({ hatch, share }) => hatch !== "clean" && share >= 0.005)
    .map(({ words, share }) => `${words} ${hundredths(share)}`);
  const start = mine.mid + mine.bar / 2 + 13 * grow;
  const end = start + Math.max(0, ...lines.map((line) => textWidth(line, 12 * grow)));
  const next = Math.min(right, ...places.slice(chosen + 1).map(({ mid, bar }) => mid - Math.max(bar / 2, 19 * grow)));
  if (end > next) return null;
  return lines.map((line, i) => (
    <text key={line} className="tick halo" x={start} y={place.top - 3 + i * 13.5 * grow}>
      {line}
    </text>
  ));
}
