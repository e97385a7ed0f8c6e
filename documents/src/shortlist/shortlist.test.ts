import { shortlist } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { demoFiles, motor, plan } from "../../test/fixtures.js";
import { motorRowData, shortlistData } from "../answer/shortlist-data.js";
import { loadAny } from "../load.js";
import { loadPlan } from "../load-plan.js";
import { motorShelf } from "./motor-shelf.js";
import { openPlan } from "./open-plan.js";

async function asked(changed: Readonly<Record<string, unknown>>, names: readonly string[]) {
  const files = demoFiles(changed);
  const { parts, issues } = await loadPlan("plan.json", files);
  if (parts === undefined) throw new Error(JSON.stringify(issues));
  const loaded = await Promise.all(names.map(async (name) => [name, await loadAny(name, files)] as const));
  return { opened: openPlan(parts), shelf: motorShelf(parts, loaded) };
}

const { designation: _, ...unlabelled } = motor;

describe("openPlan()", () => {
  test("leaves out the motor, its choice and its cut", async () => {
    const { opened } = await asked({ "plan.json": { ...plan, motor: "bag-3.json", choice: { delay: "9 s" } } }, []);
    expect(opened.ok).toBe(true);
    if (!opened.ok) return;
    for (const key of ["motor", "choice", "cutSoFar"]) expect(opened.plan).not.toHaveProperty(key);
    for (const key of ["motor", "designation", "motorInHand", "label"]) expect(opened.context).not.toHaveProperty(key);
    expect(opened.context.rocket).toBe("Demo rocket 76");
  });

  test("does not mind a motor of its own that cannot fly, and minds a guide that is too short", async () => {
    const wide = { "demo-h150.motor.json": { ...motor, diameter: "54 mm" } };
    expect((await asked(wide, [])).opened.ok).toBe(true);
    const short = { ...plan, guide: { rail: "0.2 m", stop: "150 mm" } };
    const { opened } = await asked({ ...wide, "plan.json": short }, []);
    expect(opened.ok ? [] : opened.issues.map(({ code }) => code)).toEqual(["fitting-beyond-rail"]);
  });
});

describe("motorShelf()", () => {
  test("takes motors, passes over what is none, and keeps what is wrong with its issues", async () => {
    const { shelf } = await asked(
      {
        "good.json": { ...motor, price: 45, certified: "somebody" },
        "bad.motor.json": { ...motor, name: "Bad", diameter: 38 },
        "thing.json": { some: "thing" },
      },
      ["bad.motor.json", "good.json", "thing.json", "demo.rocket.json"],
    );
    expect(shelf.candidates.map(({ id, price, stated }) => ({ id, price, stated }))).toEqual([
      { id: "good.json", price: 45, stated: { motorCertified: true } },
    ]);
    expect(shelf.candidates[0]?.motor.diameter).toBeCloseTo(0.038, 12);
    expect(shelf.names.get("good.json")).toMatchObject({ name: "Demo H150", maker: "invented for the demo" });
    expect(shelf.unread.map(({ file, name, issues }) => [file, name, issues[0]?.path])).toEqual([
      ["bad.motor.json", "Bad", "diameter"],
    ]);
  });
});

describe("shortlistData()", () => {
  test("survives a structured clone and JSON as it is, and names every motor once", async () => {
    const { opened, shelf } = await asked(
      {
        "weak.json": { ...unlabelled, name: "Weak", thrust: { time: [0, 1, 2], newtons: [0, 20, 0] } },
        "bad.motor.json": { kind: "motor" },
      },
      ["demo-h150.motor.json", "weak.json", "bad.motor.json"],
    );
    if (!opened.ok) throw new Error("the plan is right");
    const list = await shortlist(shelf.candidates, opened.plan, { draws: 32 });
    const data = shortlistData(list, shelf, opened.context, opened.plan.limits);
    expect(structuredClone(data)).toEqual(data);
    expect(JSON.parse(JSON.stringify(data))).toEqual(data);
    expect(data.ranked.map(({ name }) => name)).toEqual(["Demo H150"]);
    expect(data.refused.map(({ code, motors }) => [code, motors.map(({ name }) => name)])).toEqual([
      ["thrust-to-weight", ["Weak"]],
    ]);
    expect(data.unjudged.map(({ file }) => file)).toEqual(["bad.motor.json"]);
    expect(motorRowData(list.ranked[0]!, shelf.names)).toEqual(data.ranked[0]);
  });
});
