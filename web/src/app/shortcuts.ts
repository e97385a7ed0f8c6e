import { useEffect } from "react";

/** Whether a key press asks for the change to come again. */
function isRedo(event: KeyboardEvent): boolean {
  const key = event.key.toLowerCase();
  return key === "y" || (key === "z" && event.shiftKey);
}

/**
 * Ctrl or Cmd with Z takes the last change back, with Shift or as Y it comes again.
 *
 * Each keystroke in a field is a change that was kept, so this is also what takes typing back.
 */
export function useShortcuts(undo: () => void, redo: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      if (key !== "z" && key !== "y") return;
      event.preventDefault();
      if (isRedo(event)) redo();
      else undo();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [undo, redo]);
}
