import { useState } from "react";
import { Button } from "react-aria-components";
import { ConfirmDialog } from "../parts/index.js";
import { wipe } from "../store/index.js";

interface WipeActProps {
  /** How many documents there are. */
  readonly count: number;
  /** When everything was last exported, in words. */
  readonly exported: string;
}

/** Deletes every document, after asking. */
export function WipeAct({ count, exported }: WipeActProps) {
  const [asks, setAsks] = useState(false);
  return (
    <>
      <Button className="act" onPress={() => setAsks(true)}>
        Delete everything
      </Button>
      <ConfirmDialog
        isOpen={asks}
        title="Delete everything?"
        act={count === 1 ? "Delete the document" : `Delete all ${count} documents`}
        back="Keep them"
        onAct={() => void wipe()}
        onClose={() => setAsks(false)}
      >
        <p>Every plan, rocket, motor, tool and field on this device goes, and the readings of every cut with them.</p>
        <p>{exported} Undo brings everything back until this page is closed; after that only an export does.</p>
      </ConfirmDialog>
    </>
  );
}
