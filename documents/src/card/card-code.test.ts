import { deflateSync, inflateSync } from "node:zlib";
import { burnOf, decide } from "@delaywright/engine";
import jsqr from "jsqr";
import { describe, expect, test } from "vitest";
import { bent, demoFiles, motor, motorInHand, plan, rocket } from "../../test/fixtures.js";
import { decisionData } from "../answer/decision-data.js";
import { utf8 } from "../file-source.js";
import { loadPlan, type PlanParts } from "../load-plan.js";
import { planToEngine } from "../to-engine.js";
import { fromBase45, toBase45 } from "./base45.js";
import { cardCode, LARGEST_CARD_CODE, readCardCode } from "./card-code.js";
import { codePath } from "./qr-path.js";
import { fromSigns, toSigns } from "./tokens.js";

/** The function itself: its types say that it stands one level deeper than it does here. */
const jsQR = jsqr as unknown as typeof jsqr.default;

async function partsOf(changed: Readonly<Record<string, unknown>> = {}): Promise<PlanParts> {
  const { parts, issues } = await loadPlan("plan.json", demoFiles(changed));
  if (parts === undefined) throw new Error(JSON.stringify(issues));
  return parts;
}

async function codeOf(parts: PlanParts) {
  const code = await cardCode(parts);
  if (code === null) throw new Error("the code does not fit");
  return code;
}

async function rebuilt(text: string): Promise<PlanParts> {
  const read = await readCardCode(text);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.parts;
}

/** Every figure of a decision from few draws; without files' names, which a code does not carry. */
async function figures(parts: PlanParts) {
  const made = planToEngine(parts);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  const decision = await decide(made.inputs, { draws: 64 });
  return decisionData({ ...made, decision, doubts: [] });
}

/** A test stand's curve: 900 noisy points of a regressive burn, from a generator of its own. */
function stand(): { time: number[]; newtons: number[] } {
  let state = 12345;
  const noise = (): number => {
    state = (1_103_515_245 * state + 12_345) % 2 ** 31;
    return state / 2 ** 31 - 0.5;
  };
  const time = Array.from({ length: 900 }, (_, index) => Number((index * 0.0025).toFixed(4)));
  const newtons = time.map((t, index) => {
    if (index === 0 || index === time.length - 1) return 0;
    const rise = Math.min(1, t / 0.04);
    const fall = Math.min(1, (2.2475 - t) / 0.15);
    return Number((rise * fall * (190 - 18 * t + 4 * noise())).toFixed(3));
  });
  return { time, newtons };
}

/** What a camera reads from the drawn dots. */
function photographed(path: string, size: number, scale = 3): string | undefined {
  const side = size * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row += 1)
      for (let column = Number(x) * scale; column < (Number(x) + Number(length)) * scale; column += 1)
        pixels.fill(0, 4 * (row * side + column), 4 * (row * side + column) + 3);
  return jsQR(pixels, side, side)?.data;
}

const taught = {
  rocket: rocket.name,
  motor: motor.name,
  drag: { factor: 1.08312, sd: 0.0512345 },
  impulse: { factor: 0.991234, sd: 0.0221234 },
  correlation: 0.412345,
  delay: {
    offset: "0.234567 s",
    offsetSd: "0.198765 s",
    rate: 1.01234,
    rateSd: 0.0212345,
    lot: 0.345678,
    lotSd: 0.912345,
    correlations: [-0.612345, -0.112345, -0.0512345],
    motorScale: 0.876543,
    degrees: 13,
    seconds: "0.75 s",
    fraction: 0.1,
    seen: 3,
    bounds: 1,
  },
  flights: { rocket: 2, motor: 4, both: 1 },
  accepted: "2026-05-02T19:30",
};
const inHand = { "plan.json": { ...plan, motor: "bag-3.json" } };
const text = (document: unknown): string =>
  `DELAYWRIGHT1:${toBase45(deflateSync(utf8(toSigns(JSON.stringify(document)))))}:`;
const inline = { ...plan, rocket, motor, tool: undefined, field: undefined };

