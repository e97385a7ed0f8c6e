import { type ReactNode, useState } from "react";
import { Input, Label, TextField } from "react-aria-components";
import { ConfirmDialog } from "../parts/index.js";

export interface AskReasonProps {
  readonly isOpen: boolean;
  readonly title: string;
  readonly act: string;
  /** What the reason is asked for: "Why". */
  readonly label: string;
  /** It cannot be done without one. */
  readonly isRequired?: boolean;
  readonly onAct: (reason: string) => void;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** Asks before something is taken back, and why. */
export function AskReason({ isOpen, title, act, label, isRequired = false, onAct, onClose, children }: AskReasonProps) {
  const [reason, setReason] = useState("");
  const close = (): void => {
    setReason("");
    onClose();
  };
  return (
    <ConfirmDialog
      isOpen={isOpen}
      title={title}
      act={act}
      isDisabled={isRequired && reason.trim() === ""}
      onAct={() => onAct(reason.trim())}
      onClose={close}
    >
      {children}
      <TextField className="field wide" value={reason} onChange={setReason} isRequired={isRequired} autoComplete="off">
        <Label>{label}</Label>
        <Input className="field-control" />
      </TextField>
    </ConfirmDialog>
  );
}
