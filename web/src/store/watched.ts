/** A value to be read and subscribed to, as `useSyncExternalStore` takes them. */
export interface Watch<Value> {
  readonly get: () => Value;
  readonly subscribe: (listener: () => void) => () => void;
}

/** A value that is watched. */
export class Watched<Value> implements Watch<Value> {
  private value: Value;
  private readonly listeners = new Set<() => void>();

  constructor(value: Value) {
    this.value = value;
  }

  readonly get = (): Value => this.value;

  set(value: Value): void {
    if (Object.is(value, this.value)) return;
    this.value = value;
    for (const listener of [...this.listeners]) listener();
  }

  /** Does anybody subscribe? */
  get watched(): boolean {
    return this.listeners.size > 0;
  }

  /** Calls the listener after each change. Returns a function that ends it. */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => {
      this.listeners.delete(listener);
    };
  };
}
