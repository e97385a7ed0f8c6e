import { Watched } from "./watched.js";

/**
 * Whether the browser promised not to clear the bench by itself.
 *
 * `unasked`: until the flyer's first change; `refused`: it may, when room gets short, so export; `unknown`: it has no such promise.
 */
export type Persistence = "unasked" | "granted" | "refused" | "unknown";

/** Asks the browser once to keep what is stored. */
export class PersistenceBox {
  readonly watched = new Watched<Persistence>("unasked");
  private asked = false;

  /** An answer given at an earlier visit holds. */
  async look(): Promise<void> {
    try {
      if ((await globalThis.navigator?.storage?.persisted?.()) === true) this.watched.set("granted");
    } catch {
      // asked again at the first change
    }
  }

  async ask(): Promise<void> {
    if (this.asked) return;
    this.asked = true;
    try {
      const storage = globalThis.navigator?.storage;
      const granted = await storage?.persist?.();
      this.watched.set(granted === undefined ? "unknown" : granted ? "granted" : "refused");
    } catch {
      this.watched.set("unknown");
    }
  }
}
