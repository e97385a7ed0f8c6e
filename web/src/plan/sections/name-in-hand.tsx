import { useState } from "react";
import { Button, Input, Label, TextField } from "react-aria-components";
import { ConfirmDialog, focusAfterDialog } from "../../parts/index.js";
import type { PartOfPlan, PlanDocuments } from "../../standing/plan-documents.js";
import { addDocument, setField } from "../../store/index.js";

/** Makes one motor in hand of the plan's motor type: the cut belongs to it alone. */
export function NameInHand({ documents }: { readonly documents: PlanDocuments }) {
  const { motor, plan } = documents;
  const [asking, setAsking] = useState(false);
  const [label, setLabel] = useState("");
  const [lot, setLot] = useState("");
  if (motor === null) return null;
  const name = label.trim();
  return (
    <div className="sheet-box">
      <p>A cut belongs to one motor, not to its type. Name the one that you have in your hand.</p>
      <Button className="act" onPress={() => setAsking(true)}>
        Name the motor in hand
      </Button>
      <ConfirmDialog
        isOpen={asking}
        title={`One ${motor.name}`}
        act="Put it into the plan"
        isDisabled={name === ""}
        onAct={() => {
          putInHand(motor, plan.path, name, lot.trim());
          // the button that opened the dialog gives way to the depths
          focusAfterDialog(() => document.querySelector<HTMLElement>(".sheet-depth-input"));
        }}
        onClose={() => setAsking(false)}
      >
        <TextField className="field wide" value={label} onChange={setLabel} isRequired autoComplete="off">
          <Label>What you wrote on its bag</Label>
          <Input className="field-control" placeholder="Bag 4" />
        </TextField>
        <TextField className="field wide" value={lot} onChange={setLot} autoComplete="off">
          <Label>Lot, as printed</Label>
          <Input className="field-control" />
        </TextField>
      </ConfirmDialog>
    </div>
  );
}

function putInHand(motor: PartOfPlan, plan: string, label: string, lot: string): void {
  const type = motor.within === "" ? motor.path : motor.raw;
  const raw = { kind: "motor-in-hand", version: 1, name: label, type, label, ...(lot === "" ? {} : { lot }) };
  setField(plan, "motor", addDocument("motor-in-hand", raw, label), "motor in hand");
}
