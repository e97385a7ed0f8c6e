import type { Raw } from "@delaywright/documents";
import { type ReactNode, useState } from "react";
import { fieldId } from "../parts/field-id.js";
import { isKeyed, joinField, type Keyed, leadsTo, valueAt, withValue } from "../parts/field-path.js";
import { Alternatives, SwitchRow } from "../parts/index.js";
import { useNotes } from "../parts/scope.js";
import { changeDocuments, type Entry, entryNow, useEntryPart } from "../store/index.js";
import { branchOf, switchBranch } from "./either.js";
import type { Branch, EitherPart } from "./model.js";

/** What was typed into a branch that does not hold now; kept for the session. */
interface Kept {
  readonly values: Keyed;
  readonly drafts: Readonly<Record<string, string>>;
}
interface Session {
  picked: string | undefined;
  readonly kept: Map<string, Kept>;
}
const sessions = new Map<string, Session>();

function sessionOf(key: string): Session {
  const known = sessions.get(key);
  if (known !== undefined) return known;
  const made: Session = { picked: undefined, kept: new Map() };
  sessions.set(key, made);
  return made;
}

export interface EitherFieldProps {
  readonly path: string;
  readonly base: string;
  readonly part: EitherPart;
  readonly children: (branch: Branch) => ReactNode;
}

function wholeAt({ raw }: Pick<Entry, "raw">, at: string): Keyed {
  const found = valueAt(raw, at);
  return isKeyed(found) ? found : {};
}

/** The branch that holds; null: none does yet. */
function holding(whole: Keyed, { branches, undecided = false }: EitherPart, { picked }: Session): Branch | null {
  return branchOf(whole, branches, picked, undecided) ?? null;
}

/** Several ways of saying one thing. What was typed into one is there again when it is switched back to. */
export function EitherField({ path, base, part, children }: EitherFieldProps) {
  const { issues } = useNotes(path);
  const [, redraw] = useState(0);
  const at = joinField(base, part.at);
  const session = sessionOf(`${path} ${at} ${part.label}`);
  // what else is typed into the document is no reason to draw this anew
  const holds = useEntryPart(path, (entry) => entry && holding(wholeAt(entry, at), part, session));
  if (holds === undefined) return null;
  const branch = holds ?? undefined;

  const choose = (id: string) => {
    const entry = entryNow(path);
    const to = part.branches.find((each) => each.id === id);
    if (entry === undefined || to === undefined || to === branch) return;
    const whole = wholeAt(entry, at);
    const earlier = session.kept.get(id);
    const made = switchBranch(whole, branch, to, earlier?.values);
    const own = (branch?.keys ?? []).map((key) => joinField(at, key));
    const drafts = Object.entries(entry.drafts);
    const gone = ([field]: readonly [string, string]) => own.some((key) => leadsTo(key, field));
    if (branch !== undefined)
      session.kept.set(branch.id, { values: made.aside, drafts: Object.fromEntries(drafts.filter(gone)) });
    session.picked = id;
    changeDocuments(`${part.label}: ${to.label}`, [
      {
        path,
        raw: withValue(entry.raw ?? {}, at, made.whole) as Raw,
        drafts: { ...Object.fromEntries(drafts.filter((draft) => !gone(draft))), ...earlier?.drafts },
      },
    ]);
    redraw((count) => count + 1);
  };

  const keys = part.branches.flatMap((each) => [...each.keys, ...Object.keys(each.start ?? {})]);
  const fields = [at, ...keys.map((key) => joinField(at, key))]
    .filter((field) => field !== "")
    .map((field) => fieldId(path, field));
  return (
    <>
      {part.turn ? (
        <SwitchRow
          label={part.label}
          hint={part.hint}
          on={branch === part.branches[1]}
          onTurn={(on) => choose(part.branches[on ? 1 : 0]?.id ?? "")}
        />
      ) : (
        <div data-fields={fields.join(" ")} tabIndex={-1}>
          <Alternatives
            label={part.label}
            items={part.branches}
            chosen={branch?.id ?? null}
            onChoose={choose}
            needed={branch === undefined && issues.some((issue) => at !== "" && leadsTo(at, issue.path))}
          />
          {part.hint !== undefined && <p className="field-notes">{part.hint}</p>}
        </div>
      )}
      {branch !== undefined && children(branch)}
    </>
  );
}
