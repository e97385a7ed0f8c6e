import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { fly } from "../src/flight/fly.js";
import { integrate } from "../src/flight/integrate.js";
import { attitudeAlong } from "../src/flight/rigid/attitude.js";
import { aeroRows, airRows, type RigidBody, rigidBody } from "../src/flight/rigid/body.js";
import { builtUpRows, dragMachRows, slowMach, slowMachRows } from "../src/flight/rigid/drag-rows.js";
import { rigidRates, rigidSize } from "../src/flight/rigid/rates.js";
import { benchInputs } from "./reference-plan.js";

const tolerance = 1e-9;
const scales = [100, 100, 100, 10, 10, 10, 1, 1, 1, 1, 10, 10, 10];

/** A rigid body as it comes off the guide, its tables filled. */
export interface RigidStart {
  readonly body: RigidBody;
  readonly time: number;
  readonly state: Float64Array;
}

/** The reference plan's rocket at the end of its guide. */
export function rigidStart(): RigidStart {
  const { model, events } = fly(benchInputs, { model: "rigid" });
  const exit = events.guideExit;
  if (exit === null) throw new Error("it never left the guide");
  const state = new Float64Array(rigidSize);
  state.set(exit.position, 0);
  state.set(exit.velocity, 3);
  state.set(attitudeAlong(model.guideDirection), 6);
  return { body: rigidBody(model), time: exit.time, state };
}

/** Where it is at the top. */
export interface RigidTop {
  readonly time: number;
  readonly state: Float64Array;
  readonly calls: number;
}

/** Flies from the guide's end to the top: what the C side does, too. */
export function rigidToTop({ body, time: start, state: begun }: RigidStart): RigidTop {
  let time = start;
  let state = begun;
  let calls = 0;
  for (const stretch of body.model.stretches) {
    if (stretch.to <= time) continue;
    const run = integrate(rigidRates(body, stretch), state, time, stretch.to, {
      tolerance,
      scales,
      events: [{ name: "top", value: (_, y) => y[5]!, direction: -1, stops: true }],
    });
    calls += run.calls;
    ({ time, state } = run);
    if (run.ended === "event") return { time, state, calls };
  }
  throw new Error("it has no top");
}

/** Everything that `rigid.c` needs: a line an entry, name, count, that many numbers with all their digits. */
function dumpRigid({ body, time, state }: RigidStart): string {
  const { model } = body;
  const { rocket, motor, wind } = model.inputs;
  const rows = builtUpRows(model);
  if (rows === null || wind.kind !== "power") throw new Error("the C side flies a built-up drag in a power-law wind");
  const [g0, g1, g2] = [0, 1e4, 2e4].map((z) => model.gravityAt(z)) as [number, number, number];
  const bend = (g2 - 2 * g1 + g0) / 2e8;
  const top = 6000;
  body.air.fillTo(top);
  for (const table of [body.aero, rows.burning, rows.coasting, rows.slowBurning, rows.slowCoasting]) table.fillTo(2);
  const layout = (table: { from: number; step: number }, width: number, count: number) => [
    table.from,
    table.step,
    count,
    width,
  ];
  const entries: Readonly<Record<string, ArrayLike<number>>> = {
    body: [
      model.area,
      g0,
      (g1 - g0) / 1e4 - bend * 1e4,
      bend,
      rocket.mount.motorAftAt,
      motor.loadedMass,
      motor.propellantMass,
      model.totalImpulse,
      model.motorPlace.centre,
      model.motorPlace.gyration,
      model.airframe.mass,
      model.airframe.balance,
      model.airframe.inertia,
      body.rollInertia.airframe,
      body.rollInertia.motorGyration,
      model.bodyLift === null ? 0 : model.bodyLift.area * model.bodyLift.cdc,
      model.bodyLift?.at ?? 0,
      model.options.compressibility ? 1 : 0,
      slowMach,
    ],
    wind: [wind.east, wind.north, 1 / wind.referenceHeight, wind.exponent, Math.min(wind.gradientHeight, 1e9)],
    partCount: [model.parts.length],
    rolls: body.rolls.flatMap(({ forcing, damping }) => [forcing, damping]),
    dragNodes: rows.nodes,
    dragWeights: rows.weights,
    airRows: layout(airRows, body.air.width, body.air.count),
    aeroRows: layout(aeroRows, body.aero.width, body.aero.count),
    dragRows: layout(dragMachRows, 4, rows.burning.count),
    slowRows: layout(slowMachRows, 4, rows.slowBurning.count),
    air: body.air.values,
    aero: body.aero.values,
    burning: rows.burning.values,
    coasting: rows.coasting.values,
    slowBurning: rows.slowBurning.values,
    slowCoasting: rows.slowCoasting.values,
    stretches: model.stretches.flatMap((x) => [x.from, x.to, x.thrust, x.slope, x.impulse, x.thrusting ? 1 : 0]),
    start: [time],
    state,
    tolerance: [tolerance],
  };
  return Object.entries(entries)
    .map(([name, values]) => `${[name, values.length, ...Array.from(values)].join(" ")}\n`)
    .join("");
}

