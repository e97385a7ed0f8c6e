import { type Issue, issueSentence, readCardCode, upperFirst } from "@delaywright/documents";
import { useRef, useState } from "react";
import { Button, Label, TextArea, TextField } from "react-aria-components";
import { FileDrop, Section } from "../parts/index.js";
import { Camera, canLook } from "./camera.js";
import { codeInPicture } from "./code-in-picture.js";
import type { Desk } from "./use-desk.js";

/** A card read by its code: through the camera, from a photo, or as pasted text. */
export function ReadCard({ desk }: { readonly desk: Desk }) {
  const [pasted, setPasted] = useState("");
  const [issues, setIssues] = useState<readonly Issue[]>([]);
  const [word, setWord] = useState("");
  /** Counts what was given to read: what an earlier picture said no longer matters. */
  const turn = useRef(0);
  const take = async (text: string): Promise<void> => {
    const mine = ++turn.current;
    const found = await readCardCode(text);
    if (mine !== turn.current) return;
    setIssues(found.ok ? [] : found.issues);
    desk.setRead(found.ok ? found.raw : null);
    setWord(found.ok ? `Read: ${found.document.name}.` : "");
    if (found.ok) setPasted("");
  };
  const look = async (photo: Blob): Promise<void> => {
    const mine = ++turn.current;
    setIssues([]);
    setWord("Looking for the code …");
    const text = await codeInPicture(photo).catch(() => null);
    if (mine !== turn.current) return;
    if (text === null)
      setWord("No code was found in this picture. Take it straight from above, the code large and sharp.");
    else await take(text);
  };
  return (
    <Section title="The code on the card" part>
      {canLook() && <Camera onText={(text) => void take(text)} />}
      <FileDrop
        label="Choose a photo of the code"
        accept={["image/*"]}
        onFiles={([photo]) => photo !== undefined && void look(photo)}
      />
      <TextField className="desk-paste" value={pasted} onChange={setPasted} autoComplete="off">
        <Label>Or paste what the code says</Label>
        <TextArea spellCheck={false} rows={4} />
      </TextField>
      <Button className="act" isDisabled={pasted.trim() === ""} onPress={() => void take(pasted)}>
        Read this text
      </Button>
      <p role="status" className="sheet-line desk-word">
        {word}
      </p>
      {issues.length > 0 && (
        <ul className="desk-issues" role="alert">
          {issues.map((issue) => (
            <li key={`${issue.path} ${issue.code}`}>{upperFirst(issueSentence(issue))}.</li>
          ))}
        </ul>
      )}
    </Section>
  );
}
