import { expect, test } from "vitest";
import { windFrom } from "../../reference/trajectories/inputs.js";
import { calmPlan, heavyPlan, plan } from "../../test/plan.js";
import { fly } from "../flight/fly.js";
import { noSpread } from "../spread/drawn-values.js";
import { prepareEnsemble } from "../spread/ensemble.js";
import { joinChunks } from "../spread/ensemble-chunk.js";
import { decide } from "./decide.js";
import type { Decision } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";
import { type DrawMemory, type EnsembleRunner, runHere } from "./odds.js";

const draws = 256;
const perSecond = 0.79375e-3;

const told = async (options: Parameters<typeof decide>[1]) => {
  const { flight: _, ...rest } = await decide(plan, { draws, ...options });
  return JSON.stringify(rest);
};

test("decide() with spread none flies once, and every quantile is that flight", async () => {
  const exact: DecisionInputs = { ...calmPlan, spread: noSpread };
  const decision = await decide(exact, { draws });
  const { apogee, burnout } = fly(exact).events;
  expect(decision.draws).toBe(1);
  const setting = decision.settings.find((s) => s.delay === 12);
  const coast = apogee!.time - burnout!.time;
  expect(decision.coast.nominal).toBeCloseTo(coast, 9);
  for (const q of [decision.coast.p05, decision.coast.p50, decision.coast.p95]) expect(q).toBe(decision.coast.p05);
  // the draw flies from tables at its looser tolerance
  expect(Math.abs(decision.coast.p50 - coast)).toBeLessThan(1e-4 * apogee!.time);
  expect(decision.apogeeHeight.p05).toBe(decision.apogeeHeight.p95);
  expect(decision.apogeeAirspeed.p50).toBe(decision.apogeeAirspeed.p95);
  const { openingSpeed, openingHeight, secondsFromApogee } = setting!;
  expect(openingSpeed!.p50).toBe(openingSpeed!.p95);
  expect(openingHeight!.p05).toBe(openingHeight!.p50);
  expect(secondsFromApogee!.p05).toBe(secondsFromApogee!.p95);
  expect(secondsFromApogee!.p50).toBeCloseTo(12 + 0.5 - coast, 2);
  expect(setting!.odds).toMatchObject({ clean: 1, holds: 1, error: 0, holdsError: 0 });
  expect(decision.unopened.ellipse95).toBeNull();
  expect(decision.drivers).toEqual([]);
});

test("decide() suggests the setting with the highest clean odds among those that hold", async () => {
  const { settings, toCut } = await decide(calmPlan, { draws });
  expect(settings.map((s) => s.delay)).toEqual([14, 12, 10, 8, 6]);
  const best = settings.reduce((a, b) => (b.odds.clean > a.odds.clean ? b : a));
  expect(toCut).toMatchObject({ delay: best.delay, depth: best.depth, end: best.end, reachesLeast: true });
  expect(toCut!.reasons).toEqual([]);
  for (const { odds } of settings) {
    const { clean, earlyFast, lateFast, leanFast, low, grounded, holds } = odds;
    expect(Math.abs(clean + earlyFast + lateFast + leanFast + low + grounded - 1)).toBeLessThan(1e-12);
    expect(holds).toBeGreaterThanOrEqual(clean - 1e-12);
  }
});

test("decide() gives the same answer again, whoever flies the draws, and another with another seed", async () => {
  const apart: EnsembleRunner = async (spec, from, end) => {
    const count = end - from;
    const edges = [0, Math.min(1, count), Math.floor(count / 3), Math.floor(count / 2), count]
      .sort((a, b) => a - b)
      .map((edge) => from + edge);
    const runs = edges.slice(1).flatMap((to, i) => (to > edges[i]! ? [prepareEnsemble(spec)(edges[i]!, to)] : []));
    return joinChunks(runs.reverse());
  };
  const once = await told({});
  expect(await told({})).toBe(once);
  expect(await told({ run: apart })).toBe(once);
  expect(await told({ run: apart, stages: [1, 77], onPart: () => {} })).toBe(once);
  expect(await told({ seed: 2 })).not.toBe(once);
});

