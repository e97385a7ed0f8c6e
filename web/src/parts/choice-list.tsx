import "./choice.css";
import type { ReactNode } from "react";
import { Button, ListBox, ListBoxItem, Popover, SelectValue } from "react-aria-components";

/** One word of several. */
export interface Choosable {
  readonly id: string;
  readonly word: string;
  /** Quietly beside it. */
  readonly note?: string;
}

/** What is chosen, and where the list is opened: inside a `Select`. */
export function ChoiceControl({ id }: { readonly id?: string }): ReactNode {
  return (
    <Button className="choice-control" {...(id === undefined ? {} : { id })}>
      <SelectValue />
      <span className="choice-mark" aria-hidden="true" />
    </Button>
  );
}

/** The words to choose from: inside a `Select`. */
export function ChoiceList({ items }: { readonly items: readonly Choosable[] }): ReactNode {
  return (
    <Popover className="choice-list" offset={2}>
      <ListBox items={items}>
        {({ word, note }) => (
          <ListBoxItem
            className={note === undefined ? "choice-item" : "choice-item noted"}
            textValue={note === undefined ? word : `${word}, ${note}`}
          >
            {word}
            {note !== undefined && <small>{note}</small>}
          </ListBoxItem>
        )}
      </ListBox>
    </Popover>
  );
}