/** Flights a second of each repeat, and the top, from the compiled C side. */
export function rigidInC(
  program: string,
  start: RigidStart,
  folder: string,
): (repeats: number) => RigidTop & { readonly rates: readonly number[] } {
  const inputs = join(folder, "rigid.txt");
  writeFileSync(inputs, dumpRigid(start));
  return (repeats) => {
    const printed = execFileSync(program, [inputs, String(repeats)], { encoding: "utf8" });
    const row = (name: string): number[] => {
      const line = printed.split("\n").find((l) => l.startsWith(`${name} `));
      if (line === undefined) throw new Error(`the C side printed no ${name}`);
      return line.split(" ").slice(2).map(Number);
    };
    const [time, ...state] = row("top");
    return { rates: row("rates"), calls: row("calls")[0]!, time: time!, state: Float64Array.from(state) };
  };
}

/** Largest difference between both sides at the top, relative, or absolute below 1. */
export function topsApart(one: RigidTop, other: RigidTop): number {
  const pairs = [[one.time, other.time], ...Array.from(one.state, (value, i) => [value, other.state[i]!])];
  return Math.max(...pairs.map(([a, b]) => Math.abs(a! - b!) / Math.max(1, Math.abs(a!))));
}

export interface RigidFigures {
  /** Processor time of one flight to the ground at the default tolerance, everything prepared anew [s]. */
  readonly flight: number;
  /** From the guide's end to the top, flights a second: the step alone. */
  readonly typescript: number;
  readonly c: number | null;
  readonly apart: number | null;
  readonly calls: number;
}

/** What takes turns with the other contenders; `fly` is asked for a whole flight. */
export function rigidContender(
  program: string | null,
  folder: string,
  rate: (count: number, run: () => unknown) => number,
) {
  const start = rigidStart();
  const runC = program === null ? null : rigidInC(program, start, folder);
  const top = rigidToTop(start);
  let [flight, typescript] = [0, 0];
  let c: number | null = null;
  let apart: number | null = null;
  return {
    round: () => {
      for (let i = 0; i < 10; i++) {
        flight = Math.max(
          flight,
          rate(4, () => [1, 2, 3, 4].map(() => fly(benchInputs, { model: "rigid" }))),
        );
        typescript = Math.max(
          typescript,
          rate(4, () => [1, 2, 3, 4].map(() => rigidToTop(start))),
        );
      }
      if (runC === null) return;
      const run = runC(40);
      c = Math.max(c ?? 0, ...run.rates);
      apart = topsApart(top, run);
    },
    figures: (): RigidFigures => ({ flight: 1 / flight, typescript, c, apart, calls: top.calls }),
  };
}
