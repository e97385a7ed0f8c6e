import "./chrome.css";
import { useState } from "react";
import {
  Button,
  Dialog,
  FieldError,
  Form,
  Heading,
  Input,
  Label,
  Modal,
  ModalOverlay,
  TextField,
} from "react-aria-components";

interface NameDialogProps {
  readonly isOpen: boolean;
  readonly title: string;
  readonly name: string;
  readonly onName: (name: string) => void;
  readonly onClose: () => void;
}

/** Asks for another name. */
export function NameDialog({ isOpen, title, name, onName, onClose }: NameDialogProps) {
  return (
    <ModalOverlay className="dialog-back" isOpen={isOpen} onOpenChange={(open) => !open && onClose()} isDismissable>
      <Modal className="dialog">
        <Dialog>
          <Heading slot="title">{title}</Heading>
          <NameForm name={name} onName={onName} onClose={onClose} />
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function NameForm({ name, onName, onClose }: Pick<NameDialogProps, "name" | "onName" | "onClose">) {
  const [typed, setTyped] = useState(name);
  return (
    <Form
      onSubmit={(event) => {
        event.preventDefault();
        onName(typed.trim());
        onClose();
      }}
    >
      <TextField
        className="name-field"
        value={typed}
        onChange={setTyped}
        isRequired
        autoFocus
        autoComplete="off"
        maxLength={200}
        validate={(text) => (text.trim() === "" ? "A name has at least one letter." : null)}
      >
        <Label>Name</Label>
        <Input className="field-control" />
        <FieldError className="field-error" />
      </TextField>
      <div className="dialog-acts">
        <Button type="submit" className="act dialog-act">
          Keep this name
        </Button>
        <Button className="act" onPress={onClose}>
          Back
        </Button>
      </div>
    </Form>
  );
}
