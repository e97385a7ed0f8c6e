import { whenThere } from "./when-there.js";

const isAsked = (): boolean => document.querySelector("[role=alertdialog], [role=dialog]") !== null;

function focus(place: HTMLElement): void {
  const elsewhere = document.activeElement !== null && document.activeElement !== document.body;
  if (elsewhere) return;
  if (place.tabIndex < 0 && !place.hasAttribute("tabindex")) place.setAttribute("tabindex", "-1");
  place.focus({ preventScroll: true });
}

/**
 * Puts the reader somewhere once a dialog has closed: what opened it is gone, and the focus with it.
 *
 * @param find where to; a place that takes no focus by itself is made to
 */
export function focusAfterDialog(find: () => HTMLElement | null): void {
  // a dialog that closes looks for what had the focus before it, a frame later
  const next = (then: () => void): number => requestAnimationFrame(() => requestAnimationFrame(then));
  next(() =>
    whenThere(
      () => (isAsked() ? null : find()),
      (place) => next(() => focus(place)),
    ),
  );
}
