/**
 * Watches whether an element is in the window, or close to it.
 *
 * @param ahead how far from the window counts as in it already, for example `400px`
 * @param told called with each change, and once at first
 * @returns ends it
 */
export function watchInView(element: Element, ahead: string, told: (inView: boolean) => void): () => void {
  const observer = new IntersectionObserver((seen) => told(seen.at(-1)?.isIntersecting ?? true), {
    rootMargin: ahead,
  });
  observer.observe(element);
  return () => observer.disconnect();
}
