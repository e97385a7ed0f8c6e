import {
  climbSentence,
  coastSentence,
  type DecisionData,
  delayWords,
  type Raw,
  stabilitySentence,
} from "@delaywright/documents";
import { memo, useMemo } from "react";
import { type Told, useWindow } from "../../compute/index.js";
import { Section, useNarrow } from "../../parts/index.js";
import { Drivers } from "../../pictures/drivers.js";
import { heightProps } from "../../pictures/from-answer.js";
import { HeightOverTime } from "../../pictures/height-over-time.js";
import { WeatherWindow, type WeatherWindowProps } from "../../pictures/weather-window.js";
import { windDoubt } from "../../standing/wind-doubt.js";
import { flightState, pictureState, type SectionProps } from "./section-props.js";

/** Elements that hold the pictures on a wide page. */
export const heightPlace = "delay-height";
export const weatherPlace = "delay-weather";

/** The flight: how high, when, and where it opens. */
export function HeightPart(props: SectionProps) {
  const { answer, units } = props;
  const { told, pictures } = answer;
  const narrow = useNarrow();
  if (told === null) return null;
  return (
    <Section
      id={heightPlace}
      title={narrow ? "Height over time" : "Delay: height over time"}
      aside="bands hold 50 % and 90 % of flights"
      part
    >
      {pictures === null ? (
        <p className="quiet sheet-picture-room">The picture follows the figures.</p>
      ) : (
        <HeightOverTime {...heightProps(told, pictures)} units={units} state={flightState(props)} />
      )}
      <div className="sheet-lines quiet">
        <p>{climbSentence(told.data.flight, units)}</p>
        <p>{coastSentence(told.data, units)}</p>
        <p>{stabilitySentence(told.data, units)}</p>
      </div>
    </Section>
  );
}

/** What the weather may do, and what drives the spread. */
export function WeatherAndDrivers(props: SectionProps) {
  const { told } = props.answer;
  const narrow = useNarrow();
  if (told === null) return null;
  const { data } = told;
  return (
    <div className="sheet-wide" id={weatherPlace}>
      {data.settings.length > 0 && <Window {...props} />}
      {data.drivers.length > 0 && (
        <Section
          title={narrow ? "What drives the spread" : "Delay: what drives the spread"}
          aside="of the time of opening"
          part
        >
          <Drivers drivers={data.drivers} state={pictureState(props)} />
          <p className="quiet">{spreadWords(data)}</p>
        </Section>
      )}
    </div>
  );
}

/** Drawn again only with what it shows. */
const WindowPicture = memo(WeatherWindow);

function todayOf(told: Told | null, plan: Raw | null): WeatherWindowProps["today"] {
  if (told === null) return null;
  const { speed } = told.facts.wind;
  return { wind: speed, doubt: windDoubt(plan, speed), tilt: told.data.given.guide.tilt };
}

function Window(props: SectionProps) {
  const { answer, documents, units } = props;
  const { told, settling } = answer;
  const narrow = useNarrow();
  const { window, state, failure } = useWindow(documents.plan.path, !settling && told !== null);
  const { raw } = documents.plan;
  const today = useMemo(() => todayOf(told, raw), [told, raw]);
  if (told === null) return null;
  const { wind, zones } = told.facts;
  const at = window === null ? "" : `, ${delayWords(window.delay)}`;
  return (
    <Section title={narrow ? "Weather window" : "Delay: weather window"} aside={`clean openings of 100${at}`} part>
      {window === null ? (
        <p className="quiet sheet-picture-room">{failure ?? (state === "waiting" ? "Flying other winds." : "")}</p>
      ) : (
        <WindowPicture
          window={window}
          limits={told.facts.limits}
          today={today}
          windHeight={wind.height}
          units={units}
        />
      )}
      {zones === null && window !== null && (
        <p className="quiet">No field is chosen: every lean is shown as if it were allowed.</p>
      )}
    </Section>
  );
}

function spreadWords({ coast, draws }: DecisionData): string {
  return draws === 1
    ? "One flight, without spread."
    : `9 in 10 flights coast ${coast.p05.toFixed(1)} to ${coast.p95.toFixed(1)}\u202fs; the delay's own scatter is in the bars.`;
}
