import "fake-indexeddb/auto";
import { newFlight, type Raw } from "@delaywright/documents";
import { afterEach, expect, test, vi } from "vitest";
import { closeStores, freshName, freshStore, nextTurn } from "../../stories/data/databases/fresh-store.js";
import type { BenchStore } from "../store/bench-store.js";

afterEach(closeStores);

const signed = (raw: Raw, step: string): Raw => ({
  ...raw,
  signOffs: [...((raw["signOffs"] as unknown[]) ?? []), { step, by: "AB", when: "2026-05-02T10:12:00Z" }],
});

function sign(store: BenchStore, path: string, step: string): void {
  const raw = store.memory.get(path)?.raw;
  if (raw) store.change("sign-off", [{ path, raw: signed(raw, step) }], { signed: true });
}

const stepsIn = (store: BenchStore, path: string) =>
  ((store.memory.get(path)?.raw?.["signOffs"] ?? []) as { step: string }[]).map(({ step }) => step);

test("a signature survives a reload, and undo passes it over", async () => {
  const name = freshName();
  const store = await freshStore({ name });
  const path = store.add("flight", newFlight("Third flight", "plan.json"));
  await nextTurn();
  sign(store, path, "motor-label");
  await nextTurn();
  sign(store, path, "instructions");
  await store.keeper.idle();
  // what undo would take back is the flight itself: refused, since it was signed for since
  expect(store.undo()).toMatchObject({ ok: false, reason: "changed-elsewhere" });
  expect(stepsIn(store, path)).toEqual(["motor-label", "instructions"]);
  store.close();
  const again = await freshStore({ name });
  expect(stepsIn(again, path)).toEqual(["motor-label", "instructions"]);
});

test("another field of a flight is undone, and its signatures stay", async () => {
  const store = await freshStore();
  const path = store.add("flight", newFlight("Third flight", "plan.json"));
  await nextTurn();
  store.setField(path, "note", "windy", "Note");
  await nextTurn();
  sign(store, path, "motor-label");
  expect(store.undo().ok).toBe(true);
  expect(store.memory.get(path)?.raw).not.toHaveProperty("note");
  expect(stepsIn(store, path)).toEqual(["motor-label"]);
});

test("signatures given at once in two tabs are both kept", async () => {
  const name = freshName();
  const one = await freshStore({ name });
  const path = one.add("flight", newFlight("Third flight", "plan.json"));
  await one.keeper.idle();
  const other = await freshStore({ name });
  sign(one, path, "name");
  sign(other, path, "airframe");
  for (const store of [one, other])
    await vi.waitFor(() => expect(stepsIn(store, path).toSorted()).toEqual(["airframe", "name"]));
});
