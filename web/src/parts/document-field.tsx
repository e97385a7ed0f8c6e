import "./document-field.css";
import { type Kind, kinds, type Raw } from "@delaywright/documents";
import { memo } from "react";
import { Button, Label, Select } from "react-aria-components";
import { addDocument, setField, useListing } from "../store/index.js";
import { blankDocument } from "./blank-document.js";
import { ChoiceControl, ChoiceList } from "./choice-list.js";
import { addressOfDocument } from "./document-address.js";
import { fieldId } from "./field-id.js";
import { FieldAside, FieldHints, FieldProblem, frameClass } from "./field-notes.js";
import { isKeyed, lastKeyOf } from "./field-path.js";
import type { FieldProps } from "./field-props.js";
import { useField } from "./use-field.js";

export interface DocumentFieldProps extends FieldProps {
  /** What is offered while nothing is chosen. */
  readonly leftOut?: string | undefined;
  /** Kinds that fit; left out: what the schema names. */
  readonly kinds?: readonly Kind[] | undefined;
  /** Words that may stand in place of a document, as they are shown; one that says what is left out is shown as that. */
  readonly words?: Readonly<Record<string, string>> | undefined;
}

const LEFT_OUT = "(left out)";
const INSIDE = "(inside)";

const kindWords: Readonly<Partial<Record<Kind, string>>> = Object.freeze({
  "motor-in-hand": "motor in hand",
  motor: "motor type",
  "rule-set": "rule set",
});

export function wordOfKind(kind: Kind): string {
  return kindWords[kind] ?? kind;
}

/** A document of the library that this one refers to. */
export const DocumentField = memo(function DocumentField(props: DocumentFieldProps) {
  const { path, field, label, aside, hint, required = false, leftOut, words = {} } = props;
  const state = useField(path, field, label);
  const entries = useListing();
  const fitting: readonly Kind[] =
    props.kinds ?? (state.kind === null ? [] : (kinds[state.kind].references[lastKeyOf(field)] ?? []));
  const { value } = state;
  const inside = isKeyed(value) ? String(value["name"] ?? "unnamed") : undefined;
  const isSilent = (word: string): boolean => leftOut !== undefined && words[word] === leftOut;
  const chosen = typeof value === "string" && !isSilent(value) ? value : undefined;
  const there = entries.find((entry) => entry.path === chosen);
  const offered = entries.filter((entry) => entry.kind !== null && fitting.includes(entry.kind));
  const optional = leftOut !== undefined || state.shape?.required === false;
  const items = [
    ...(optional ? [{ id: LEFT_OUT, word: leftOut ?? "none" }] : []),
    ...(inside === undefined ? [] : [{ id: INSIDE, word: `${inside}, inside this document` }]),
    ...Object.entries(words).flatMap(([id, word]) => (isSilent(id) ? [] : [{ id, word }])),
    ...(chosen !== undefined && !Object.hasOwn(words, chosen) && !offered.includes(there as (typeof entries)[number])
      ? [{ id: chosen, word: `${chosen}, not in the library` }]
      : []),
    ...offered.map((entry) => ({ id: entry.path, word: wordOfEntry(entry, fitting, offered) })),
  ];
  const needed = state.needed || (required && value === undefined);
  const choose = (key: string) => {
    if (key === LEFT_OUT) state.clear();
    else if (key !== INSIDE) state.send(key);
  };
  const apart = () => {
    const kind = isKeyed(value) ? (value["kind"] as Kind) : undefined;
    if (kind !== undefined) setField(path, field, addDocument(kind, value as Raw, inside), label);
  };
  const address = there?.kind == null ? undefined : addressOfDocument(there.kind, there.path);
  return (
    <Select
      className={frameClass({ ...state, needed }, "wide")}
      value={inside !== undefined ? INSIDE : (chosen ?? (optional ? LEFT_OUT : null))}
      onChange={(key) => key !== null && choose(String(key))}
      isInvalid={state.issue !== undefined}
      isRequired={needed}
      validationBehavior="aria"
      placeholder="choose"
    >
      <Label>{label}</Label>
      <ChoiceControl id={fieldId(path, field)} />
      {(aside !== undefined || needed) && <FieldAside aside={aside} needed={needed} />}
      <FieldProblem state={state} field={field} />
      <FieldHints hint={hint} doubts={state.doubts} />
      <div className="document-field-acts">
        {address !== undefined && (
          <a className="act" href={address}>
            Open {there?.name}
          </a>
        )}
        {inside !== undefined && (
          <Button slot={null} className="act" onPress={apart}>
            Put it into the library
          </Button>
        )}
        {fitting.map((kind) => (
          <Button
            key={kind}
            slot={null}
            className="act"
            onPress={() => state.send(addDocument(kind, blankDocument(kind)))}
          >
            New {wordOfKind(kind)}
          </Button>
        ))}
      </div>
      <ChoiceList items={items} />
    </Select>
  );
});

/** Its name, with what else it takes to tell it from the others. */
function wordOfEntry(
  entry: ReturnType<typeof useListing>[number],
  fitting: readonly Kind[],
  offered: readonly ReturnType<typeof useListing>[number][],
): string {
  const twin = offered.some((each) => each !== entry && each.name === entry.name);
  const more = [fitting.length > 1 && entry.kind !== null ? wordOfKind(entry.kind) : "", twin ? entry.path : ""];
  const words = more.filter((each) => each !== "").join(", ");
  return words === "" ? entry.name : `${entry.name} (${words})`;
}
