import { BenchStore, type BenchStoreOptions } from "../../../src/store/bench-store.js";

let count = 0;
const open: BenchStore[] = [];

/** A name that no other test's database has. */
export function freshName(): string {
  count += 1;
  return `bench-${count}`;
}

/** A store of a test's own, opened, without the worked example. */
export async function freshStore(options: BenchStoreOptions = {}): Promise<BenchStore> {
  const name = options.name ?? freshName();
  const { mirror = { getItem: () => '{ "exampleGiven": true }', setItem: () => undefined } } = options;
  const store = new BenchStore({ ...options, name, mirror });
  open.push(store);
  await store.open();
  return store;
}

/** Closes what a test opened: a channel that stays open keeps the run from ending. */
export function closeStores(): void {
  for (const store of open.splice(0)) store.close();
}

/** Lets the current turn end, so that the next change is a step of its own. */
export function nextTurn(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve));
}
