import "./dialog.css";
import { Button, DropZone, FileTrigger, isFileDropItem, Text } from "react-aria-components";

export interface FileDropProps {
  /** On the button: "Choose a CSV file". */
  readonly label: string;
  /** Beside it; left out: "or drop it here". */
  readonly hint?: string;
  /** Types or endings that the file chooser offers. */
  readonly accept?: readonly string[];
  readonly multiple?: boolean;
  readonly onFiles: (files: readonly File[]) => void;
}

/** Takes files by a button, by dropping or by pasting them. */
export function FileDrop({ label, hint = "or drop it here", accept, multiple = false, onFiles }: FileDropProps) {
  return (
    <DropZone
      className="file-drop"
      onDrop={async ({ items }) => {
        const files = await Promise.all(items.filter(isFileDropItem).map((item) => item.getFile()));
        if (files.length > 0) onFiles(multiple ? files : files.slice(0, 1));
      }}
    >
      <FileTrigger
        allowsMultiple={multiple}
        {...(accept === undefined ? {} : { acceptedFileTypes: accept })}
        onSelect={(list) => list !== null && list.length > 0 && onFiles([...list])}
      >
        <Button className="act">{label}</Button>
      </FileTrigger>
      <Text slot="label">{hint}</Text>
    </DropZone>
  );
}
