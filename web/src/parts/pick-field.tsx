import { Label, Select } from "react-aria-components";
import { ChoiceControl, ChoiceList, type Choosable } from "./choice-list.js";
import { FieldAside } from "./field-notes.js";

export interface PickFieldProps {
  readonly label: string;
  /** The label is there for who does not see what it stands beside. */
  readonly hiddenLabel?: boolean;
  readonly items: readonly Choosable[];
  /** Null: none yet. */
  readonly chosen: string | null;
  readonly placeholder?: string;
  readonly aside?: string | undefined;
  /** Of its frame; left out: as wide as there is room. */
  readonly frame?: string;
  readonly onChoose: (id: string) => void;
}

/** One of several, in no document. */
export function PickField(props: PickFieldProps) {
  const { label, hiddenLabel = false, items, chosen, placeholder = "choose", aside, frame = "wide", onChoose } = props;
  return (
    <Select
      className={`field ${frame}`}
      value={chosen}
      onChange={(key) => key !== null && onChoose(String(key))}
      placeholder={placeholder}
    >
      <Label className={hiddenLabel ? "hidden" : ""}>{label}</Label>
      <ChoiceControl />
      {aside !== undefined && <FieldAside aside={aside} needed={false} />}
      <ChoiceList items={items} />
    </Select>
  );
}
