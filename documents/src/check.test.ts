import { expect, test } from "vitest";
import { bent, demoFiles, motor, plan, rocket } from "../test/fixtures.js";
import { checkLoaded } from "./check.js";
import { loadAny } from "./load.js";

async function codes(path: string, changed: Readonly<Record<string, unknown>> = {}) {
  const { issues, warnings } = checkLoaded(await loadAny(path, demoFiles(changed)));
  return [issues.map((issue) => issue.code), warnings.map((warning) => warning.code)];
}

test("checkLoaded() finds nothing about the demo", async () => {
  for (const file of ["plan.json", "demo.rocket.json", "demo-h150.motor.json", "bag-3.json"]) {
    expect(await codes(file), file).toEqual([[], []]);
  }
});

test("checkLoaded() of a plan finds what its documents say against each other", async () => {
  expect(await codes("plan.json", { "demo-h150.motor.json": { ...motor, diameter: "54 mm" } })).toEqual([
    ["motor-too-large-for-mount"],
    [],
  ]);
});

test("checkLoaded() of a rocket finds what the engine would refuse", async () => {
  const hanging = bent(rocket, ["fins", 0, "at"], "1.45 m");
  expect(await codes("demo.rocket.json", { "demo.rocket.json": hanging })).toEqual([
    ["fins-off-body"],
    ["behind-tail"],
  ]);
  const { massWithoutMotor: _, balanceWithoutMotor: __, ...rest } = rocket;
  const ready = { ...rest, massReady: "0.3 kg", balanceReady: "0.9 m", readyWith: "demo-h150.motor.json" };
  expect((await codes("demo.rocket.json", { "demo.rocket.json": ready }))[0]).toEqual(["mass-not-above-motor"]);
});

test("checkLoaded() of a broken document still doubts what it can read", async () => {
  const broken = { ...rocket, length: "1.52", balanceWithoutMotor: "0.2 m" };
  expect(await codes("demo.rocket.json", { "demo.rocket.json": broken })).toEqual([
    ["unit-missing"],
    ["ahead-of-nose-base"],
  ]);
});

test("checkLoaded() of a library checks every document in it", async () => {
  const documents = [plan, rocket, { ...motor, diameter: "54 mm" }, { ...rocket, diameter: 3 }];
  const files = ["a.plan.json", "demo.rocket.json", "demo-h150.motor.json", "other.json"];
  const library = { kind: "library", version: 1, name: "Everything", documents, files };
  const [issues] = await codes("library.json", { "library.json": library });
  expect(issues).toEqual(["motor-too-large-for-mount", "wrong-type"]);
});
