import { describe, expect, test } from "vitest";
import { bent, demoFiles, motor, motorInHand, plan, rocket } from "../test/fixtures.js";
import { memoryFiles, resolvePath } from "./file-source.js";
import { loadAny } from "./load.js";
import { loadPlan } from "./load-plan.js";
import { issueLine } from "./words/issues.en.js";

const lines = async (changed: Record<string, unknown>) =>
  (await loadPlan("plan.json", demoFiles(changed))).issues.map(issueLine);

describe("loadPlan()", () => {
  test("loads a plan with all its files", async () => {
    const loaded = await loadPlan("plan.json", demoFiles());
    expect(loaded.issues).toEqual([]);
    expect(loaded.files).toEqual([
      "plan.json",
      "demo.rocket.json",
      "demo-h150.motor.json",
      "two-collar.tool.json",
      "larkmoor.field.json",
    ]);
    expect(loaded.parts?.rocket.document.name).toBe("Demo rocket 76");
    expect(loaded.parts?.motor.thrust.thrusts).toEqual([0, 120, 190, 150, 40, 0]);
  });

  test("takes documents inline as well as by path, with the same parts", async () => {
    const inline = { ...plan, rocket, motor: { ...motorInHand, type: motor } };
    const loaded = await loadPlan("plan.json", demoFiles({ "plan.json": inline }));
    expect(loaded.issues).toEqual([]);
    expect(loaded.parts?.rocket).toMatchObject({
      file: "plan.json",
      path: "rocket",
      document: { name: "Demo rocket 76" },
    });
    expect(loaded.parts?.motor).toMatchObject({ file: "plan.json", path: "motor.type" });
    expect(loaded.parts?.motorInHand?.document.label).toBe("3");
  });

  test("resolves a motor in hand to its type", async () => {
    const loaded = await loadPlan("plan.json", demoFiles({ "plan.json": { ...plan, motor: "bag-3.json" } }));
    expect(loaded.parts?.motor.document.name).toBe("Demo H150");
    expect(loaded.parts?.motorInHand?.document.name).toBe("Bag 3");
  });

  test("reads a thrust curve from its CSV, beside the motor's file", async () => {
    const files = demoFiles({
      "plan.json": { ...plan, motor: "motors/demo.json" },
      "motors/demo.json": { ...motor, thrust: "curves/demo.csv" },
      "motors/curves/demo.csv": "time,thrust\n0,0\n0.1,190\n1.6,150\n2.1,0",
    });
    const loaded = await loadPlan("plan.json", files);
    expect(loaded.issues).toEqual([]);
    expect(loaded.parts?.motor.thrust.times).toEqual([0, 0.1, 1.6, 2.1]);
  });

  test("tells a motor too large for the mount beside what is wrong elsewhere", async () => {
    const said = await lines({
      "demo.rocket.json": { ...rocket, massWithoutMotor: "-1.9 kg", mount: { ...rocket.mount, diameter: "24 mm" } },
    });
    expect(said).toHaveLength(2);
    expect(said[0]).toContain("massWithoutMotor");
    expect(said[1]).toContain("the motor is too large for the mount");
  });

  test("collects the issues of all files at once", async () => {
    const found = await lines({
      "plan.json": { ...bent(plan, ["guide", "rail"], "2.4"), tool: "other.json" },
      "demo.rocket.json": bent(rocket, ["diameter"], 76),
      "demo-h150.motor.json": { ...motor, thrust: "demo.csv", loadedMass: "330" },
      "demo.csv": "time,thrust\n0,0\n0.1,x",
      "larkmoor.field.json": "{ not json",
    });
    expect(found).toEqual([
      'plan.json: guide.rail: the unit is missing: "2.4" found; a length with its unit is accepted, for example "2.4 m"',
      'demo.rocket.json: diameter: 76 found; a length with its unit, above 0 mm to 50 m is accepted, for example "76 mm"',
      'demo-h150.motor.json: loadedMass: the unit is missing: "330" found; a mass with its unit is accepted, for example "330 g"',
      'demo.csv: line 3: "x" found; a number is accepted, for example "0.10, 190"',
      'plan.json: tool: there is no such file: "other.json"; the path of a file that is there is accepted',
      'larkmoor.field.json: this is not JSON: "not json" at line 1, column 3 found; a key in double quotes, as "name" is accepted',
    ]);
  });

  test("says that the plan's file is not there, or is no plan", async () => {
    const missing = await loadPlan("none.json", demoFiles());
    expect(missing.state).toBe("missing");
    expect(missing.issues.map((issue) => issue.code)).toEqual(["file-missing"]);
    const other = await loadPlan("demo.rocket.json", demoFiles());
    expect(other.issues.map((issue) => issue.code)).toEqual(["wrong-kind"]);
  });

  test("reports a file that leads back to itself", async () => {
    const found = await loadPlan("plan.json", demoFiles({ "plan.json": { ...plan, rocket: "plan.json" } }));
    expect(found.issues.map((issue) => [issue.code, issue.path])).toEqual([["reference-cycle", "rocket"]]);
  });

  test("reports a file of the wrong kind at the file", async () => {
    const found = await lines({ "plan.json": { ...plan, tool: "larkmoor.field.json" } });
    expect(found).toContain('larkmoor.field.json: kind: "field" found; "tool" is accepted, for example "tool"');
  });

  test.each([
    ["too-large", "file-too-large"],
    ["not-a-file", "file-not-a-file"],
    ["not-allowed", "file-not-allowed"],
  ] as const)("reports a file that is %s where it is named", async (reason, code) => {
    const files = demoFiles();
    const source = {
      ...files,
      read: (path: string) =>
        path === "demo.rocket.json" ? Promise.resolve({ ok: false as const, reason }) : files.read(path),
    };
    const loaded = await loadPlan("plan.json", source);
    expect(loaded.issues.map((issue) => [issue.file, issue.path, issue.code])).toEqual([["plan.json", "rocket", code]]);
  });

  test("reports a file above 5 MB and an encoding", async () => {
    const loaded = await loadPlan(
      "plan.json",
      demoFiles({
        "demo.rocket.json": new Uint8Array(5_000_001).fill(32),
        "two-collar.tool.json": new Uint8Array(Buffer.from("{ }", "utf16le")),
      }),
    );
    expect(loaded.issues.map((issue) => issue.code)).toEqual(["file-too-large", "encoding"]);
  });
});

