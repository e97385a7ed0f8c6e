import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { candidate, openPlan } from "../../../test/shortlist.js";
import type { Candidate } from "./candidate.js";
import { judgeMotor } from "./judge-motor.js";
import type { JudgedMotor } from "./judged-motor.js";
import { type MotorRunner, shortlist } from "./shortlist.js";

const few = { draws: 32 };
const library: readonly Candidate[] = [
  candidate("b", 0.9),
  candidate("wide", 1, { diameter: 0.054 }),
  candidate("a", 1),
  candidate("weak", 0.1),
  candidate("c", 1.1),
  candidate("broken", 1, { thrust: { times: [0, 0], thrusts: [1, 1] } }),
];

describe("shortlist()", () => {
  test("tells every motor once, what needs no flight first", async () => {
    const seen: [string, JudgedMotor["outcome"], number, number][] = [];
    const list = await shortlist(library, openPlan, {
      ...few,
      onRow: ({ id, outcome }, done, of) => seen.push([id, outcome, done, of]),
    });
    expect(seen).toEqual([
      ["wide", "refused", 1, 6],
      ["weak", "refused", 2, 6],
      ["broken", "broken", 3, 6],
      ["b", "ranked", 4, 6],
      ["a", "ranked", 5, 6],
      ["c", "ranked", 6, 6],
    ]);
    expect(list.refused.map(({ code, motors }) => [code, motors.map(({ id }) => id)])).toEqual([
      ["too-wide-for-mount", ["wide"]],
      ["thrust-to-weight", ["weak"]],
    ]);
    expect(list.broken.map(({ id, issues }) => [id, issues[0]?.code])).toEqual([["broken", "time-not-rising"]]);
    expect(list).toMatchObject({ draws: 32, seed: 1, model: "pitching", aim: { by: "best-odds" } });
  });

  test("orders by the aim: more impulse flies higher", async () => {
    const by = async (aim: Parameters<typeof shortlist>[2]) =>
      (await shortlist(library, openPlan, { ...few, ...aim })).ranked.map(({ id }) => id);
    expect(await by({ aim: { by: "highest" } })).toEqual(["c", "a", "b"]);
    const { ranked } = await shortlist(library, openPlan, few);
    const height = ranked.find(({ id }) => id === "b")!.drawn.height.p50;
    expect(await by({ aim: { by: "nearest-height", height: height + 1 } })).toEqual(["b", "a", "c"]);
  });

  test("gives the same answer in any order, on any number of lanes, whoever is done first", async () => {
    const plain = await shortlist(library, openPlan, few);
    let asked = 0;
    const late: MotorRunner = async (spec, motor) => {
      const wait = 3 - (asked++ % 4);
      for (let i = 0; i < wait; i++) await Promise.resolve();
      return judgeMotor(spec, motor);
    };
    for (const lanes of [1, 2, 5])
      expect(await shortlist([...library].reverse(), openPlan, { ...few, run: late, lanes })).toEqual(plain);
    expect(await shortlist(library, openPlan, { ...few, seed: 2 })).not.toEqual({ ...plain, seed: 2 });
  });

  test("judges each motor by itself: what else the library holds changes nothing", async () => {
    const [alone] = (await shortlist([library[2]!], openPlan, few)).ranked;
    expect((await shortlist(library, openPlan, few)).ranked.find(({ id }) => id === "a")).toEqual(alone);
  });

  test("keeps as many motors under way as there are lanes", async () => {
    let under = 0;
    let most = 0;
    const run: MotorRunner = async (spec, motor) => {
      most = Math.max(most, ++under);
      const found = await judgeMotor(spec, motor);
      under -= 1;
      return found;
    };
    await shortlist(library, openPlan, { ...few, run, lanes: 2 });
    expect(most).toBe(2);
  });

  test("calls everything off where the runner rejects", async () => {
    let asked = 0;
    const run: MotorRunner = () => {
      asked += 1;
      return Promise.reject(new Error("called off"));
    };
    await expect(shortlist(library, openPlan, { ...few, run })).rejects.toThrow("called off");
    expect(asked).toBe(1);
  });

  test("has nothing to say of no motors", async () => {
    expect(await shortlist([], openPlan)).toMatchObject({ ranked: [], refused: [], broken: [], draws: 500 });
  });

  test("never ranks a motor that is refused, and keeps every ranked one within every limit", async () => {
    const motor = fc.record({
      scale: fc.double({ min: 0.05, max: 3, noNaN: true }),
      diameter: fc.constantFrom(0.029, 0.038, 0.054),
      certified: fc.constantFrom(true, false),
      fixed: fc.constantFrom(null, 6, 10),
    });
    const plans = fc.record({
      ceiling: fc.constantFrom(300, 600, 5000),
      certification: fc.constantFrom(0, 1, 3),
      leastClean: fc.constantFrom(0.2, 0.9),
    });
    await fc.assert(
      fc.asyncProperty(fc.array(motor, { minLength: 1, maxLength: 4 }), plans, async (made, asked) => {
        const motors = made.map(({ scale, diameter, certified, fixed }, i) => ({
          ...candidate(`m${i}`, scale, {
            diameter,
            ...(fixed === null ? {} : { delay: { kind: "fixed", seconds: fixed, clock: "burnout" } as const }),
          }),
          stated: { motorCertified: certified },
        }));
        const limits = { ...openPlan.limits, leastClean: asked.leastClean };
        const plan = {
          ...openPlan,
          limits,
          fieldLimits: { ceiling: asked.ceiling },
          stated: { certification: asked.certification },
        };
        const list = await shortlist(motors, plan, { draws: 16 });
        const refused = list.refused.flatMap(({ motors: group }) => group);
        const all = [...list.ranked, ...refused, ...list.broken].map(({ id }) => id);
        expect([...all].sort()).toEqual(motors.map(({ id }) => id).sort());
        for (const { id, drawn, figures, launch } of list.ranked) {
          const { motor: own, stated } = motors.find((each) => each.id === id)!;
          expect(own.diameter).toBeLessThanOrEqual(plan.rocket.mount.diameter);
          expect(stated.motorCertified).toBe(true);
          expect(figures.thrustToWeight).toBeGreaterThanOrEqual(3);
          expect(launch.guideExitSpeed).toBeGreaterThanOrEqual(10);
          expect(launch.marginAtGuideExit).toBeGreaterThanOrEqual(1);
          expect(drawn.height.p95).toBeLessThanOrEqual(asked.ceiling);
          expect(drawn.toCut?.odds.clean).toBeGreaterThanOrEqual(asked.leastClean);
          expect(drawn.toCut?.odds.holds).toBeGreaterThanOrEqual(limits.leastHolds);
        }
      }),
      { numRuns: 30 },
    );
  });
});
