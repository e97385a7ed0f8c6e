import { expect, test } from "vitest";
import { windFrom } from "../../reference/trajectories/inputs.js";
import { calmPlan, plan } from "../../test/plan.js";
import { decide } from "./decide.js";
import type { DecisionInputs } from "./inputs.js";
import { judgeSettings, runHere } from "./odds.js";
import { settingsOf, uncutSetTo } from "./settings.js";
import { weatherWindow } from "./weather-window.js";

const degree = Math.PI / 180;
const draws = 256;
const winds = [0, 2, 4, 6, 8, 10];

/** The calm plan in a wind of so many metres a second from the west. */
function inWind(speed: number): DecisionInputs {
  return { ...calmPlan, wind: { ...windFrom(speed, 270), gradientHeight: 300 } };
}

test("weatherWindow(): today's point is what judging today gives, and where the unopened rocket comes down today's landing", async () => {
  const leaning = { ...inWind(3), guide: { ...calmPlan.guide, tilt: 2 * degree, toward: 270 * degree } };
  const window = await weatherWindow(leaning, { delay: 12, winds: [1, 3, 5], tilts: [0, 2 * degree], draws });
  const setting = settingsOf(leaning).find((s) => s.delay === 12)!;
  const { settings, flight } = await judgeSettings(leaning, [setting], { draws, seed: 1, flight: {}, run: runHere });
  expect(window.clean[1]![1]).toBe(settings[0]!.odds.clean);
  expect(window.holds[1]![1]).toBe(settings[0]!.odds.holds);
  expect(window.toward).toBe(270 * degree);
  const { position } = flight.events.landing!;
  // flown at the tolerance of a rough flight
  expect(Math.abs(window.landings[1]!.east - position[0])).toBeLessThan(0.2);
  expect(Math.abs(window.landings[1]!.north - position[1])).toBeLessThan(0.2);
});

test("weatherWindow(): at the edge a direct decide() in that wind gives the least odds", async () => {
  const { edges, clean } = await weatherWindow(inWind(3), { delay: 12, winds, tilts: [0], draws });
  const edge = edges[0]!;
  const place = winds.findIndex((wind) => wind > edge);
  expect(clean[0]![place - 1]!).toBeGreaterThanOrEqual(0.8);
  const { settings } = await decide(inWind(edge), { draws });
  const { odds } = settings.find((s) => s.delay === 12)!;
  // a straight line between points 2 m/s apart, and both odds are drawn with the same draws
  expect(Math.min(odds.clean - 0.8, odds.holds - 0.99)).toBeGreaterThan(-0.06);
  expect(Math.min(odds.clean - 0.8, odds.holds - 0.99)).toBeLessThan(0.06);
});

test("weatherWindow(): from an upright guide a stronger wind never makes the odds better", async () => {
  const { clean, holds } = await weatherWindow(inWind(3), { delay: 12, winds, tilts: [0], draws });
  for (let i = 1; i < winds.length; i++) {
    expect(clean[0]![i]!, `clean at ${winds[i]} m/s`).toBeLessThanOrEqual(clean[0]![i - 1]! + 0.01);
    expect(holds[0]![i]!, `holds at ${winds[i]} m/s`).toBeLessThanOrEqual(holds[0]![i - 1]! + 0.01);
  }
});

test("weatherWindow() marks the first wind where the odds are too low at once, and none where they never are", async () => {
  const hopeless = await weatherWindow(inWind(3), { delay: 4, winds: [1, 3], tilts: [0, 0.05], draws: 64 });
  expect(hopeless.edges).toEqual([1, 1]);
  const { limits } = calmPlan;
  const undemanding = { ...inWind(3), limits: { ...limits, leastClean: 0, leastHolds: 0 } };
  expect((await weatherWindow(undemanding, { delay: 12, winds: [1, 3], tilts: [0], draws: 64 })).edges).toEqual([null]);
});

