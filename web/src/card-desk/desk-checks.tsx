import { checkLine, type UnitSystem } from "@delaywright/documents";
import type { Check } from "@delaywright/engine";
import { Verdict, type VerdictWord, WithSource } from "../parts/index.js";

/** Every check that says stop or look, stops first. */
export function DeskChecks({ checks, units }: { readonly checks: readonly Check[]; readonly units: UnitSystem }) {
  const weighty = (["stop", "look"] as const).flatMap((word) => checks.filter(({ verdict }) => verdict === word));
  if (weighty.length === 0) return <p className="sheet-line">No rule says stop or look.</p>;
  return (
    <ul className="desk-checks">
      {weighty.map((check) => {
        const { id, name, value, limit, word, meaning, source } = checkLine(check, units);
        return (
          <li key={id}>
            <Verdict word={word as VerdictWord} />
            <div>
              <b>{name}</b>
              {value !== "" && `: ${value}`}
              {limit !== "" && (
                <>
                  ,{" "}
                  <WithSource source={<p>{source}</p>} of={`the limit of ${name}`}>
                    {limit}
                  </WithSource>
                </>
              )}
              {meaning !== "" && <p className="quiet">{meaning}</p>}
            </div>
          </li>
        );
      })}
    </ul>
  );
}