describe("cardCode() and readCardCode()", () => {
  test.each([
    ["a motor type", {}],
    ["a motor in hand", inHand],
    ["what flights taught", { "plan.json": { ...plan, motor: "bag-3.json", learned: taught } }],
    [
      "a curve in a file of its own",
      {
        "demo-h150.motor.json": { ...motor, thrust: "c.csv" },
        "c.csv": "time (s),thrust (lbf)\n0,0\n0.1,43\n2,33\n2.1,0\n",
      },
    ],
    [
      "a rocket weighed ready to fly",
      {
        "demo.rocket.json": {
          ...bent(bent(rocket, ["massWithoutMotor"], undefined), ["balanceWithoutMotor"], undefined),
          massReady: "2.28 kg",
          balanceReady: "0.94 m",
          readyWith: "demo-h150.motor.json",
        },
      },
    ],
    [
      "a flyer and a club's rules",
      {
        "plan.json": { ...plan, flyer: "me.json", ruleSet: "none" },
        "me.json": { kind: "flyer", version: 1, name: "Demo flyer", certification: 1 },
      },
    ],
    ["names in any script", { "plan.json": { ...plan, name: 'Ünïcode "quoted" 火箭 \\ \u2028', note: "\u0007" } }],
  ])("give back the very same figures: %s", async (_, changed) => {
    const parts = await partsOf(changed);
    const code = await codeOf(parts);
    expect(code).toMatchObject({ thinned: null, notesLeftOut: false });
    expect(await figures(await rebuilt(code.text))).toEqual(await figures(parts));
  });

  test("carry each document as it was typed", async () => {
    const parts = await partsOf(inHand);
    const again = await rebuilt((await codeOf(parts)).text);
    expect(again.rocket.document).toEqual(parts.rocket.document);
    expect(again.tool?.document).toEqual(parts.tool?.document);
    expect(again.field?.document).toEqual(parts.field?.document);
    expect(again.plan.document.guide).toEqual(parts.plan.document.guide);
    expect(again.motorInHand?.document.readings).toEqual(motorInHand.readings);
  });

  test("a camera reads the code back, up to the largest that a card has", async () => {
    const { text: code } = await codeOf(await partsOf(inHand));
    const drawn = codePath(code, LARGEST_CARD_CODE);
    expect(photographed(drawn.path, drawn.size)).toBe(code);
    // ISO/IEC 18004: version 25, level M, holds 1451 letters; its side is 17 + 4 * 25 dots, and the border 4 on each side
    const full = `${"A1:".repeat(483)}ZZ`;
    const largest = codePath(full, LARGEST_CARD_CODE);
    expect([full.length, largest.size]).toEqual([1451, 17 + 100 + 8]);
    expect(photographed(largest.path, largest.size)).toBe(full);
    expect(() => codePath(`${full}Z`, LARGEST_CARD_CODE)).toThrow(RangeError);
  });

  test("the letters are the zlib format, as another implementation reads it", async () => {
    const { text: code } = await codeOf(await partsOf());
    const bytes = fromBase45(code.slice("DELAYWRIGHT1:".length, -1));
    const json = fromSigns(inflateSync(bytes ?? new Uint8Array()).toString("utf8"));
    expect(JSON.parse(json).rocket.name).toBe("Demo rocket 76");
  });

  test("long notes go before a point of the curve does", async () => {
    const parts = await partsOf({
      ...inHand,
      "plan.json": {
        ...inHand["plan.json"],
        note: Array.from({ length: 400 }, (_, i) => (i * i * 7919).toString(36)).join(" "),
      },
    });
    const code = await codeOf(parts);
    expect(code).toMatchObject({ thinned: null, notesLeftOut: true });
    const [ours, theirs] = [await figures(await rebuilt(code.text)), await figures(parts)];
    expect(ours).toEqual(theirs);
  });

  test("a curve that is too long is thinned, said so, and its impulse, burn time and average stay", async () => {
    const curve = stand();
    const parts = await partsOf({ "demo-h150.motor.json": { ...motor, thrust: curve } });
    const code = await codeOf(parts);
    const again = await rebuilt(code.text);
    expect(code.thinned?.from).toBe(900);
    expect(code.thinned?.to).toBe(again.motor.thrust.times.length);
    expect(again.motor.document.note).toContain("thinned from 900");
    const [whole, thin] = [burnOf(parts.motor.thrust), burnOf(again.motor.thrust)];
    expect(thin.totalImpulse).toBeCloseTo(whole.totalImpulse, 9);
    expect(thin.burnTime).toBeCloseTo(whole.burnTime, 9);
    expect(thin.averageThrust).toBeCloseTo(whole.averageThrust, 9);
    expect(thin.peak).toBe(whole.peak);
    const [exact, near] = [await figures(parts), await figures(again)];
    expect(near).not.toEqual(exact);
    // the noise of a test stand hardly matters to a flight: the figures differ in the digits that a card does not show
    expect(Math.abs((near.flight.apogee?.height ?? 0) - (exact.flight.apogee?.height ?? 0))).toBeLessThan(0.5);
    expect(near.toCut?.delay).toBe(exact.toCut?.delay);
  });

  test("a plan that fits no code is told so", async () => {
    const points = Array.from({ length: 190 }, (_, i) => [`${(i + 1) * 1.37} mm`, `${((i * 7919) % 97) + 0.123} mm`]);
    const fins = [
      {
        shape: "polygon",
        count: 3,
        at: "1.26 m",
        thickness: "4 mm",
        points: [["0 mm", "0 mm"], ...points, ["270 mm", "0 mm"]],
      },
    ];
    expect(await cardCode(await partsOf({ "demo.rocket.json": { ...rocket, fins } }))).toBeNull();
  });
});

