import { describe, expect, test } from "vitest";
import { demoFiles, inHand, type Loose, runOver } from "../../test/demo.js";
import { faultsOf, schemaOf } from "../../test/json-schema.js";

const asked = ["window", "plan.json", "--draws", "32"];
const noSpread = {
  "plan.json": (plan: Loose) => {
    plan.spread = "none";
    delete plan.choice;
  },
};

describe("window()", () => {
  test("says up to which wind the odds hold, where today stands, and the map", async () => {
    const { out, err, code } = await runOver(demoFiles(), [...asked, "--cut", "9s"]);
    expect(out.split("\n")[0]).toMatch(
      /^At 9 s, with the guide upright: (still good|good) up to \d+(\.5)? m\/s of wind/,
    );
    expect(out).toContain("Today: wind");
    expect(out.match(/\[\d+\*?\]/g)).toHaveLength(1);
    expect(out.split("\n").filter((line) => /^ {2}> /.test(line))).toHaveLength(1);
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(100);
    expect(out).not.toMatch(/NaN|undefined|null|\bsafe\b/);
    expect({ err, code }).toEqual({ err: "", code: 0 });
  });

  test("without --cut the delay is the one to cut, with a choice the choice, with a reading what is left", async () => {
    const delay = async (files: Readonly<Record<string, string>>) =>
      (await runOver(files, [...asked, "--json"])).json().delay;
    const decision = (await runOver(demoFiles(noSpread), ["decide", "plan.json", "--json"])).json();
    expect(await delay(demoFiles(noSpread))).toBe(decision.toCut.delay);
    const chosen = {
      "plan.json": (plan: Loose) => void Object.assign(plan, { spread: "none", choice: { delay: "8 s" } }),
    };
    expect(await delay(demoFiles(chosen))).toBe(8);
    const cut = await delay(
      inHand("25.4 mm", { "plan.json": (plan) => void Object.assign(plan, { spread: "none", motor: "bag-3.json" }) }),
    );
    // 3.2 mm at 1/32 in for one second: 4.03 s taken out of 14 s
    expect(cut).toBeCloseTo(14 - 3.2 / (25.4 / 32), 6);
  });

  test("a star stands exactly where the wind is past the edge of its row", async () => {
    const words = [...asked, "--cut", "9s"];
    const { out } = await runOver(demoFiles(), words);
    const { ends, winds } = (await runOver(demoFiles(), [...words, "--json"])).json();
    const rows = out.split("\n").filter((line) => /upright|\d deg {2}/.test(line) && /^ {2}/.test(line));
    const stars = rows.map((row) => row.match(/\*/g)?.length ?? 0);
    const past = ends.map(({ wind: end, beyond }: { wind: number | null; beyond: boolean }) =>
      beyond ? 0 : winds.filter((wind: number) => end === null || wind > end).length,
    );
    expect(stars).toEqual(past);
  });

  test("ends where the odds do, or where a check says stop before, and says which", async () => {
    const words = [...asked, "--cut", "9s"];
    const field = (radius: string) =>
      demoFiles({
        "plan.json": (plan) => void Object.assign(plan, { field: "f.json" }),
        "f.json": () => ({
          kind: "field",
          version: 1,
          name: "F",
          elevation: "0 m",
          boundary: { shape: "circle", radius },
        }),
      });
    const told = async (radius: string) => (await runOver(field(radius), [...words, "--json"])).json();
    const [wide, narrow] = [await told("20 km"), await told("150 m")];
    expect(wide.ends[0]).toMatchObject({
      wind: wide.edges[0],
      by: expect.stringMatching(/^(clean|holds)$/),
      check: null,
    });
    expect(narrow.edges).toEqual(wide.edges);
    expect(narrow.ends[0]).toMatchObject({ by: "rule", check: { id: "landing-inside", verdict: "stop" } });
    expect(narrow.ends[0].wind).toBeLessThan(narrow.edges[0]);
    expect(faultsOf(narrow, schemaOf("window"))).toEqual([]);
    const { out } = await runOver(field("150 m"), words);
    expect(out.replace(/\s+/g, " ")).toMatch(
      /Past it a check says stop: opened landings outside the field, most 50 %\./,
    );
    expect((await runOver(field("20 km"), words)).out).toMatch(/Past it (clean|holds) is below/);
  });

  test("window.schema.json describes every key", async () => {
    const { json } = await runOver(demoFiles(), [...asked, "--cut", "9s", "--json"]);
    expect(faultsOf(json(), schemaOf("window"))).toEqual([]);
  });

  test("ends with 3 where the odds are good in no wind", async () => {
    const { out, code } = await runOver(demoFiles(), [...asked, "--cut", "2s"]);
    expect(out).toContain("not good in any wind, not even in a calm");
    expect(code).toBe(3);
  });

  test("tells a motor without delay that there is no window", async () => {
    const plugged = demoFiles({
      "demo-h150.motor.json": (motor) => {
        motor.delay = { kind: "none" };
        delete motor.designation;
      },
      "plan.json": (plan) => void delete plan.tool,
    });
    const { err, code } = await runOver(plugged, [...asked, "--cut", "5s"]);
    expect(err).toContain("this motor has no delay");
    expect(code).toBe(2);
  });
});
