import "./dialog.css";
import type { ReactNode } from "react";
import { Button, Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";

export interface ConfirmDialogProps {
  readonly isOpen: boolean;
  readonly title: string;
  readonly children: ReactNode;
  /** What is done, as a verb: "Record the cut". */
  readonly act: string;
  /** The way back; "Back" where left out. */
  readonly back?: string;
  readonly isDisabled?: boolean;
  readonly onAct: () => void;
  readonly onClose: () => void;
}

/** Asks before something that cannot be taken back. */
export function ConfirmDialog(props: ConfirmDialogProps) {
  const { isOpen, title, children, act, back = "Back", isDisabled = false, onAct, onClose } = props;
  return (
    <ModalOverlay className="dialog-back" isOpen={isOpen} onOpenChange={(open) => !open && onClose()} isDismissable>
      <Modal className="dialog">
        <Dialog role="alertdialog">
          <Heading slot="title">{title}</Heading>
          <div className="dialog-body">{children}</div>
          <div className="dialog-acts">
            <Button
              className="act dialog-act"
              isDisabled={isDisabled}
              onPress={() => {
                onAct();
                onClose();
              }}
            >
              {act}
            </Button>
            <Button className="act" autoFocus onPress={onClose}>
              {back}
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
