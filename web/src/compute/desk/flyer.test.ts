import { chunkBytes, decide, type EnsembleSpec, memoryOf, prepareEnsemble } from "@delaywright/engine";
import { expect, test } from "vitest";
import type { Flown, FlownWhole, FromFlyer } from "../protocol.js";
import { flyer } from "./flyer.js";
import { warmInputs } from "./warm-inputs.js";

const tick = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));
const ticks = async (count: number): Promise<void> => {
  for (let i = 0; i < count; i += 1) await tick();
};

async function someEnsemble(): Promise<EnsembleSpec> {
  const specs: EnsembleSpec[] = [];
  await decide(warmInputs, {
    draws: 16,
    run: async (spec, from, to) => {
      specs.push(spec);
      return prepareEnsemble(spec)(from, to);
    },
  });
  const [spec] = specs;
  if (spec === undefined) throw new Error("nothing was flown");
  return spec;
}

/** A flyer, what it hands over, and in words what of which kind began at which draw. */
function listening() {
  const heard: (Flown | FlownWhole)[] = [];
  const take = flyer((message: FromFlyer) => {
    if ("chunk" in message) heard.push(message);
  }, tick);
  const flown = () => heard.map((each) => `${"whole" in each ? "whole" : "run"} ${each.chunk.from}`);
  return { take, heard, flown };
}

test("flyer() flies into memory that it is handed back, where there is room", async () => {
  const spec = await someEnsemble();
  const fly = prepareEnsemble(spec);
  const { take, heard } = listening();
  const memory = new ArrayBuffer(chunkBytes(spec.opening, 6));
  take({ kind: "ensemble", ensemble: 1, spec });
  for (const to of [4, 12]) {
    take({ kind: "run", ensemble: 1, from: 0, to, memory });
    await ticks(8);
  }
  const flown = heard.map(({ chunk }) => chunk);
  expect(flown).toEqual([fly(0, 4), fly(0, 12)]);
  expect(flown.map((chunk) => memoryOf(chunk)[0] === memory)).toEqual([true, false]);
});

test("flyer() drops the runs and short ensembles that wait once told to stop, and still knows its ensemble", async () => {
  const spec = await someEnsemble();
  const { take, flown } = listening();
  const run = (from: number): void => take({ kind: "run", ensemble: 1, from, to: from + 4 });
  const whole = (from: number): void => take({ kind: "whole", whole: from, spec, from, to: from + 4 });
  take({ kind: "ensemble", ensemble: 1, spec });
  run(0);
  whole(4);
  take({ kind: "stop" });
  await ticks(8);
  expect(flown()).toEqual([]);
  run(8);
  whole(12);
  await ticks(8);
  expect(flown()).toEqual(["run 8", "whole 12"]);
});

test("flyer() flies short ensembles that wait even where another ensemble comes, and drops the runs of the older one", async () => {
  const spec = await someEnsemble();
  const { take, flown } = listening();
  take({ kind: "ensemble", ensemble: 1, spec });
  take({ kind: "run", ensemble: 1, from: 0, to: 4 });
  take({ kind: "whole", whole: 1, spec, from: 4, to: 8 });
  take({ kind: "ensemble", ensemble: 2, spec });
  take({ kind: "run", ensemble: 2, from: 8, to: 12 });
  await ticks(8);
  expect(flown()).toEqual(["whole 4", "run 8"]);
});
