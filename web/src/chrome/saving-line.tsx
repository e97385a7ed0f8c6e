import { useState } from "react";
import { useSaving } from "../store/index.js";
import { savingOf, savingWords } from "./saving-words.js";

/** How far the writing has come where many documents are not kept yet, as after a large import; empty otherwise. */
export function useSavingWords(): string {
  const { state, unsaved } = useSaving();
  const [before, setBefore] = useState(0);
  const count = state === "saving" ? unsaved.length : 0;
  const of = savingOf(before, count);
  if (of !== before) setBefore(of);
  return savingWords(count, of);
}

/** The same as a quiet line in the head of a page. */
export function SavingLine() {
  return <p role="status">{useSavingWords()}</p>;
}
