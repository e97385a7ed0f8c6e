import type { Held } from "../protocol.js";

/**
 * Holds a lock as long as this worker lives: whoever waits for it hears of its end.
 *
 * @param lock its name; null where the browser has none
 */
export function holdLock(lock: string | null, post: (message: Held) => void): void {
  if (lock === null) return;
  navigator.locks.request(lock, () => {
    post({ kind: "held" });
    return new Promise(() => undefined);
  });
}

/** What nobody caught must reach the page, which starts new workers. */
export function reportUncaught(): void {
  self.addEventListener("unhandledrejection", (event) => self.reportError(event.reason));
}
