import { describe, expect, test } from "vitest";
import { demoFiles, type Loose, runOver } from "../../test/demo.js";

describe("check()", () => {
  test("right documents of every kind end with 0", async () => {
    const { out, code } = await runOver(demoFiles(), ["check", ...Object.keys(demoFiles())]);
    expect(out).toContain("plan.json: right, a plan");
    expect(out).toContain("demo.rocket.json: right, a rocket");
    expect(out).toContain("0 issues");
    expect(code).toBe(0);
  });

  test("tells every issue of every file with where, found, accepted and example; a missing file stops no other", async () => {
    const files = demoFiles({
      "two-collar.tool.json": (tool: Loose) => {
        tool.depthPerSecond = 0.8;
        tool.ends[0].removes = "6";
      },
    });
    const { out, code } = await runOver(files, ["check", "gone.json", "two-collar.tool.json", "larkmoor.field.json"]);
    expect(out).toContain("gone.json: not there");
    expect(out).toMatch(/two-collar\.tool\.json: depthPerSecond: .*0\.8 found/s);
    expect(out).toMatch(/ends\[0\]\.removes: .*"6" found.*for example/s);
    expect(out).toContain("larkmoor.field.json: right, a field");
    expect(out).toContain("3 files, 3 issues");
    expect(code).toBe(2);
  });

  test("what is wrong between a plan's documents is found too", async () => {
    const files = demoFiles({
      "demo-h150.motor.json": (motor: Loose) => {
        motor.diameter = "54 mm";
      },
    });
    const { out, code } = await runOver(files, ["check", "plan.json"]);
    expect(out).toContain("too large for the mount");
    expect(code).toBe(2);
  });

  test("what is only unlikely is told and ends with 0", async () => {
    const files = demoFiles({
      "two-collar.tool.json": (tool: Loose) => {
        tool.depthError = "0 mm";
      },
    });
    const { out, code } = await runOver(files, ["check", "two-collar.tool.json"]);
    expect(out).toContain("unlikely: two-collar.tool.json: depthError");
    expect(out).toContain("1 unlikely value");
    expect(code).toBe(0);
  });

  test("the same issue met through two files is told once, and both are not right", async () => {
    const files = demoFiles({
      "demo.rocket.json": (rocket: Loose) => {
        rocket.length = 3;
      },
    });
    const { json, code } = await runOver(files, ["check", "plan.json", "demo.rocket.json", "--json"]);
    expect(json().files.map((file: Loose) => file.issues.length)).toEqual([1, 0]);
    expect(json().files.map((file: Loose) => file.state)).toEqual(["invalid", "invalid"]);
    expect(code).toBe(2);
  });

  test.each([
    ["an empty file", ""],
    ["no JSON", "kind: plan"],
    ["nesting without end", "[".repeat(200_000)],
    ["keys that would change every object", '{"__proto__": {"kind": "plan"}, "kind": "plan"}'],
    ["another encoding", new Uint8Array([0xff, 0xfe, 0x7b, 0x00])],
    ["a list", "[]"],
  ])("%s is an issue, not a crash", async (_, content) => {
    const { out, err, code } = await runOver({ "bad.json": content }, ["check", "bad.json"]);
    expect(out).toContain("bad.json: not right");
    expect({ err, code }).toEqual({ err: "", code: 2 });
  });
});
