import { GLUE, refusalWords, type ShortlistData, type UnitSystem } from "@delaywright/documents";
import { Section } from "../parts/index.js";

interface RefusalsProps {
  readonly data: ShortlistData;
  readonly units: UnitSystem;
}

/** Refused motors by their reasons, with value and limit. */
export function Refusals({ data, units }: RefusalsProps) {
  const reasons = refusalWords(data, units);
  const count = data.refused.reduce((sum, { motors }) => sum + motors.length, 0);
  if (count === 0) return null;
  return (
    <Section title="Refused, by the reason" aside={`${count}${GLUE}${count === 1 ? "motor" : "motors"}`}>
      <ul className="refusals">
        {reasons.map(({ code, head, groups }) => (
          <li key={code}>
            <h3>{head}</h3>
            {groups.map(({ motors, note }) => (
              <p key={note}>
                {motors.join("; ")}
                {note !== "" && <span className="second"> ({note})</span>}
              </p>
            ))}
          </li>
        ))}
      </ul>
    </Section>
  );
}
