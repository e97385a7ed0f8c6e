import { describe, expect, test } from "vitest";
import { decided } from "../../test/decided.js";
import { motor, plan } from "../../test/fixtures.js";

describe("decisionData()", () => {
  test("survives a structured clone and JSON as it is", async () => {
    const data = await decided();
    expect(structuredClone(data)).toEqual(data);
    expect(JSON.parse(JSON.stringify(data))).toEqual(data);
  });

  test("tells with what it was reckoned", async () => {
    const { given } = await decided();
    expect(given.elevation).toBe(210);
    expect(given.temperature).toBeCloseTo(285.15, 9);
    expect(given.pressure).toBeCloseTo(98_700, 6);
    expect(given.delayKind).toBe("adjustable");
    expect(given.removedDepth).toBeNull();
    expect(given.wind).toMatchObject({ kind: "ground", height: 2 });
    if (given.wind.kind === "ground") expect(((given.wind.from ?? 0) * 180) / Math.PI).toBeCloseTo(240, 9);
  });

  test("tells a calm, winds aloft, and a motor in hand", async () => {
    const calm = { ...plan, weather: {} };
    expect((await decided({ "plan.json": calm })).given.wind).toMatchObject({ speed: 0, from: null });
    const aloft = { aloft: [0, 150, 400].map((height) => ({ height: `${height} m`, wind: "3 m/s", from: "240 deg" })) };
    const inHand = { ...plan, motor: "bag-3.json", weather: aloft };
    const { given } = await decided({ "plan.json": inHand });
    expect(given.wind).toEqual({ kind: "aloft", heights: 3 });
    expect(given.removedDepth).toBeCloseTo(0.0024, 9);
  });

  test("has figures that are null where every flight lands before it opens", async () => {
    const { designation: _, ...other } = motor;
    const late = { ...other, delay: { kind: "fixed", seconds: "40 s" } };
    const { tool: _tool, choice: _choice, ...without } = plan;
    const data = await decided({ "demo-h150.motor.json": late, "plan.json": without });
    expect(data.given.delayKind).toBe("fixed");
    expect(Object.values(data.settings[0]?.openingSpeed ?? { none: 0 }).every((each) => each === null)).toBe(true);
    expect(data.opened).toBeNull();
  });
});
