import { Section } from "../parts/index.js";
import { TrendDelays } from "../pictures/trend-delays.js";
import { TrendFactors } from "../pictures/trend-factors.js";
import { delaysOf, factorsOf, grouped, type PastFlight } from "./trends.js";

/** Of each motor type: its delay as flown over its delay as set, and the factor on its impulse. */
export function MotorTrends({ past }: { readonly past: readonly PastFlight[] }) {
  const told = grouped(past, "motor").flatMap(([name, flights]) => {
    const [delays, factors] = [delaysOf(flights), factorsOf(flights, "impulse")];
    return delays.length + factors.length === 0 ? [] : [{ name, delays, factors }];
  });
  if (told.length === 0) return null;
  return (
    <Section title="By motor type" aside="strokes hold 9 in 10; one that runs on to the edge is a bound">
      {told.map(({ name, delays, factors }) => (
        <div key={name}>
          <h3>{name}</h3>
          <div className="trends">
            {delays.length > 0 && (
              <TrendDelays name="delays" title={`Delays of ${name}, flown over set`} delays={delays} />
            )}
            {factors.length > 0 && (
              <TrendFactors
                name="impulse"
                title={`Impulse of ${name} over its flights`}
                of="factor on impulse"
                factors={factors}
              />
            )}
          </div>
        </div>
      ))}
    </Section>
  );
}
