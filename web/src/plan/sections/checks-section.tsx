import {
  checkCounts,
  checkLine,
  type DecisionData,
  lookOutSentences,
  notCheckedSentence,
  type UnitSystem,
} from "@delaywright/documents";
import type { Check } from "@delaywright/engine";
import { Fold, More, Section, Verdict, type VerdictWord, WithSource } from "../../parts/index.js";
import { Caution } from "./caution.js";
import type { SectionProps } from "./section-props.js";

/** What says stop or look, what was not checked and why, all rules on demand, and what the models were not held against. */
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
  const weighty = data.checks.filter(({ verdict }) => verdict === "stop" || verdict === "look");
  const others = data.checks.filter((check) => !weighty.includes(check));
  const { pass } = checkCounts(data.checks);
  const notChecked = notCheckedSentence(data.checks);
  return (
    <>
      {weighty.length > 0 && <CheckTable checks={weighty} units={units} />}
      <p className="sheet-line">
        {weighty.length === 0 ? "No rule says stop or look. " : ""}
        {`${pass} within.`}
      </p>
      {notChecked !== null && <p className="sheet-line">{notChecked}</p>}
      {others.length > 0 && (
        <More title="Every other rule" aside={String(others.length)}>
          <CheckTable checks={others} units={units} />
        </More>
      )}
      <LookOut data={data} units={units} />
    </>
  );
}

function CheckTable({ checks, units }: { readonly checks: readonly Check[]; readonly units: UnitSystem }) {
  return (
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
          <CheckRow key={check.id} check={check} units={units} />
        ))}
      </tbody>
    </table>
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