describe("loadAny()", () => {
  test("loads any kind", async () => {
    for (const file of ["demo.rocket.json", "bag-3.json", "larkmoor.field.json"]) {
      expect((await loadAny(file, demoFiles())).issues).toEqual([]);
    }
  });

  test("of a library loads every document, a broken one beside the others", async () => {
    const library = {
      kind: "library",
      version: 1,
      name: "Everything",
      documents: [plan, bent(rocket, ["diameter"], "76"), motor, { ...rocket, version: 5 }, { kind: "cloud" }],
      files: ["plan.json", "demo.rocket.json", "demo-h150.motor.json", "new.json", "cloud.json"],
    };
    const files = demoFiles({
      "library.json": library,
      "demo.rocket.json": undefined,
      "demo-h150.motor.json": undefined,
    });
    const loaded = await loadAny("library.json", files);
    expect(loaded.entries.map((entry) => entry.state)).toEqual(["invalid", "invalid", "ready", "newer", "invalid"]);
    expect(loaded.entries[1]?.issues.map(issueLine)).toEqual([
      'library.json: documents[1].diameter: the unit is missing: "76" found; a length with its unit is accepted, for example "76 mm"',
    ]);
    expect(loaded.entries[1]?.root?.raw["diameter"]).toBe("76");
  });
});

test("resolvePath() follows a path from a file's folder", () => {
  expect(resolvePath("plans/a.json", "b.json")).toBe("plans/b.json");
  expect(resolvePath("plans/a.json", "../b.json")).toBe("b.json");
  expect(resolvePath("a.json", "../b.json")).toBe("../b.json");
  expect(resolvePath("/x/a.json", "./y/b.json")).toBe("/x/y/b.json");
  expect(resolvePath("x/a.json", "/b.json")).toBe("/b.json");
});

test("memoryFiles() has no files but its own", async () => {
  expect(await memoryFiles({}).read("toString")).toEqual({ ok: false, reason: "missing" });
});
