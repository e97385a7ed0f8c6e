import "fake-indexeddb/auto";
import { afterEach, expect, test } from "vitest";
import { closeStores, freshName, freshStore } from "../../stories/data/databases/fresh-store.js";
import { BenchStore } from "./bench-store.js";
import { settingsFrom } from "./settings.js";

afterEach(closeStores);

test("settingsFrom takes what is right, one by one", () => {
  expect(settingsFrom({ units: "imperial", theme: "pink", lastExport: "never" })).toEqual({
    units: "imperial",
    theme: "auto",
    lastExport: null,
    exampleGiven: false,
  });
  expect(settingsFrom("nonsense")).toMatchObject({ units: "metric", theme: "auto" });
});

test("SettingsBox knows the last visit's settings before the database is opened, and the database's after", async () => {
  const name = freshName();
  const kept = new Map<string, string>();
  const mirror = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => kept.set(key, value),
  };
  const store = await freshStore({ name, mirror });
  await store.settings.change({ theme: "sun" });
  store.close();
  kept.set("delaywright-settings", [...kept.values()].join("").replace("sun", "dark"));
  const opened = new BenchStore({ name, mirror });
  expect(opened.settings.watched.get().theme).toBe("dark");
  opened.close();
  const again = await freshStore({ name, mirror });
  expect(again.settings.watched.get().theme).toBe("sun");
  expect(kept.get("delaywright-settings")).toContain('"sun"');
});

test("SettingsBox works with a mirror that refuses everything, and with one that holds nonsense", async () => {
  const refuse = () => {
    throw new DOMException("no", "SecurityError");
  };
  const store = await freshStore({ mirror: { getItem: refuse, setItem: refuse } });
  await store.settings.change({ units: "imperial" });
  expect(store.settings.watched.get().units).toBe("imperial");
  const other = await freshStore({ mirror: { getItem: () => "{", setItem: () => undefined } });
  expect(other.settings.watched.get().theme).toBe("auto");
});
