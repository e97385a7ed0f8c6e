import { Section } from "../parts/index.js";
import { TrendFactors } from "../pictures/trend-factors.js";
import { factorsOf, grouped, type PastFlight } from "./trends.js";

/** Of each rocket: the factor on its drag, flight by flight. */
export function RocketTrends({ past }: { readonly past: readonly PastFlight[] }) {
  const told = grouped(past, "rocket").flatMap(([name, flights]) => {
    const factors = factorsOf(flights, "drag");
    return factors.length === 0 ? [] : [{ name, factors }];
  });
  if (told.length === 0) return null;
  return (
    <Section title="By rocket" aside="its drag, against what is reckoned; strokes hold 9 in 10">
      <div className="trends">
        {told.map(({ name, factors }) => (
          <div key={name}>
            <h3>{name}</h3>
            <TrendFactors
              name="drag"
              title={`Drag of ${name} over its flights`}
              of="factor on drag"
              factors={factors}
            />
          </div>
        ))}
      </div>
    </Section>
  );
}
