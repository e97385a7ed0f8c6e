import type { EnsembleChunk, EnsembleSpec } from "@delaywright/engine";
import { expect, test } from "vitest";
import type { ToFlyer } from "../protocol.js";
import { Dropped, Task } from "./task.js";
import { Wholes } from "./wholes.js";

const spec = {} as EnsembleSpec;
const chunk = (from: number): EnsembleChunk => ({ from, to: from + 96 }) as EnsembleChunk;

/** Two flyers that keep what they are asked. */
function flyers() {
  const asked: { readonly by: number; readonly message: Extract<ToFlyer, { kind: "whole" }> }[] = [];
  const hands = [0, 1].map((by) => ({
    post: (message: ToFlyer) => void (message.kind === "whole" && asked.push({ by, message })),
  }));
  return { asked, wholes: new Wholes(hands) };
}

test("Wholes gives ensembles to the flyers in turn, and each answer to who asked, in whatever order they come", async () => {
  const { asked, wholes } = flyers();
  const flying = [0, 100, 200].map((from) => wholes.fly(new Task(), spec, from, from + 96));
  expect(new Set(asked.slice(0, 2).map(({ by }) => by)).size).toBe(2);
  for (const { message } of asked.toReversed()) wholes.hear({ whole: message.whole, chunk: chunk(message.from) });
  expect((await Promise.all(flying)).map(({ from }) => from)).toEqual([0, 100, 200]);
});

test("Wholes rejects what is dropped at once, and passes over its late answer", async () => {
  const { asked, wholes } = flyers();
  const task = new Task();
  const flying = wholes.fly(task, spec, 0, 96);
  task.drop();
  await expect(flying).rejects.toThrow(Dropped);
  wholes.hear({ whole: asked[0]?.message.whole ?? 0, chunk: chunk(0) });
});
