import { useEffect } from "react";

/** Whether a key press asks for the change to come again. */
function isRedo(event: KeyboardEvent): boolean {
  const key = event.key.toLowerCase();
  return key === "y" || (key === "z" && event.shiftKey);
}

const typedInto = "input:not([type=checkbox], [type=radio], [type=range], [type=file]), textarea";
const keptAsTyped = '[id^="field:"], [data-kept]';

/** What is typed into no field of a document, and what a dialog asks, is the browser's own to take back. */
function isBrowsers({ target }: KeyboardEvent): boolean {
  if (document.querySelector("[role=dialog], [role=alertdialog]") !== null) return true;
  return target instanceof Element && target.matches(typedInto) && !target.matches(keptAsTyped);
}

/**
 * Ctrl or Cmd with Z takes the last change back, with Shift or as Y it comes again.
 *
 * Each keystroke in a field of a document is a change that was kept, so this is also what takes typing back.
 */
export function useShortcuts(undo: () => void, redo: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if ((key !== "z" && key !== "y") || isBrowsers(event)) return;
      event.preventDefault();
      if (isRedo(event)) redo();
      else undo();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [undo, redo]);
}
