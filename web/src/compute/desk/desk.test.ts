import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { decisionData, loadPlan, memoryFiles, planToEngine, type Raw, steadinessData } from "@delaywright/documents";
import { decide, fly } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import type { DeskDocument, FromDesk, FromFlyer } from "../protocol.js";
import type { Told } from "../told.js";
import { Desk } from "./desk.js";
import { flyer } from "./flyer.js";
import { type FlyerPort, Share } from "./share.js";

const examples = fileURLToPath(new URL("../../../../cli/examples/", import.meta.url));

/** Resolves after what is due by now was run. */
const tick = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** A document of the command line's examples. */
function exampleDocument(path: string): DeskDocument {
  return { path, raw: JSON.parse(readFileSync(`${examples}${path}`, "utf8")) as Raw, text: null, drafts: {} };
}

/** A plan of the examples with everything beside it. */
function exampleDocuments(plan: string): DeskDocument[] {
  const larkmoor = readdirSync(`${examples}larkmoor`).filter((name) => name.endsWith(".json"));
  return [`${plan}/plan.json`, ...larkmoor.map((name) => `larkmoor/${name}`)].map(exampleDocument);
}

/** A flyer in this thread: its messages take a turn each way, as a worker's do. */
function flyerHere(): FlyerPort {
  let heard: (flown: FromFlyer) => void = () => undefined;
  const take = flyer((flown) => setImmediate(() => heard(structuredClone(flown))), tick);
  return {
    post: (message) => setImmediate(() => take(structuredClone(message))),
    listen(listener) {
      heard = listener;
    },
  };
}

/** A desk in this thread, and all that it said. */
function deskHere(flyers: readonly FlyerPort[] = [], draws = 3000, pause: () => Promise<void> = tick) {
  const said: FromDesk[] = [];
  const waiting = new Set<() => void>();
  const options = { tick, now: () => performance.now(), pause };
  const desk = new Desk({
    ...options,
    draws,
    share: new Share(flyers, options),
    post(message) {
      said.push(structuredClone(message));
      for (const look of [...waiting]) look();
    },
  });
  const until = (happened: (message: FromDesk) => boolean): Promise<FromDesk> =>
    new Promise((resolve) => {
      const look = (): void => {
        const found = said.find(happened);
        if (found === undefined) return;
        waiting.delete(look);
        resolve(found);
      };
      waiting.add(look);
      look();
    });
  return { desk, said, until };
}

const draws = 3000;
const settled = 10_000;
const plan = "worked-example/plan.json";
const documents = exampleDocuments("worked-example");

/** What the engine is given of the same documents, without desk or flyers. */
async function madePlainly() {
  const texts = Object.fromEntries(documents.map(({ path, raw }) => [path, JSON.stringify(raw)]));
  const { parts } = await loadPlan(plan, memoryFiles(texts));
  const made = parts && planToEngine(parts);
  if (made?.ok !== true) throw new Error("the worked example has issues");
  return made;
}

/** The same documents decided in one go. */
async function decidedPlainly(draws: number) {
  const made = await madePlainly();
  return decisionData({ ...made, decision: await decide(made.inputs, { draws }), doubts: made.warnings });
}

const toldOf = (said: readonly FromDesk[], job: number): Told[] =>
  said.flatMap((message) => (message.kind === "told" && message.job === job ? [message.told] : []));
const isDone = (job: number) => (message: FromDesk) => message.kind === "done" && message.job === job;
const isTold = (job: number, draws: number) => (message: FromDesk) =>
  message.kind === "told" && message.job === job && message.told.draws >= draws;