test("weatherWindow() leans an upright guide towards the middle of the field's sector, over north too", async () => {
  const sector = (from: number, to: number) => ({
    ...inWind(3),
    fieldLimits: { tiltSector: { from: from * degree, to: to * degree } },
  });
  const lean = async (inputs: DecisionInputs) =>
    weatherWindow(inputs, { delay: 12, winds: [0], tilts: [0, 5 * degree], draws: 16 });
  const east = await lean(sector(60, 120));
  expect(east.toward).toBeCloseTo(90 * degree, 12);
  // an upright flight drifts little; one that leans east comes down there
  expect(east.landings[1]!.east).toBeGreaterThan(east.landings[0]!.east + 50);
  expect((await lean(sector(330, 30))).toward).toBeCloseTo(0, 12);
  expect((await lean({ ...inWind(3), guide: { ...calmPlan.guide, toward: 1 } })).toward).toBe(1);
});

test("weatherWindow() takes the reading of the motor in hand, and a delay that no tool makes", async () => {
  const cutSoFar = { removedDepth: 2 * 0.79375e-3, depthError: 1e-3 };
  const asked = { delay: 12, winds: [1], tilts: [0], draws: 64 };
  const read = await weatherWindow({ ...calmPlan, cutSoFar }, asked);
  const cut = await weatherWindow(calmPlan, asked);
  expect(read.clean[0]![0]!).toBeLessThan(cut.clean[0]![0]!);
  const between = await weatherWindow(plan, { ...asked, delay: 11.3, winds: [5] });
  const { settings } = await judgeSettings(plan, [uncutSetTo(plan, 11.3)], {
    draws: 64,
    seed: 1,
    flight: {},
    run: runHere,
  });
  expect(between.clean[0]![0]).toBeCloseTo(settings[0]!.odds.clean, 9);
});

test("weatherWindow() asks a back-up charge how seldom it fires first, in place of a clean opening", async () => {
  const backup: DecisionInputs = {
    ...inWind(1),
    recovery: { ...calmPlan.recovery, motorCharge: "backup", electronics: { fires: "apogee", delay: 0 } },
  };
  const late = await weatherWindow(backup, { delay: 14, winds: [1], tilts: [0], draws: 64 });
  const { settings } = await decide(backup, { draws: 64 });
  const setting = settings.find((s) => s.delay === 14)!;
  const good = setting.firesFirst! <= 0.05 && setting.odds.holds >= 0.99;
  expect(late.edges).toEqual([good ? null : 1]);
  const early = await weatherWindow(backup, { delay: 6, winds: [1], tilts: [0], draws: 64 });
  expect(early.edges).toEqual([1]);
});

test("weatherWindow() tells how far it is, and passes a refusal on at once", async () => {
  const told: [number, number][] = [];
  const asked = { delay: 12, winds: [0, 3], tilts: [0, 0.1], draws: 16 };
  await weatherWindow(calmPlan, { ...asked, onProgress: (done, of) => told.push([done, of]) });
  expect(told).toEqual([
    [1, 4],
    [2, 4],
    [3, 4],
    [4, 4],
  ]);
  let runs = 0;
  const off = new Error("called off");
  const run: typeof runHere = async (spec, from, to) => {
    runs += 1;
    if (runs === 2) throw off;
    return runHere(spec, from, to);
  };
  await expect(weatherWindow(calmPlan, { ...asked, run })).rejects.toBe(off);
  expect(runs).toBe(2);
});

/** The odds ask for nothing, so that rules alone end it. */
const rulesAlone: DecisionInputs = {
  ...inWind(3),
  limits: { ...calmPlan.limits, leastClean: 0, leastHolds: 0 },
};

test("weatherWindow(): the odds end it where they fall below their least before any rule says stop", async () => {
  const demanding = { ...inWind(3), limits: { ...calmPlan.limits, leastClean: 0.95 } };
  const { edges, ends } = await weatherWindow(demanding, { delay: 12, winds, tilts: [0], draws });
  expect(ends).toEqual([{ wind: edges[0], beyond: false, by: "clean", check: null }]);
  const most = (await decide(inWind(edges[0]!), { draws })).checks.filter(({ verdict }) => verdict === "stop");
  expect(most).toEqual([]);
});