test("decide() gathers its draws in memory that it is given, whatever was in it, and keeps none of it", async () => {
  const once = await told({});
  const other = await told({ seed: 2 });
  const given: ArrayBuffer[] = [];
  const memory: DrawMemory = (bytes) => {
    if (given.length === 0) given.push(new ArrayBuffer(bytes + 8));
    return given[0]!;
  };
  const { flight: _, ...first } = await decide(plan, { draws, memory });
  expect(await told({ memory, stages: [32], onPart: () => {}, seed: 2 })).toBe(other);
  new Uint8Array(given[0]!).fill(0xff);
  expect(JSON.stringify(first)).toBe(once);
  expect(await told({ memory })).toBe(once);
});

test("decide() tells an answer at every stage, and the last is bit for bit what it is without stages", async () => {
  const parts: Decision[] = [];
  const flown: [number, number][] = [];
  const run: EnsembleRunner = (spec, from, to) => {
    if (spec.opening.samples > 0) flown.push([from, to]);
    return runHere(spec, from, to);
  };
  const staged = await told({ run, stages: [32, 100], onPart: (part) => parts.push(part) });
  expect(staged).toBe(await told({}));
  // every draw once
  expect(flown).toEqual([
    [0, 32],
    [32, 100],
    [100, draws],
  ]);
  expect(parts.map((part) => part.draws)).toEqual([32, 100]);
  for (const part of parts) {
    expect([part.overCut, part.toCut!.homeCut, part.drivers]).toEqual([null, null, []]);
    const alone = await decide(plan, { draws: part.draws });
    expect(part.settings).toEqual(alone.settings);
    expect(part.checks.map((c) => [c.code, c.verdict])).toEqual(alone.checks.map((c) => [c.code, c.verdict]));
    expect(part.coast.p50).toBe(alone.coast.p50);
    // of the rough flight
    expect(Math.abs(part.coast.nominal - alone.coast.nominal)).toBeLessThan(1e-3);
  }
});

test("decide() leaves out stages that come too late or fall back, and tells none where nothing varies", async () => {
  const seen: number[] = [];
  const onPart = (part: Decision) => seen.push(part.draws);
  await decide(plan, { draws: 64, stages: [0, 16, 16, 8, 64, 100], onPart });
  expect(seen).toEqual([16]);
  await decide({ ...calmPlan, spread: noSpread }, { draws: 64, stages: [16], onPart });
  expect(seen).toEqual([16]);
});

test("decide() gives the next draws out and waits for what onPart promises; where that rejects, it does too", async () => {
  const flown: number[] = [];
  const run: EnsembleRunner = (spec, from, to) => {
    if (spec.opening.samples > 0) flown.push(to);
    return runHere(spec, from, to);
  };
  let givenOut: number[] = [];
  const rest = async (): Promise<void> => {
    for (let i = 0; i < 20; i++) await Promise.resolve();
    givenOut = [...flown];
  };
  expect(await told({ run, stages: [32], onPart: rest })).toBe(await told({}));
  expect(givenOut).toEqual([32, draws]);
  const left = new Error("nobody waits any more");
  await expect(decide(plan, { draws, run, stages: [32], onPart: () => Promise.reject(left) })).rejects.toBe(left);
});

test("decide() rejects with what the runner rejects with, at any stage", async () => {
  let runs = 0;
  // the first draws, the four corners of the weather at home, the draws up to the next stage, and the rest
  for (const last of [1, 2, 5, 6, 7]) {
    runs = 0;
    const called = new Error(`called off at run ${last}`);
    const run: EnsembleRunner = async (spec, from, to) => {
      runs += 1;
      if (runs === last) throw called;
      return runHere(spec, from, to);
    };
    await expect(decide(plan, { draws: 64, stages: [16, 32], run })).rejects.toBe(called);
    expect(runs).toBeGreaterThanOrEqual(last);
  }
});