describe("Desk", () => {
  test("Desk tells the worked example as decide does, to the bit, alone and with up to three flyers", async () => {
    for (const [count, draws] of [
      [0, 700],
      [1, settled],
      [2, 2500],
      [3, 3000],
    ] as const) {
      const plainly = await decidedPlainly(draws);
      const { desk, said, until } = deskHere(Array.from({ length: count }, flyerHere), draws);
      desk.take({ kind: "documents", put: documents, remove: [] });
      desk.take({ kind: "ask", job: 1, ask: "brief", plan });
      await until(isDone(1));
      expect(toldOf(said, 1).map((each) => each.draws)).toEqual([256, draws]);
      const told = toldOf(said, 1).at(-1);
      expect(told?.data, `${count} flyers`).toEqual(structuredClone(plainly));
    }
  }, 240_000);

  test("Desk tells a plan after 256 draws, then after all, then its pictures, and the issues before all", async () => {
    const { desk, said, until } = deskHere([flyerHere()]);
    desk.take({ kind: "documents", put: documents, remove: [] });
    desk.take({ kind: "ask", job: 7, ask: "plan", plan });
    await until(isDone(7));
    expect(said[0]).toMatchObject({ kind: "read", job: 7, issues: [], right: true });
    expect(toldOf(said, 7).map(({ draws, of }) => [draws, of])).toEqual([
      [256, draws],
      [draws, draws],
    ]);
    expect(said.map(({ kind }) => kind).filter((kind) => kind !== "beat" && kind !== "told")).toEqual([
      "read",
      "pictures",
      "done",
    ]);
    const pictures = said.find((message) => message.kind === "pictures")?.pictures;
    const told = toldOf(said, 7).at(-1);
    // as the example's documents give them: 14 s, an end that takes 6 s of 1/32 in each
    expect(told?.facts).toMatchObject({
      element: { kind: "adjustable", longest: 14, removedDepth: 0, clock: "burnout" },
      motorClass: "H",
      electronics: false,
      cutAllowed: true,
      tool: { kind: "ends", ends: [{ name: "A" }, { name: "B" }] },
    });
    const { tool } = told?.facts ?? {};
    expect(tool?.kind === "ends" ? tool.ends[0]?.removes : undefined).toBeCloseTo((6 * 0.0254) / 32, 12);
    expect(pictures?.delay).toBe(told?.data.toCut?.delay);
    expect(pictures?.sample.to).toBe(512);
    expect(pictures?.curve.length).toBeGreaterThan(20);
    expect(pictures?.fans.climb.times.length).toBeGreaterThan(10);
    expect(pictures?.shares.unopened.keepOff).toHaveLength(told?.facts.zones?.keepOff.length ?? -1);
  });

  test("Desk leaves a dropped job at once, and nothing more is told of it", async () => {
    const { desk, said, until } = deskHere([flyerHere()]);
    desk.take({ kind: "documents", put: documents, remove: [] });
    desk.take({ kind: "ask", job: 1, ask: "plan", plan });
    await until(isTold(1, 256));
    desk.take({ kind: "drop", job: 1 });
    desk.take({ kind: "ask", job: 2, ask: "plan", plan });
    await until(isDone(2));
    expect(toldOf(said, 1).length).toBeLessThanOrEqual(2);
    const firstOfNewer = said.findIndex(({ job }) => job === 2);
    expect(said.slice(firstOfNewer).some((message) => message.kind === "told" && message.job === 1)).toBe(false);
    expect(toldOf(said, 2).at(-1)?.draws).toBe(draws);
  });

  test("Desk leaves a dropped job also while the page draws its first odds, however long that takes", async () => {
    const { desk, said, until } = deskHere([flyerHere()], draws, () => new Promise(() => undefined));
    desk.take({ kind: "documents", put: documents, remove: [] });
    desk.take({ kind: "ask", job: 1, ask: "plan", plan });
    await until(isTold(1, 256));
    desk.take({ kind: "drop", job: 1 });
    desk.take({ kind: "ask", job: 2, ask: "plan", plan });
    await until(isTold(2, 256));
    expect(toldOf(said, 1)).toHaveLength(1);
    expect(said.some(({ kind }) => kind === "failed")).toBe(false);
  });

  test("Desk lays a card aside for a plan and comes back to it, with the same figures", async () => {
    const { desk, said, until } = deskHere([flyerHere()]);
    desk.take({ kind: "documents", put: documents, remove: [] });
    desk.take({ kind: "ask", job: 1, ask: "brief", plan });
    await until((message) => message.kind === "beat" && message.job === 1);
    desk.take({ kind: "ask", job: 2, ask: "plan", plan });
    await until(isDone(1));
    const settledJobs = said.flatMap((message) =>
      message.kind === "told" && message.told.draws === message.told.of ? [message.job] : [],
    );
    expect(settledJobs).toEqual([2, 1]);
    expect(toldOf(said, 1).at(-1)?.data).toEqual(toldOf(said, 2).at(-1)?.data);
  });

  test("Desk flies a plan's draws once for its answer, its card and its weather, and again after a change", async () => {
    const { desk, said, until } = deskHere([flyerHere()]);
    const beats = (job: number): number =>
      said.filter((message) => message.kind === "told" && message.job === job && message.told.draws < draws).length;
    desk.take({ kind: "documents", put: documents, remove: [] });
    desk.take({ kind: "ask", job: 1, ask: "plan", plan });
    await until(isDone(1));
    desk.take({ kind: "ask", job: 2, ask: "brief", plan });
    desk.take({ kind: "ask", job: 3, ask: "window", plan });
    await until(isDone(3));
    await until(isDone(2));
    expect(beats(1)).toBe(1);
    expect(beats(2)).toBe(0);
    expect(toldOf(said, 2)[0]?.data).toEqual(toldOf(said, 1).at(-1)?.data);
    const asRead = said.find((message) => message.kind === "window" && message.job === 3);
    const planDocument = documents.find(({ path }) => path === plan);
    if (planDocument?.raw == null) throw new Error("no such example");
    const windier = { ...planDocument.raw, weather: { ...(planDocument.raw["weather"] as Raw), wind: "4 m/s" } };
    desk.take({ kind: "documents", put: [{ ...planDocument, raw: windier }], remove: [] });
    desk.take({ kind: "ask", job: 4, ask: "brief", plan });
    await until(isDone(4));
    expect(beats(4)).toBe(1);
    expect(toldOf(said, 4).at(-1)?.data).not.toEqual(toldOf(said, 1).at(-1)?.data);
    expect(asRead).toMatchObject({ window: { delay: expect.any(Number) } });
  });

  test("Desk flies a plan as a rigid body to the bit as the engine does, without deciding it", async () => {
    const { inputs } = await madePlainly();
    const seed = 1;
    const rough = fly(inputs, { model: "rigid", turbulence: seed });
    const plainly = steadinessData({ quick: fly(inputs), rigid: fly(inputs, { model: "rigid" }), rough, seed });
    const { desk, said, until } = deskHere([flyerHere()]);
    desk.take({ kind: "documents", put: documents, remove: [] });
    desk.take({ kind: "ask", job: 1, ask: "steadiness", plan });
    await until(isDone(1));
    expect(said.map(({ kind }) => kind).filter((kind) => kind !== "beat")).toEqual(["read", "steadiness", "done"]);
    const told = said.find((message) => message.kind === "steadiness")?.steadiness;
    expect(told).toEqual(structuredClone(plainly));
    expect(told?.quick.top?.height).not.toBe(told?.rigid.top?.height);
  });

  test("Desk answers a plan before it flies it as a rigid body, and flies nothing that was dropped", async () => {
    const { desk, said, until } = deskHere([flyerHere()]);
    desk.take({ kind: "documents", put: documents, remove: [] });
    desk.take({ kind: "ask", job: 1, ask: "steadiness", plan });
    desk.take({ kind: "ask", job: 2, ask: "plan", plan });
    desk.take({ kind: "ask", job: 3, ask: "steadiness", plan });
    desk.take({ kind: "drop", job: 3 });
    await until(isDone(1));
    const told = said.findIndex((message) => message.kind === "steadiness");
    expect(said.slice(0, told).some((message) => message.kind === "told" && message.told.draws === draws)).toBe(true);
    expect(said.some(({ job }) => job === 3)).toBe(false);
  });

  test("Desk tells what is wrong and computes nothing, be it in one document or between two", async () => {
    const { desk, said, until } = deskHere();
    const motor = documents.find(({ path }) => path.endsWith("demo-h150.motor.json"));
    const field = documents.find(({ path }) => path.endsWith("larkmoor.field.json"));
    if (motor === undefined || field === undefined) throw new Error("no such example");
    const wide = { ...motor, raw: { ...motor.raw, diameter: "75 mm" } };
    desk.take({ kind: "documents", put: [...documents, wide], remove: [] });
    desk.take({ kind: "ask", job: 1, ask: "plan", plan });
    await until(isDone(1));
    const broken = { ...field, raw: { ...field.raw, elevation: "high" } };
    desk.take({ kind: "documents", put: [motor, broken], remove: [] });
    desk.take({ kind: "ask", job: 2, ask: "plan", plan });
    await until(isDone(2));
    const reads = said.flatMap((message) => (message.kind === "read" ? [message] : []));
    expect(reads.map(({ right }) => right)).toEqual([false, false]);
    expect(reads[0]?.issues.map(({ code }) => code)).toContain("motor-too-large-for-mount");
    expect(reads[1]?.issues).toMatchObject([{ file: "larkmoor/larkmoor.field.json", path: "elevation" }]);
    expect(said.some(({ kind }) => kind === "told")).toBe(false);
  });

  test("Desk says what cannot be read yet and reckons with the last right value", async () => {
    const { desk, said, until } = deskHere();
    const drafted = documents.map((each) =>
      each.path === plan ? { ...each, drafts: { "weather.wind": "2 m/" } } : each,
    );
    desk.take({ kind: "documents", put: drafted, remove: [] });
    desk.take({ kind: "ask", job: 1, ask: "plan", plan });
    await until(isTold(1, 256));
    expect(said[0]).toMatchObject({ kind: "read", right: true, issues: [{ file: plan, path: "weather.wind" }] });
    desk.take({ kind: "drop", job: 1 });
  });

  test("Desk names every document that a plan rests on, missing ones too", async () => {
    const { desk, said, until } = deskHere();
    desk.take({ kind: "documents", put: documents, remove: ["larkmoor/two-collar.tool.json"] });
    desk.take({ kind: "documents", put: [], remove: ["larkmoor/two-collar.tool.json"] });
    desk.take({ kind: "ask", job: 1, ask: "brief", plan });
    await until(isDone(1));
    const [read] = said.flatMap((message) => (message.kind === "read" ? [message] : []));
    expect(read?.right).toBe(false);
    expect(read?.files).toContain("larkmoor/two-collar.tool.json");
    expect(read?.files).toContain("larkmoor/demo-76.rocket.json");
  });
});
