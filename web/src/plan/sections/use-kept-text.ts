import { useState } from "react";
import { keepTypedText, typedText } from "../../store/index.js";

/**
 * A text that is being typed and belongs to no field of a document yet: it survives a page that is killed, and goes with its
 * document.
 *
 * @param path of the document
 * @param what it is
 */
export function useKeptText(path: string, what: string): readonly [string, (text: string) => void] {
  const key = `${path} ${what}`;
  const [typed, setTyped] = useState({ key, text: typedText(path, what) });
  const text = typed.key === key ? typed.text : typedText(path, what);
  const change = (next: string): void => {
    keepTypedText(path, what, next);
    setTyped({ key, text: next });
  };
  return [text, change];
}
