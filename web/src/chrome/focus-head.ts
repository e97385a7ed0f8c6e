/**
 * Puts the reader at the head of the page, unless something on it has the focus.
 *
 * @returns whether there is a heading
 */
export function focusHead(): boolean {
  const heading = document.querySelector<HTMLElement>("h1");
  if (heading === null) return false;
  if (document.activeElement !== null && document.activeElement !== document.body) return true;
  heading.setAttribute("tabindex", "-1");
  heading.focus({ preventScroll: true });
  return true;
}
