import { useState } from "react";

function read(key: string): string {
  try {
    return localStorage.getItem(key) ?? "";
  } catch {
    return "";
  }
}

function keep(key: string, text: string): void {
  try {
    if (text === "") localStorage.removeItem(key);
    else localStorage.setItem(key, text);
  } catch {
    // it then lasts only as long as the page
  }
}

/**
 * A text that is being typed and belongs to no document yet: it survives a page that is killed.
 *
 * @param name what it is called on this device
 */
export function useKeptText(name: string): readonly [string, (text: string) => void] {
  const key = `delaywright-typed:${name}`;
  const [typed, setTyped] = useState({ key, text: read(key) });
  const text = typed.key === key ? typed.text : read(key);
  const change = (next: string): void => {
    keep(key, next);
    setTyped({ key, text: next });
  };
  return [text, change];
}
