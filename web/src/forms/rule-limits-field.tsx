import "./rule-limits.css";
import { issueSentence, rulesOfClubs, ruleWords } from "@delaywright/documents";
import { Button, Label, Select } from "react-aria-components";
import { ChoiceControl, ChoiceList } from "../parts/choice-list.js";
import { fieldId } from "../parts/field-id.js";
import { isKeyed, joinField, type Keyed, valueAt } from "../parts/field-path.js";
import { Alternatives } from "../parts/index.js";
import { useNotes } from "../parts/scope.js";
import { setField, useEntry, useSettings } from "../store/index.js";
import { LimitField } from "./limit-field.js";

export interface RuleLimitsFieldProps {
  readonly path: string;
  readonly base: string;
}

/** The rules that a club sets or turns off, each with what it was before. */
export function RuleLimitsField({ path, base }: RuleLimitsFieldProps) {
  const entry = useEntry(path);
  const [{ units }] = useSettings();
  const at = joinField(base, "limits");
  const limits = valueAt(entry?.raw, at);
  const own: Keyed = isKeyed(limits) ? limits : {};
  const free = rulesOfClubs(units).filter(({ id }) => !Object.hasOwn(own, id));
  const add = (id: string): void => {
    const words = ruleWords(id);
    setField(path, joinField(at, id), words?.sense === "" ? "off" : {}, `rule added: ${words?.name ?? id}`);
  };
  return (
    <fieldset className="rows rule-limits" id={fieldId(path, at)} tabIndex={-1}>
      <legend className="field-label">Rules that are otherwise here</legend>
      <ol className="rows-list">
        {Object.entries(own).map(([id, change]) => (
          <RuleRow key={id} path={path} at={joinField(at, id)} id={id} change={change} />
        ))}
      </ol>
      <Select
        className="field wide"
        value={null}
        onChange={(key) => key !== null && add(String(key))}
        placeholder="choose a rule"
        isDisabled={free.length === 0}
      >
        <Label>Set or turn off another rule</Label>
        <ChoiceControl />
        <ChoiceList items={free.map(({ id, name, source }) => ({ id, word: name, note: source }))} />
      </Select>
    </fieldset>
  );
}

interface RuleRowProps {
  readonly path: string;
  /** Where the rule stands in the document. */
  readonly at: string;
  readonly id: string;
  readonly change: unknown;
}

const LIMITS = "limits";
const OFF = "off";

function RuleRow({ path, at, id, change }: RuleRowProps) {
  const [{ units }] = useSettings();
  const { issues } = useNotes(path);
  const words = ruleWords(id, units);
  const name = words?.name ?? id;
  const write = (next: unknown, label: string): void => setField(path, at, next, `${name}: ${label}`);
  return (
    <li id={fieldId(path, at)} tabIndex={-1}>
      <div className="rows-row-head">
        <span>{name}</span>
        <span className="rows-row-acts">
          <Button className="act" aria-label={`Remove ${name}`} onPress={() => write(undefined, "as it was")}>
            Remove
          </Button>
        </span>
      </div>
      {words !== null && <p className="field-notes">{asItWas(words)}</p>}
      {issues
        .filter((issue) => issue.path === at)
        .map((issue) => (
          <p key={issue.code} className="field-error">
            {issueSentence({ ...issue, path: "" })}
          </p>
        ))}
      {words === null || words.sense === "" ? (
        <p className="rule-off">
          {change === OFF ? "Turned off." : "No number decides it: it can only be turned off."}
        </p>
      ) : (
        <>
          <Alternatives
            label={`${name} is`}
            items={[
              { id: LIMITS, label: "set" },
              { id: OFF, label: "turned off" },
            ]}
            chosen={change === OFF ? OFF : LIMITS}
            onChoose={(way) => write(way === OFF ? OFF : {}, way === OFF ? "turned off" : "set")}
          />
          {change !== OFF && (
            <>
              <LimitField path={path} at={at} which="look" label={`Look past ${words.sense}`} rule={words} />
              <LimitField path={path} at={at} which="stop" label={`Stop past ${words.sense}`} rule={words} />
            </>
          )}
        </>
      )}
    </li>
  );
}

/** A rule as it is without the club: its limits and where they are from. */
function asItWas({ sense, look, stop, source }: NonNullable<ReturnType<typeof ruleWords>>): string {
  const limits = [look && `look past ${sense} ${look}`, stop && `stop past ${sense} ${stop}`]
    .filter(Boolean)
    .join(", ");
  return limits === "" ? `From ${source}.` : `Else ${limits}; from ${source}.`;
}
