import type { Candidate, EnsembleSpec, ShortlistSpec } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { runsOf, workerPool } from "./pool.js";

const spec = {} as EnsembleSpec;
const code = (text: string): URL => new URL(`data:text/javascript,${encodeURIComponent(text)}`);
const answers = code(`
  import { parentPort, threadId } from "node:worker_threads";
  const column = (from, to) => Float64Array.from({ length: to - from }, (_, i) => from + i);
  parentPort.on("message", ({ from, to }) => {
    setTimeout(() => parentPort.postMessage({ from, to, flights: column(from, to), judged: column(from, to), samples: column(from, to) }), (threadId * 7) % 5);
  });
`);

/** Answers a motor with itself and with the seed of the plan that it knows. */
const judges = code(`
  import { parentPort, threadId } from "node:worker_threads";
  let seed;
  let plans = 0;
  parentPort.on("message", ({ shortlist, candidate }) => {
    if (shortlist !== undefined) { seed = shortlist.seed; plans += 1; }
    setTimeout(() => parentPort.postMessage({ id: candidate.id, seed, plans, threadId }), (threadId * 7) % 5);
  });
`);
const motors = ["a", "b", "c", "d", "e"].map((id) => ({ id }) as Candidate);

describe("runsOf()", () => {
  test("covers every draw once, in runs that do not depend on the number of workers", () => {
    expect(runsOf(0, 600)).toEqual([
      { from: 0, to: 50 },
      { from: 50, to: 300 },
      { from: 300, to: 550 },
      { from: 550, to: 600 },
    ]);
    expect(runsOf(0, 1)).toEqual([{ from: 0, to: 1 }]);
    expect(runsOf(256, 600)).toEqual([
      { from: 256, to: 306 },
      { from: 306, to: 556 },
      { from: 556, to: 600 },
    ]);
  });
});

describe("workerPool()", () => {
  test.each([1, 2, 4])("joins the runs in their order with %i workers, and tells how far it is", async (workers) => {
    const pool = workerPool(workers, answers);
    const seen: number[] = [];
    const chunk = await pool.run(spec, 0, 1300, (done) => seen.push(done));
    await pool.close();
    expect([...chunk.flights]).toEqual(Array.from({ length: 1300 }, (_, i) => i));
    expect(seen.at(-1)).toBe(1300);
  });

  test("runs that are asked for at once are flown one after the other, each with its own draws", async () => {
    const pool = workerPool(2, answers);
    const chunks = await Promise.all([0, 1000, 2000].map((from) => pool.run(spec, from, from + 96)));
    await pool.close();
    for (const [i, { flights }] of chunks.entries())
      expect([...flights]).toEqual(Array.from({ length: 96 }, (_, k) => 1000 * i + k));
  });

  test("flies a range on its own, and counts what is done of it", async () => {
    const pool = workerPool(2, answers);
    const seen: number[] = [];
    const chunk = await pool.run(spec, 256, 900, (done) => seen.push(done));
    await pool.close();
    expect([...chunk.flights]).toEqual(Array.from({ length: 644 }, (_, i) => 256 + i));
    expect([chunk.from, chunk.to, seen.at(-1)]).toEqual([256, 900, 644]);
  });

  test.each([
    ["throws as it starts", 'throw new Error("no start")', "no start"],
    ["exits as it starts", "process.exit(3)", "ended with code"],
    [
      "throws at its work",
      'import { parentPort } from "node:worker_threads"; parentPort.on("message", () => { throw new Error("no work"); });',
      "no work",
    ],
    [
      "exits at its work",
      'import { parentPort } from "node:worker_threads"; parentPort.on("message", () => process.exit(3));',
      "ended with code 3",
    ],
  ])("rejects where a worker %s", async (_, text, word) => {
    const pool = workerPool(2, code(text));
    await expect(pool.run(spec, 0, 1000)).rejects.toThrow(word);
    await expect(pool.run(spec, 0, 10)).rejects.toThrow();
    await pool.close();
  });

  test("rejects where the worker's file is not there", async () => {
    const pool = workerPool(1, new URL("gone.mjs", import.meta.url));
    await expect(pool.run(spec, 0, 10)).rejects.toThrow("gone.mjs");
    await pool.close();
  });

  test.each([1, 2, 8])("judges every motor once on %i workers; each is told a plan once", async (workers) => {
    const pool = workerPool(workers, judges);
    const [one, other] = [{ seed: 1 } as ShortlistSpec, { seed: 2 } as ShortlistSpec];
    for (const [i, plan] of [one, other].entries()) {
      const found = (await Promise.all(motors.map((motor) => pool.judge(plan, motor)))) as unknown as {
        readonly id: string;
        readonly seed: number;
        readonly plans: number;
        readonly threadId: number;
      }[];
      expect(found.map(({ id }) => id)).toEqual(["a", "b", "c", "d", "e"]);
      for (const each of found) expect(each.seed).toBe(plan.seed);
      for (const each of found) expect(each.plans).toBeLessThanOrEqual(i + 1);
      expect(new Set(found.map(({ threadId }) => threadId)).size).toBeLessThanOrEqual(Math.min(workers, motors.length));
    }
    await pool.close();
  });

  test("rejects a motor where its worker exits, and those that wait", async () => {
    const pool = workerPool(
      1,
      code('import { parentPort } from "node:worker_threads"; parentPort.on("message", () => process.exit(3));'),
    );
    const both = motors.slice(0, 2).map((motor) => pool.judge({ seed: 1 } as ShortlistSpec, motor));
    for (const each of both) await expect(each).rejects.toThrow("ended with code");
    await pool.close();
  });
});
