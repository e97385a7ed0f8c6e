import { checkLine, type DecisionData, lookOutSentences, type UnitSystem } from "@delaywright/documents";
import type { Check } from "@delaywright/engine";
import { Fold, Section, Verdict, type VerdictWord, WithSource } from "../../parts/index.js";
import { Caution } from "./caution.js";
import type { SectionProps } from "./section-props.js";

const weights: Readonly<Record<Check["verdict"], number>> = Object.freeze({ stop: 0, look: 1, pass: 2 });

/** Every rule that was looked at, the weighty ones first, and what the models were not held against. */
export function ChecksSection({ answer, state, units }: SectionProps) {
  const { told } = answer;
  return (
    <Fold id={state.id} title={state.title} aside={state.aside} mark={state.mark}>
      {told === null ? <p>The checks need an answer first.</p> : <Checked data={told.data} units={units} />}
      <p className="sheet-line">Computed figures, not leave to fly.</p>
      <Caution topics={["authority"]} />
    </Fold>
  );
}

function Checked({ data, units }: { readonly data: DecisionData; readonly units: UnitSystem }) {
  const checks = [...data.checks].sort((a, b) => weights[a.verdict] - weights[b.verdict]);
  return (
    <>
      <table className="sheet-checks">
        <thead>
          <tr>
            <th scope="col">rule</th>
            <th scope="col" className="n">
              value
            </th>
            <th scope="col" className="n">
              limit
            </th>
            <th scope="col" className="v">
              verdict
            </th>
          </tr>
        </thead>
        <tbody>
          {checks.map((check) => (
            <CheckRow key={check.code} check={check} units={units} />
          ))}
        </tbody>
      </table>
      <LookOut data={data} units={units} />
    </>
  );
}

function CheckRow({ check, units }: { readonly check: Check; readonly units: UnitSystem }) {
  const { name, value, limit, verdict, word, meaning, source } = checkLine(check, units);
  return (
    <tr className={verdict}>
      <th scope="row">
        {name}
        {meaning !== "" && <small>{meaning}</small>}
      </th>
      <td className="n">{value}</td>
      <td className="n">
        <WithSource source={<p>{source}</p>} of={`the limit of ${name}`}>
          {limit === "" ? "source" : limit}
        </WithSource>
        <small className="print-only">{source}</small>
      </td>
      <td className="v">
        <Verdict word={word as VerdictWord} />
      </td>
    </tr>
  );
}

/** What the models were not held against, and what is unlikely in the documents. */
function LookOut({ data, units }: { readonly data: DecisionData; readonly units: UnitSystem }) {
  const { warnings, unlikely } = lookOutSentences(data, units);
  if (warnings.length + unlikely.length === 0) return null;
  return (
    <Section title="What the figures were not held against" part>
      <ul className="sheet-lines">
        {[...warnings, ...unlikely].map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </Section>
  );
}
