import { useState } from "react";
import { Label, Text, TextArea, TextField } from "react-aria-components";
import { changeDocuments, type Entry, rawFile } from "../store/index.js";

/** The text of a document that could not be read, to be mended; each keystroke is kept, right or wrong. */
export function DocumentText({ entry }: { readonly entry: Entry }) {
  const { path, unreadable } = entry;
  const [typed, setTyped] = useState(() => entry.text ?? rawFile(path) ?? "");
  const shown = entry.text ?? typed;
  const newer = unreadable === "newer-record";
  return (
    <TextField
      className="document-text"
      value={shown}
      isReadOnly={newer}
      autoComplete="off"
      onChange={(text) => {
        setTyped(text);
        changeDocuments(`text of ${entry.name}`, [{ path, text }], { visit: `${path} text` });
      }}
    >
      <Label>The document as text</Label>
      <Text slot="description" className="quiet">
        {newer
          ? "A newer version of the app wrote it, which alone may change it."
          : "It is kept as it is. As soon as it can be read, its form stands below."}
      </Text>
      <TextArea data-kept="" spellCheck={false} rows={16} />
    </TextField>
  );
}
