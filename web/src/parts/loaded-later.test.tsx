import { renderToString } from "react-dom/server";
import { expect, test, vi } from "vitest";
import { isMissing, Loaded, loadedLater } from "./loaded-later.js";

const Greeting = ({ name }: { readonly name: string }) => <p>Good day, {name}</p>;

test("Loaded shows what stands in its place until the code is there, and then the part at once", async () => {
  const bring = vi.fn(async () => Greeting);
  const part = loadedLater(bring);
  const shown = () => renderToString(<Loaded part={part} props={{ name: "Ada" }} waiting={<i>Opening</i>} />);
  expect(shown()).toBe("<i>Opening</i>");
  await part.load();
  expect(shown()).toContain("Ada");
  await part.load();
  expect(bring).toHaveBeenCalledTimes(1);
});

test("loadedLater() asks again where the code could not be had", async () => {
  const bring = vi.fn(async () => Greeting);
  bring.mockRejectedValueOnce(new Error("no network"));
  const part = loadedLater(bring);
  await expect(part.load()).rejects.toThrow("no network");
  expect(part.there()).toBeNull();
  await expect(part.load()).resolves.toBe(Greeting);
});

test("isMissing() tells a file that could not be had from one that breaks", () => {
  for (const words of [
    "Failed to fetch dynamically imported module: https://bench.example/plan.js",
    "error loading dynamically imported module: https://bench.example/plan.js",
    "Importing a module script failed.",
    "Unable to preload CSS for /assets/plan.css",
  ])
    expect(isMissing(new TypeError(words)), words).toBe(true);
  expect(isMissing(new TypeError("Cannot read properties of undefined (reading 'path')"))).toBe(false);
  expect(isMissing("module")).toBe(false);
});
