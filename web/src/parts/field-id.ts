import { bringIntoView } from "./bring-into-view.js";
import { addressOfDocument } from "./document-address.js";
import { parentOf } from "./field-path.js";
import { goWhenThere } from "./when-there.js";

/** The id of the control of a field, so that whatever names the field can lead to it. */
export function fieldId(path: string, field: string): string {
  return `field:${encodeURIComponent(path)}:${field.replace(/\s/g, "_")}`;
}

/** Sent by a control that is about to be looked at: whatever is folded around it opens. */
export const REVEAL = "delaywright-reveal";

function elementOf(path: string, field: string): HTMLElement | null {
  for (let at = field; at !== ""; at = parentOf(at)) {
    const id = fieldId(path, at);
    const element =
      document.getElementById(id) ?? document.querySelector<HTMLElement>(`[data-fields~="${CSS.escape(id)}"]`);
    if (element !== null) return element;
  }
  return null;
}

function reveal(element: HTMLElement): void {
  element.dispatchEvent(new CustomEvent(REVEAL, { bubbles: true }));
  requestAnimationFrame(() =>
    requestAnimationFrame(() => {
      bringIntoView(element, "center", true);
      element.focus({ preventScroll: true });
    }),
  );
}

/**
 * Goes to a field: opens what is folded around it and puts the cursor there. Where it is not on this page, goes to the
 * document's own page first.
 *
 * @param path of the document
 * @param field as an issue names it; the nearest field around it will do
 * @param kind of the document, where it is known
 */
export function revealField(path: string, field: string, kind: string | null = null): void {
  const find = () => elementOf(path, field);
  const address = kind === null ? undefined : addressOfDocument(kind, path);
  if (address !== undefined && find() === null) location.hash = address;
  goWhenThere(find, reveal);
}
