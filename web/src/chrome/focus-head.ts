/** The heading of the page; null while there is none. */
export function pageHead(): HTMLElement | null {
  return document.querySelector("h1");
}

/** Puts the reader at the head of the page, unless something on it has the focus. */
export function focusHead(): void {
  const heading = pageHead();
  if (heading === null || (document.activeElement !== null && document.activeElement !== document.body)) return;
  heading.setAttribute("tabindex", "-1");
  heading.focus({ preventScroll: true });
}
