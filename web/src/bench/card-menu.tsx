import { useState } from "react";
import { Button, type Key, Menu, MenuItem, MenuTrigger, Popover } from "react-aria-components";
import { go } from "../app/router.js";
import { copyOf } from "../chrome/copy.js";
import { pageHead } from "../chrome/focus-head.js";
import { NameDialog } from "../chrome/name-dialog.js";
import { exportOne } from "../exchange/export-bench.js";
import { ConfirmDialog, focusAfterDialog } from "../parts/index.js";
import { addDocument, changeDocuments, type Entry } from "../store/index.js";

interface CardMenuProps {
  readonly entry: Entry;
  readonly say: (word: string) => void;
}

/** What can be done with a plan as a whole. */
export function CardMenu({ entry, say }: CardMenuProps) {
  const { path, name, raw } = entry;
  const [asks, setAsks] = useState<"name" | "delete" | null>(null);
  const act = (key: Key): void => {
    if (key === "open") go({ page: "plan", path });
    else if (key === "pad") go({ page: "pad", path });
    else if (key === "copy" && raw !== null) {
      addDocument("plan", copyOf(raw));
      say(`${name} was duplicated.`);
    } else if (key === "export") void exportOne(path, raw !== null);
    else if (key === "name" || key === "delete") setAsks(key);
  };
  return (
    <>
      <MenuTrigger>
        <Button className="act" aria-label={`More, ${name}`}>
          More
        </Button>
        <Popover className="choice-list" placement="top end">
          <Menu aria-label={name} onAction={act} disabledKeys={raw === null ? ["open", "pad", "copy", "name"] : []}>
            <MenuItem id="open" className="choice-item">
              Open
            </MenuItem>
            <MenuItem id="pad" className="choice-item">
              Pad view
            </MenuItem>
            <MenuItem id="copy" className="choice-item">
              Duplicate
            </MenuItem>
            <MenuItem id="name" className="choice-item">
              Rename
            </MenuItem>
            <MenuItem id="export" className="choice-item">
              Export with all it refers to
            </MenuItem>
            <MenuItem id="delete" className="choice-item">
              Delete
            </MenuItem>
          </Menu>
        </Popover>
      </MenuTrigger>
      <NameDialog
        isOpen={asks === "name"}
        title="Rename the plan"
        name={name}
        onName={(typed) => raw !== null && changeDocuments(`name: ${typed}`, [{ path, raw: { ...raw, name: typed } }])}
        onClose={() => setAsks(null)}
      />
      <ConfirmDialog
        isOpen={asks === "delete"}
        title={`Delete ${name}?`}
        act="Delete the plan"
        back="Keep it"
        onAct={() => {
          changeDocuments(`deletion of ${name}`, [{ path, remove: true }]);
          say(`${name} was deleted. Undo brings it back.`);
          // the button that opened the dialog is gone with the card
          focusAfterDialog(pageHead);
        }}
        onClose={() => setAsks(null)}
      >
        <p>
          Its rocket, motor, tool and field stay in the libraries. Undo brings the plan back until this page is closed.
        </p>
      </ConfirmDialog>
    </>
  );
}
