/** Thrown through work that nobody waits for any more. */
export class Dropped extends Error {
  constructor() {
    super("dropped for something newer");
    this.name = "Dropped";
  }
}

/** A piece of work that can be dropped between its steps. */
export class Task {
  private isDropped = false;
  private readonly listeners = new Set<() => void>();

  get dropped(): boolean {
    return this.isDropped;
  }

  drop(): void {
    if (this.isDropped) return;
    this.isDropped = true;
    for (const listener of [...this.listeners]) listener();
    this.listeners.clear();
  }

  /** @throws {Dropped} once dropped */
  check(): void {
    if (this.isDropped) throw new Dropped();
  }

  /** Calls the listener once, when dropped. Returns a function that takes it off again. */
  onDrop(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
}
