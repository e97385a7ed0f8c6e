/** A value that is watched: what a screen subscribes to. */
export class Subject<Value> {
  private value: Value;
  private readonly listeners = new Set<() => void>();

  constructor(value: Value) {
    this.value = value;
  }

  readonly get = (): Value => this.value;

  set(value: Value): void {
    if (value === this.value) return;
    this.value = value;
    for (const listener of [...this.listeners]) listener();
  }

  get watched(): boolean {
    return this.listeners.size > 0;
  }

  /** Returns a function that ends it. */
  add(listener: () => void): () => void {
    this.listeners.add(listener);
    return () => {
      this.listeners.delete(listener);
    };
  }
}

/** A value to be read and subscribed to, as `useSyncExternalStore` takes them. */
export interface Watch<Value> {
  readonly get: () => Value;
  readonly subscribe: (listener: () => void) => () => void;
}
