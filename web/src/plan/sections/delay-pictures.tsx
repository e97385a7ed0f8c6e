import { climbSentence, coastSentence, type DecisionData, stabilitySentence } from "@delaywright/documents";
import { useWindow } from "../../compute/index.js";
import { Section } from "../../parts/index.js";
import { Drivers } from "../../pictures/drivers.js";
import { heightProps } from "../../pictures/from-answer.js";
import { HeightOverTime } from "../../pictures/height-over-time.js";
import { WeatherWindow } from "../../pictures/weather-window.js";
import { windDoubt } from "../../standing/wind-doubt.js";
import { pictureState, type SectionProps } from "./section-props.js";

/** The pictures behind the delay: the flight, what the weather may do, what drives the spread. */
export function DelayPictures(props: SectionProps) {
  const { told } = props.answer;
  if (told === null) return null;
  const { data } = told;
  return (
    <div className="sheet-wide">
      <div>
        <Height {...props} />
        <p className="quiet">{climbSentence(data.flight)}</p>
        <p className="quiet">{coastSentence(data)}</p>
        <p className="quiet">{stabilitySentence(data)}</p>
      </div>
      <div>
        {data.settings.length > 0 && <Window {...props} />}
        {data.drivers.length > 0 && (
          <Section title="What drives the spread" aside="of the time of opening" part>
            <Drivers drivers={data.drivers} state={pictureState(props)} />
            <p className="quiet">{spreadWords(data)}</p>
          </Section>
        )}
      </div>
    </div>
  );
}

function Height(props: SectionProps) {
  const { told, pictures } = props.answer;
  return (
    <Section title="Height over time" aside="bands hold 50 % and 90 % of flights" part>
      {told !== null && pictures !== null ? (
        <HeightOverTime {...heightProps(told, pictures)} units={props.units} state={pictureState(props)} />
      ) : (
        <p className="quiet sheet-picture-room">The picture follows the figures.</p>
      )}
    </Section>
  );
}

function Window(props: SectionProps) {
  const { answer, documents, units } = props;
  const { told, progress } = answer;
  const { window, state, failure } = useWindow(documents.plan.path, progress === null && told !== null);
  if (told === null) return null;
  const { wind, zones } = told.facts;
  return (
    <Section title="Weather window" aside={`clean openings of 100`} part>
      {window === null ? (
        <p className="quiet sheet-picture-room">{failure ?? (state === "waiting" ? "Flying other winds." : "")}</p>
      ) : (
        <WeatherWindow
          window={window}
          limits={told.facts.limits}
          today={{
            wind: wind.speed,
            doubt: windDoubt(documents.plan.raw, wind.speed),
            tilt: told.data.given.guide.tilt,
          }}
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
