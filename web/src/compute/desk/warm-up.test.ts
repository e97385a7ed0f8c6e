import { expect, test } from "vitest";
import { warmUp } from "./warm-up.js";

test("warmUp reads and flies as far as first odds, in short runs, and ends by itself", async () => {
  let pauses = 0;
  const done = new Promise<void>((resolve) => {
    let last = setTimeout(resolve, 0);
    warmUp(async () => {
      pauses += 1;
      await new Promise((next) => setImmediate(next));
      clearTimeout(last);
      last = setTimeout(resolve, 500);
    });
  });
  await done;
  // five kinds of documents, then 256 draws by 32
  expect(pauses).toBe(13);
});

test("warmUp flies no further once it is ended", async () => {
  let pauses = 0;
  const end = warmUp(async () => {
    pauses += 1;
    await new Promise((next) => setImmediate(next));
    if (pauses === 2) end();
  });
  await new Promise((next) => setTimeout(next, 500));
  expect(pauses).toBe(2);
});