test("weatherWindow(): a rule ends it where it says stop before, and there decide() says the same", async () => {
  const small: DecisionInputs = {
    ...inWind(3),
    fieldLimits: { boundary: { kind: "circle", east: 0, north: 0, radius: 220 } },
  };
  const { edges, ends } = await weatherWindow(small, { delay: 12, winds, tilts: [0], draws });
  const end = ends[0]!;
  expect(end).toMatchObject({
    beyond: false,
    by: "rule",
    check: { id: "landing-inside", verdict: "stop", limit: 0.5 },
  });
  expect(end.wind!).toBeLessThan(edges[0]!);
  const outside = async (wind: number) => {
    const { checks } = await decide({ ...small, wind: inWind(wind).wind }, { draws });
    return checks.find(({ id }) => id === "landing-inside")!;
  };
  // half as many draws are followed down at every other wind: a share of one half is good to some 6 %
  expect((await outside(end.wind! - 0.7)).verdict).not.toBe("stop");
  expect((await outside(end.wind! + 0.7)).verdict).toBe("stop");
});

test("weatherWindow(): the safety code's wind limit ends what the odds would bear, a club's own limit before", async () => {
  const asked = { delay: 12, winds: [0, 4, 8, 12], tilts: [0], draws: 16 };
  const fast = { ...rulesAlone, guide: { ...rulesAlone.guide, travel: 8 } };
  const code = await weatherWindow(fast, asked);
  expect(code.edges).toEqual([null]);
  // 20 mph: High Power Rocket Safety Code, wind
  expect(code.ends[0]).toMatchObject({ wind: expect.closeTo(8.94, 1), by: "rule", check: { id: "wind-limit" } });
  const club = { name: "Club", limits: { "wind-limit": { stop: 3 } } };
  const own = await weatherWindow({ ...fast, ruleSet: club }, asked);
  expect(own.ends[0]).toMatchObject({ wind: expect.closeTo(3, 1), check: { id: "wind-limit", limit: 3 } });
  const off = { name: "Club", base: "none" as const, limits: { "guide-exit-against-wind": "off" as const } };
  const free = await weatherWindow({ ...fast, ruleSet: off }, asked);
  expect(free.ends).toEqual([{ wind: 12, beyond: true, by: null, check: null }]);
});

test("weatherWindow(): a lean beyond what a club allows is good in no wind, and the rule is named", async () => {
  const club = { name: "Club", limits: { "tilt-limit": { stop: 5 * degree } } };
  const asked = { delay: 12, winds: [0, 4], tilts: [0, 10 * degree], draws: 16 };
  const { ends } = await weatherWindow({ ...rulesAlone, ruleSet: club }, asked);
  expect(ends[0]?.check?.id).not.toBe("tilt-limit");
  expect(ends[1]).toMatchObject({ wind: null, beyond: false, by: "rule", check: { id: "tilt-limit" } });
});

test("weatherWindow(): a club that says stop to fast openings ends it where nine in ten are no slower", async () => {
  const club = { name: "Club", limits: { "opening-speed": { stop: 1 } } };
  const wild = { ...rulesAlone, limits: { ...rulesAlone.limits, openingSpeed: 12 }, ruleSet: club };
  const asked = { delay: 12, winds: [0, 4, 8], tilts: [0], draws: 64 };
  const { ends } = await weatherWindow(wild, asked);
  expect(ends[0]?.check).toMatchObject({ id: "opening-speed", unit: "m/s", limit: 12 });
  expect(ends[0]?.check?.value).toBeGreaterThanOrEqual(12);
});

test("weatherWindow() finds a keep-off zone into which only a middling wind carries it", async () => {
  const zone = { kind: "circle", east: 1250, north: 0, radius: 300 } as const;
  const beside: DecisionInputs = { ...rulesAlone, fieldLimits: { keepOff: [zone] } };
  const find = async (row: readonly number[]) =>
    (await weatherWindow(beside, { delay: 12, winds: row, tilts: [0], draws: 128 })).ends[0];
  expect(await find([0, 8])).toMatchObject({ beyond: true, by: null });
  const end = await find([0, 1, 2, 3, 4, 5, 6, 7, 8]);
  expect(end).toMatchObject({ by: "rule", check: { id: "keep-off-zones" } });
  expect(end!.wind!).toBeGreaterThan(0.5);
  expect(end!.wind!).toBeLessThan(3);
});
