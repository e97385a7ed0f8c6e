import { type DecisionInputs, fly, stabilityOverFlight } from "@delaywright/engine";
import { beforeAll, describe, expect, test } from "vitest";
import { plan } from "../../test/fixtures.js";
import { demoInputs, steadinessOf } from "../../test/flown.js";
import { stabilityData } from "./stability-data.js";

let inputs: DecisionInputs;

beforeAll(async () => {
  inputs = await demoInputs();
});

describe("stabilityData()", () => {
  test("tells each moment as the engine's columns have it, in the order of time", () => {
    const flight = fly(inputs, { model: "rigid" });
    const { moments, columns } = stabilityData(flight, { rows: 900 });
    expect(moments.map(({ which }) => which)).toEqual(["guide-exit", "fastest", "burnout", "top"]);
    const [exit, fastest, burnout, top] = moments;
    expect(exit?.time).toBe(flight.events.guideExit?.time);
    expect(exit?.margin).toBe(columns.margin[0]);
    expect(top?.frequency).toBe(columns.frequency.at(-1));
    // on the guide there is no angle: it is the airflow's as soon as it is let go
    expect(exit?.angleOfAttack).toBeCloseTo(stabilityOverFlight(flight).guideExitAngle?.mean ?? 0, 3);
    expect(exit?.angleOfAttack).toBeGreaterThan(0.01);
    expect(burnout?.angleOfAttack).toBe(flight.events.burnout?.angleOfAttack);
    // the rocket 1.95 kg, the empty motor 330 g - 160 g
    expect(top?.mass).toBeCloseTo(1.95 + 0.33 - 0.16, 12);
    // burnout where 5 % of the most thrust are left, 9.5 N at 2.07625 s: 0.5 * 9.5 N * 0.02375 s of 308.6 N s are to come
    expect(burnout?.mass).toBeCloseTo(2.12 + (0.16 * 0.5 * 9.5 * 0.02375) / 308.6, 5);
    // the default model flies nose-first by then, the rigid one does not
    expect(stabilityData(fly(inputs)).moments.at(-1)?.angleOfAttack).toBeNull();
    expect(top?.angleOfAttack).toBe(flight.events.apogee?.angleOfAttack);
    // ten times as many rows move no figure
    const finer = stabilityData(flight, { rows: 9000 }).moments;
    expect((fastest?.frequency ?? 0) / (finer[1]?.frequency ?? 1)).toBeCloseTo(1, 4);
    expect((fastest?.dampingRatio ?? 0) / (finer[1]?.dampingRatio ?? 1)).toBeCloseTo(1, 3);
  });

  test("reckons a high gust from the turbulence's specification", async () => {
    const { weather } = plan as unknown as { readonly weather: object };
    const windy = await demoInputs({ "plan.json": { ...plan, weather: { ...weather, wind: "4 m/s" } } });
    const flight = fly(windy);
    const { guideExitAngle } = stabilityData(flight);
    // MIL-F-8785C 3.7.3.4: 0.1 u / (0.177 + 0.000823 h)^0.4, h in feet, 10 at least; u 20 ft up
    const [east, north] = flight.model.windAt(6.096);
    const wind = Math.hypot(east, north);
    expect(wind).toBeGreaterThan(4);
    const feet = Math.max(10, (flight.events.guideExit?.position[2] ?? 0) / 0.3048);
    expect(guideExitAngle?.gust).toBeCloseTo((2 * 0.1 * wind) / (0.177 + 0.000823 * feet) ** 0.4, 12);
    expect(guideExitAngle?.highest).toBe(stabilityOverFlight(flight, guideExitAngle ?? {}).guideExitAngle?.highest);
  });

  test("has no moments of a rocket that never leaves the guide, and is plain data", () => {
    const heavy = { ...inputs, rocket: { ...inputs.rocket, mass: 80 } };
    const stayed = stabilityData(fly(heavy));
    expect(stayed).toMatchObject({ moments: [], guideExitAngle: null, findings: [] });
    expect(JSON.parse(JSON.stringify(stabilityData(fly(inputs))))).toEqual(stabilityData(fly(inputs)));
  });
});

describe("steadinessData()", () => {
  test("keeps each flight's swing up to where it flies nose-first, and its largest angles", () => {
    const { quick, rigid, rough, stability } = steadinessOf(inputs);
    expect([quick.model, rigid.model, rough.model]).toEqual(["pitching", "rigid", "rigid"]);
    expect(quick.time.at(-1)).toBeLessThanOrEqual(quick.handOver ?? 0);
    expect(rigid.handOver).toBeNull();
    expect(rigid.time.at(-1)).toBeCloseTo(stability.columns.time.at(-1) ?? 0, 9);
    expect(rigid.coast).toBeCloseTo((rigid.top?.time ?? 0) - (stability.moments[2]?.time ?? 0), 12);
    // the guide holds it in the default model until the aft fitting leaves
    expect(quick.time[0]).toBeGreaterThan(stability.moments[0]?.time ?? 0);
    expect(Math.min(...quick.angleOfAttack.slice(0, 5))).toBeGreaterThan(0.02);
    const { afterExit } = rigid;
    const seen = rigid.angleOfAttack.filter((_, i) => (rigid.time[i] ?? 0) <= (rigid.time[0] ?? 0) + 2);
    expect(afterExit?.angle).toBe(Math.max(...seen));
    expect(afterExit?.left).toBeLessThan(afterExit?.angle ?? 0);
    expect(rigid.angleOfAttack[rigid.time.indexOf(afterExit?.time ?? -1)]).toBe(afterExit?.angle);
  });

  test("flies the same gusts for the same seed and others for another, and none in a calm", async () => {
    const [first, again, other] = [steadinessOf(inputs, 7), steadinessOf(inputs, 7), steadinessOf(inputs, 8)];
    expect(again).toEqual(first);
    expect(other.rigid).toEqual(first.rigid);
    expect(other.rough.angleOfAttack).not.toEqual(first.rough.angleOfAttack);
    expect(first.calm).toBe(false);
    const { weather } = plan as unknown as { readonly weather: object };
    const still = await demoInputs({ "plan.json": { ...plan, weather: { ...weather, wind: "0 m/s" } } });
    const calm = steadinessOf(still);
    expect(calm.calm).toBe(true);
    expect(calm.rough.top?.height).toBeCloseTo(calm.rigid.top?.height ?? 0, 4);
  });
});
