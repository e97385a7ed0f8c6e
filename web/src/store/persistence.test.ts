import { afterEach, expect, test, vi } from "vitest";
import { PersistenceBox } from "./persistence.js";

afterEach(() => vi.unstubAllGlobals());

function browser(storage: unknown): void {
  vi.stubGlobal("navigator", { storage });
}

test("PersistenceBox asks once and keeps the answer", async () => {
  const persist = vi.fn(async () => false);
  browser({ persist });
  const box = new PersistenceBox();
  await Promise.all([box.ask(), box.ask()]);
  expect(persist).toHaveBeenCalledTimes(1);
  expect(box.watched.get()).toBe("refused");
});

test("PersistenceBox knows what was granted before", async () => {
  browser({ persisted: async () => true });
  const box = new PersistenceBox();
  await box.look();
  expect(box.watched.get()).toBe("granted");
});

test("PersistenceBox does without a browser that promises anything", async () => {
  browser(undefined);
  const box = new PersistenceBox();
  await box.look();
  await box.ask();
  expect(box.watched.get()).toBe("unknown");
});
