import "../parts/choice.css";
import { Button, Label, ListBox, ListBoxItem, Popover, Select, SelectValue } from "react-aria-components";

export interface ChoiceProps {
  readonly label: string;
  /** The label is there for who does not see what it stands beside. */
  readonly hiddenLabel?: boolean;
  readonly items: readonly { readonly id: string; readonly word: string }[];
  readonly chosen: string | null;
  readonly placeholder?: string;
  readonly onChoose: (id: string) => void;
}

/** One of several words, kept nowhere by itself. */
export function Choice({ label, hiddenLabel = false, items, chosen, placeholder = "choose", onChoose }: ChoiceProps) {
  return (
    <Select
      className={`field debrief-choice${hiddenLabel ? " alone" : ""}`}
      value={chosen}
      onChange={(key) => key !== null && onChoose(String(key))}
      placeholder={placeholder}
    >
      <Label className={hiddenLabel ? "hidden" : ""}>{label}</Label>
      <Button className="choice-control">
        <SelectValue />
        <span className="choice-mark" aria-hidden="true" />
      </Button>
      <Popover className="choice-list" offset={2}>
        <ListBox items={items}>
          {(item) => (
            <ListBoxItem className="choice-item" textValue={item.word}>
              {item.word}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
}
