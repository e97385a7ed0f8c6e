import { checkLine, missingFacts, type UnitSystem } from "@delaywright/documents";
import type { Check } from "@delaywright/engine";
import { Verdict, type VerdictWord, WithSource } from "../../parts/index.js";
import type { PlanDocuments } from "../../standing/plan-documents.js";
import { FactLinks } from "./to-field.js";

interface CheckTableProps {
  readonly checks: readonly Check[];
  readonly documents: PlanDocuments;
  readonly units: UnitSystem;
}

/** Rules with what was found, the limit and where it comes from. */
export function CheckTable({ checks, ...props }: CheckTableProps) {
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
          <CheckRow key={check.id} check={check} {...props} />
        ))}
      </tbody>
    </table>
  );
}

function CheckRow({ check, documents, units }: Omit<CheckTableProps, "checks"> & { readonly check: Check }) {
  const { name, value, limit, verdict, word, meaning, source } = checkLine(check, units);
  const unknown = verdict === "not-checked" ? missingFacts([check]) : [];
  return (
    <tr className={verdict}>
      <th scope="row">
        {name}
        {unknown.length > 0 ? (
          <small>
            Not known: <FactLinks facts={unknown} documents={documents} />.
          </small>
        ) : (
          meaning !== "" && <small>{meaning}</small>
        )}
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