describe("readCardCode() of what anybody may send", () => {
  const codes = async (input: string): Promise<string[]> => {
    const read = await readCardCode(input);
    return read.ok ? [] : read.issues.map((issue) => `${issue.path} ${issue.code}`.trim());
  };

  test("white space around it and line breaks within do no harm, nor small letters", async () => {
    const { text: code } = await codeOf(await partsOf());
    const wrapped = `\n ${code.slice(0, 300)}\r\n${code.slice(300).toLowerCase()} \n`;
    expect(await codes(wrapped)).toEqual([]);
  });

  test.each([
    ["nothing", "", "no-card-code"],
    ["another text", "https://example.org", "no-card-code"],
    ["a later version", "DELAYWRIGHT2:AB:", "newer-card-code"],
    ["no end", "DELAYWRIGHT1:BB8", "card-code-damaged"],
    ["letters that are none", "DELAYWRIGHT1:GGW:", "card-code-damaged"],
    ["bytes that are no zlib", "DELAYWRIGHT1:BB8:", "card-code-damaged"],
    ["more than a QR code holds", `DELAYWRIGHT1:${"0".repeat(5000)}:`, "card-code-too-long"],
    ["far more than that", `DELAYWRIGHT1:${"0".repeat(5_000_000)}:`, "card-code-too-long"],
    ["a bomb", `DELAYWRIGHT1:${toBase45(deflateSync(Buffer.alloc(2_000_000, 32)))}:`, "card-code-too-large"],
    ["no JSON", text("x"), "wrong-type"],
  ])("%s is refused", async (_, input, code) => {
    expect(await codes(input)).toEqual([code]);
  });

  test("each letter that is changed is noticed", async () => {
    const { text: code } = await codeOf(await partsOf());
    for (let at = 20; at < code.length - 1; at += 97) {
      const other = code[at] === "7" ? "8" : "7";
      const read = await readCardCode(`${code.slice(0, at)}${other}${code.slice(at + 1)}`);
      expect(read.ok, `letter ${at}`).toBe(false);
    }
  });

  test("a code that leads to files is refused", async () => {
    expect(await codes(text({ ...inline, rocket: "../secret.rocket.json" }))).toEqual(["rocket file-missing"]);
    expect(await codes(text({ ...inline, motor: { ...motor, thrust: "/etc/curve.csv" } }))).toEqual([
      "motor.thrust file-missing",
    ]);
  });

  test("strange keys are refused and touch nothing", async () => {
    const json = JSON.stringify(inline).replace(
      "{",
      '{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},',
    );
    const hostile = `DELAYWRIGHT1:${toBase45(deflateSync(utf8(json)))}:`;
    expect(await codes(hostile)).toEqual(
      expect.arrayContaining(["__proto__ key-refused", "constructor unknown-field"]),
    );
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
  });

  test("a document of another kind, and wrong fields, are told as in a file", async () => {
    expect(await codes(text(rocket))).toEqual(["kind wrong-kind"]);
    expect(await codes(text({ ...inline, guide: { travel: "1.8" } }))).toEqual(["guide.travel unit-missing"]);
  });

  test("signs that stand for nothing are refused", async () => {
    const broken = `DELAYWRIGHT1:${toBase45(deflateSync(utf8('{"kind":"plan\u0002~\u0002~"}')))}:`;
    expect((await codes(broken)).length).toBeGreaterThan(0);
  });
});

describe("toSigns()", () => {
  test.each(["", '{"mass":"50 g"}', '"mass":"mass":"', JSON.stringify(JSON.stringify(plan)), '[[["],["'])(
    "is undone by fromSigns(), whatever the JSON: %#",
    (json) => expect(fromSigns(toSigns(json))).toBe(json),
  );
});
