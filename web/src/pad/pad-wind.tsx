import type { Raw, UnitSystem } from "@delaywright/documents";
import type { ReactNode } from "react";
import { Button } from "react-aria-components";
import type { Told, WindowAnswer } from "../compute/index.js";
import { WindGauge } from "../pictures/wind-gauge.js";
import { shownWind } from "../standing/shown-wind.js";
import { readNow, readWords, type WeatherAge, wantsReading } from "../standing/weather-age.js";
import { windDoubt } from "../standing/wind-doubt.js";
import { type Entry, setField } from "../store/index.js";
import { edgeNote, edgeOf, pastEdgeWords } from "./pad-words.js";
import { steppedWind, turnedWind } from "./wind-step.js";

interface PadWindProps {
  readonly told: Told;
  /** Odds in other winds. */
  readonly winds: WindowAnswer;
  readonly age: WeatherAge | null;
  readonly plan: Entry;
  readonly units: UnitSystem;
}

/** A reading of the wind, made now. */
export function writeWind({ path, raw }: Entry, fields: Readonly<Record<string, string>>): void {
  for (const [field, value] of Object.entries({ ...fields, ...readNow(raw ?? {}, new Date()) }))
    setField(path, field, value, "wind at the pad");
}

/** The wind against the edge, and its reading on steppers. */
export function PadWind({ told, winds, age, plan, units }: PadWindProps) {
  const weather = (plan.raw?.["weather"] as Raw | undefined) ?? {};
  const { wind } = told.facts;
  const edge = edgeOf(winds.window, told.data.given.guide.tilt);
  const stale = wantsReading(age);
  const note = edgeNote(told, winds);
  if (weather["aloft"] !== undefined)
    return <p className="pad-aloft">The plan has winds at several heights. Change them in the plan.</p>;
  const step = (way: 1 | -1) => () => {
    const from = weather["windFrom"] === undefined ? { "weather.windFrom": "0 deg" } : {};
    writeWind(plan, { ...from, "weather.wind": steppedWind(weather["wind"], way, units) });
  };
  const turn = (way: 1 | -1) => () => writeWind(plan, { "weather.windFrom": turnedWind(weather["windFrom"], way) });
  return (
    <>
      <div className="pad-gauge">
        {edge !== null && (
          <>
            <WindGauge
              now={wind.speed}
              doubt={windDoubt(plan.raw, wind.speed)}
              edge={edge.wind}
              max={Math.max(8, ...(winds.window?.winds ?? []))}
              units={units}
              stale={stale ? (age === null ? "not read" : readWords(age)) : null}
            />
            <p className="pad-edge">{pastEdgeWords(edge, told.data.limits, units)}</p>
          </>
        )}
        {note !== "" && <p className={edge === null ? "pad-no-edge" : ""}>{note}</p>}
      </div>
      <Stepper label="Wind" less="Less wind" more="More wind" onLess={step(-1)} onMore={step(1)}>
        <b className={stale ? "old" : ""}>
          {weather["wind"] === undefined ? "calm" : shownWind(String(weather["wind"]), units)}
        </b>
        {age === null ? "no time of the reading" : `read ${readWords(age)}`}
      </Stepper>
      <Stepper
        label="Where the wind comes from"
        less="Turn it back by 15 degrees"
        more="Turn it on by 15 degrees"
        onLess={turn(-1)}
        onMore={turn(1)}
        round
      >
        <span>from</span>
        <b>{String(weather["windFrom"] ?? "–")}</b>
      </Stepper>
    </>
  );
}

interface StepperProps {
  readonly label: string;
  readonly less: string;
  readonly more: string;
  readonly onLess: () => void;
  readonly onMore: () => void;
  /** Turns instead of adding. */
  readonly round?: boolean;
  readonly children: ReactNode;
}

function Stepper({ label, less, more, onLess, onMore, round = false, children }: StepperProps) {
  return (
    <fieldset className={round ? "pad-stepper pad-turn" : "pad-stepper"} aria-label={label}>
      <Button aria-label={less} onPress={onLess}>
        {round ? "↺" : "−"}
      </Button>
      <output>{children}</output>
      <Button aria-label={more} onPress={onMore}>
        {round ? "↻" : "+"}
      </Button>
    </fieldset>
  );
}