test("decide() waits for what each stage's onPart promises before the next is told", async () => {
  const events: string[] = [];
  const onPart = async ({ draws: n }: Decision): Promise<void> => {
    events.push(`told of ${n}`);
    await new Promise((resolve) => setTimeout(resolve, 5));
    events.push(`went on from ${n}`);
  };
  await decide(plan, { draws: 64, stages: [16, 32], onPart });
  expect(events).toEqual(["told of 16", "went on from 16", "told of 32", "went on from 32"]);
});

test("decide() that is called off hears of it once: nothing that was under way rejects with nobody to hear it", async () => {
  const unheard: unknown[] = [];
  const hear = (reason: unknown): void => {
    unheard.push(reason);
  };
  process.on("unhandledRejection", hear);
  const off = new Error("called off");
  let calledOff: () => void = () => undefined;
  const wait = new Promise<never>((_, reject) => {
    calledOff = () => reject(off);
  });
  // the weather at home is under way while landings are followed, with stages and without
  const run: EnsembleRunner = (spec, from, to) => (spec.opening.samples > 0 ? runHere(spec, from, to) : wait);
  const pause = async (): Promise<void> => {
    calledOff();
    throw off;
  };
  await expect(decide(plan, { draws: 64, run, pause })).rejects.toBe(off);
  await expect(decide(plan, { draws: 64, stages: [16], run, pause })).rejects.toBe(off);
  // an early stage's promise and the draws after it
  const onPart = () => Promise.reject(off);
  const second: EnsembleRunner = (spec, from, to) => (from === 16 ? Promise.reject(off) : runHere(spec, from, to));
  await expect(decide(plan, { draws: 64, stages: [16, 32], run: second, onPart })).rejects.toBe(off);
  await new Promise((resolve) => setTimeout(resolve, 10));
  process.off("unhandledRejection", hear);
  expect(unheard).toEqual([]);
});

test("decide() gives the coast's density with its quantiles, and none without spread", async () => {
  const { coast } = await decide(plan, { draws });
  const { from, step, values } = coast.density!;
  expect(step * values.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 2);
  const below = (time: number) => step * values.filter((_, i) => from + i * step < time).reduce((a, b) => a + b, 0);
  // the kernel's width and a step of the grid move some percent of the probability
  expect(Math.abs(below(coast.p50) - 0.5)).toBeLessThan(0.05);
  expect(below(coast.p95)).toBeGreaterThan(0.9);
  expect((await decide({ ...plan, spread: noSpread }, { draws })).coast.density).toBeNull();
});

test("decide() with the aligned model gives visibly other odds in wind: it is not the default", async () => {
  const clean = async (model?: "aligned" | "pitching") => {
    const { settings } = await decide(plan, { draws, ...(model ? { model } : {}) });
    return settings.map((s) => s.odds.clean);
  };
  const byDefault = await clean();
  expect(await clean("pitching")).toEqual(byDefault);
  const aligned = await clean("aligned");
  expect(Math.max(...byDefault.map((c, i) => Math.abs(c - aligned[i]!)))).toBeGreaterThan(0.1);
});

test("decide() hides every cut where the instructions were not confirmed", async () => {
  const { delay } = calmPlan.motor;
  if (delay.kind !== "adjustable") throw new Error("not adjustable");
  const inputs = { ...calmPlan, motor: { ...calmPlan.motor, delay: { ...delay, cuttingConfirmed: false } } };
  const { settings, toCut, checks } = await decide(inputs, { draws });
  expect(checks.find((c) => c.code === "instructions-not-confirmed")?.verdict).toBe("stop");
  for (const s of [...settings, toCut!]) {
    if (s.removed === 0) continue;
    expect(s.end).toBeNull();
    expect(s.depth).toBeNull();
    expect(s.spacers).toEqual([]);
  }
});

test("decide() judges the flyer's own setting beside the suggestion", async () => {
  const { choice, toCut, checks } = await decide({ ...calmPlan, choice: { delay: 10, reason: "habit" } }, { draws });
  expect(choice).toMatchObject({ setting: { delay: 10 }, reason: "habit" });
  expect(toCut!.delay).toBe(12);
  expect(checks.find((c) => c.code === "choice-below-least")?.verdict).toBe("look");
});

