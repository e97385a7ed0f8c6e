import {
  checkCounts,
  type DecisionData,
  lookOutSentences,
  missingFacts,
  notCheckedSentence,
  type UnitSystem,
} from "@delaywright/documents";
import { PlanRulesForm } from "../../forms/index.js";
import { Fold, IssueList, More, Section } from "../../parts/index.js";
import type { PlanDocuments } from "../../standing/plan-documents.js";
import { Caution } from "./caution.js";
import { CheckTable } from "./check-table.js";
import type { SectionProps } from "./section-props.js";
import { ToField } from "./to-field.js";

/** What says stop or look, what was not checked and why, all rules on demand, and what the models were not held against. */
export function ChecksSection({ documents, answer, state, units }: SectionProps) {
  const { told, issues } = answer;
  const { ruleSet, plan } = documents;
  return (
    <Fold id={state.id} title={state.title} aside={state.aside} mark={state.mark}>
      <PlanRulesForm path={plan.path} issues={issues} />
      {ruleSet !== null && ruleSet.path !== plan.path && (
        <IssueList issues={issues.filter(({ file }) => file === ruleSet.path)} label="What is wrong in the rule set" />
      )}
      {told === null ? (
        <p>The checks need an answer first.</p>
      ) : (
        <Checked data={told.data} documents={documents} units={units} />
      )}
      <p className="sheet-line">Computed figures, not leave to fly.</p>
      <Caution topics={["authority"]} />
    </Fold>
  );
}

interface CheckedProps {
  readonly data: DecisionData;
  readonly documents: PlanDocuments;
  readonly units: UnitSystem;
}

function Checked({ data, documents, units }: CheckedProps) {
  const { checks } = data;
  const weighty = checks.filter(({ verdict }) => verdict === "stop" || verdict === "look");
  const others = checks.filter((check) => !weighty.includes(check));
  const { pass } = checkCounts(checks);
  return (
    <>
      {weighty.length > 0 && <CheckTable checks={weighty} documents={documents} units={units} />}
      <p className="sheet-line">
        {weighty.length === 0 ? "No rule says stop or look. " : ""}
        {`${pass} within.`}
      </p>
      <NotChecked data={data} documents={documents} />
      {others.length > 0 && (
        <More title="Every other rule" aside={String(others.length)}>
          <CheckTable checks={others} documents={documents} units={units} />
        </More>
      )}
      <LookOut data={data} units={units} />
    </>
  );
}

/** How many rules were not checked, and each fact that is missing, leading to where it is said. */
function NotChecked({ data: { checks }, documents }: Omit<CheckedProps, "units">) {
  const sentence = notCheckedSentence(checks);
  const facts = missingFacts(checks).filter(({ fields }) => fields.length > 0);
  if (sentence === null) return null;
  return (
    <>
      <p className="sheet-line">{sentence}</p>
      {facts.length > 0 && (
        <More title="Say what is not known" aside={String(facts.length)}>
          <ul className="sheet-gaps">
            {facts.map(({ name, words, fields }) => (
              <li key={name}>
                <ToField named={fields} documents={documents}>
                  {words}
                </ToField>
              </li>
            ))}
          </ul>
        </More>
      )}
    </>
  );
}

/** What the models were not held against, and what is unlikely in the documents. */
function LookOut({ data, units }: Pick<CheckedProps, "data" | "units">) {
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