test("decide() without a delay has nothing to cut, and needs electronics", async () => {
  const plugged: DecisionInputs = { ...calmPlan, motor: { ...calmPlan.motor, delay: { kind: "none" } } };
  const { settings, toCut, checks, unopened } = await decide(plugged, { draws: 64 });
  expect([settings, toCut]).toEqual([[], null]);
  expect(checks.find((c) => c.code === "no-charge")?.verdict).toBe("stop");
  expect(unopened.odds).toBe(1);
});

test("decide() with the charge as back-up chooses a delay that seldom fires first", async () => {
  const { delay } = calmPlan.motor;
  const inputs: DecisionInputs = {
    ...calmPlan,
    motor: { ...calmPlan.motor, delay: { ...delay, longest: 16 } as typeof delay },
    recovery: { ...calmPlan.recovery, motorCharge: "backup", electronics: { fires: "apogee", delay: 0 } },
  };
  const { settings, toCut } = await decide(inputs, { draws });
  for (const s of settings) expect(s.firesFirst).not.toBeNull();
  // a longer delay fires first less often
  for (let i = 1; i < settings.length; i++)
    expect(settings[i]!.firesFirst!).toBeGreaterThanOrEqual(settings[i - 1]!.firesFirst!);
  const chosen = settings.find((s) => s.delay === toCut!.delay)!;
  expect(chosen.firesFirst!).toBeLessThanOrEqual(0.05);
  // 14 s would open cleaner, but one time in five before the electronics
  expect(settings[1]!.odds.clean).toBeGreaterThan(chosen.odds.clean);
  expect(toCut!.delay).toBe(16);
  expect(toCut!.why).toBe("after-electronics");
});

test("decide() says over-cut only where the element as it is opens too early", async () => {
  const cut = (seconds: number) => ({
    ...heavyPlan,
    cutSoFar: { removedDepth: seconds * perSecond, depthError: 0.1e-3 },
  });
  expect((await decide(heavyPlan, { draws: 64 })).overCut).toBeNull();
  expect((await decide(cut(1), { draws: 64 })).overCut).toBeNull();
  const { overCut, checks, toCut } = await decide(cut(4), { draws: 64 });
  expect(overCut!.delay).toBeCloseTo(10, 9);
  expect(checks.find((c) => c.code === "element-over-cut")?.verdict).toBe("look");
  expect(toCut!.homeCut).toBeNull();
});

test("decide() holds the maker's rules on cutting against an element that is already cut", async () => {
  const { delay } = heavyPlan.motor;
  const read = (cuttingConfirmed: boolean, mostRemoved: number): DecisionInputs => ({
    ...heavyPlan,
    motor: { ...heavyPlan.motor, delay: { ...delay, cuttingConfirmed, mostRemoved } as typeof delay },
    cutSoFar: { removedDepth: 2 * perSecond, depthError: 0.1e-3 },
  });
  const stops = async (inputs: DecisionInputs) =>
    (await decide(inputs, { draws: 64 })).checks.filter((c) => c.verdict === "stop").map((c) => c.code);
  expect((await decide(read(true, 8), { draws: 64 })).toCut!.removed).toBe(2);
  const good = await stops(read(true, 8));
  expect(await stops(read(false, 8))).toEqual(["instructions-not-confirmed", ...good]);
  expect(await stops(read(true, 1))).toEqual(["removal-within-limit", ...good]);
});

test("decide() finds the nominal and the drawn landings downwind or upwind of the same side", async () => {
  const windy = { ...calmPlan, wind: windFrom(6, 200) };
  const { unopened, flight, opened } = await decide(windy, { draws });
  expect(unopened.east).toBe(flight.events.landing!.position[0]);
  const { ellipse95 } = unopened;
  // the cloud lies about the nominal landing: its centre within its own half axis
  expect(Math.hypot(ellipse95!.east - unopened.east, ellipse95!.north - unopened.north)).toBeLessThan(ellipse95!.major);
  // under its canopy it drifts with the wind: towards 20 degrees
  const { position } = opened!.landing!;
  expect(position[1]).toBeGreaterThan(flight.events.apogee!.position[1]);
});
