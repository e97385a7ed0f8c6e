import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { loadAny, motorToEngine, nodeDoubts, placedMotor } from "@delaywright/documents";
import { burnOf, labelCheck, type Motor, motorClass } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { demoLibrary, demoLibraryFolder } from "../../scripts/demo-library.mjs";
import { diskFiles } from "../src/io/files.js";

const files = demoLibrary();

async function loaded(name: string) {
  const { root, issues } = await loadAny(join(demoLibraryFolder, name), diskFiles, ["motor"]);
  const motor = placedMotor(root);
  return { issues, doubts: root === undefined ? [] : nodeDoubts(root), motor };
}

async function motors(): Promise<Motor[]> {
  const all = await Promise.all(files.map(({ name }) => loaded(name)));
  return all.map(({ motor }) => motorToEngine(motor!));
}

describe("the demo's motor library", () => {
  test("is what the script makes, file by file; after a change run: node scripts/demo-library.mjs", () => {
    expect(files.length).toBeGreaterThanOrEqual(40);
    expect(readdirSync(demoLibraryFolder).sort()).toEqual(files.map(({ name }) => name).sort());
    for (const { name, text } of files) expect(readFileSync(join(demoLibraryFolder, name), "utf8"), name).toBe(text);
  });

  test.each(files.map(({ name }) => name))(
    "%s loads without issues or doubts, and says that it is invented",
    async (name) => {
      const { issues, doubts, motor } = await loaded(name);
      expect({ issues, doubts }).toEqual({ issues: [], doubts: [] });
      expect(motor?.document.maker).toBe("invented for the demo");
    },
  );

  test("bears out its labels: class, average thrust, delay", async () => {
    for (const motor of await motors()) {
      expect(labelCheck(motor), motor.designation).toEqual([]);
      const { averageThrust } = burnOf(motor.thrust);
      // two per cent: times are rounded to a millisecond, thrusts to a tenth
      expect(averageThrust / Number(/\d+/.exec(motor.designation ?? "")?.[0]), motor.designation).toBeCloseTo(1, 1.7);
    }
  });

  test("spans what a flyer may meet: classes, diameters, delays, ways to burn", async () => {
    const all = await motors();
    const kinds = <T>(of: (motor: Motor) => T) => [...new Set(all.map(of))].sort();
    expect(kinds((motor) => motorClass(burnOf(motor.thrust).totalImpulse))).toEqual(["F", "G", "H", "I", "J", "K"]);
    expect(kinds((motor) => Math.round(1000 * motor.diameter))).toEqual([24, 29, 38, 54]);
    expect(kinds((motor) => motor.delay.kind)).toEqual(["adjustable", "fixed", "none"]);
    // specific impulse of composite propellants, 180 to 220 s; common practice, no source
    for (const motor of all) {
      const specific = burnOf(motor.thrust).totalImpulse / (motor.propellantMass * 9.80665);
      expect(specific, motor.designation).toBeGreaterThan(175);
      expect(specific, motor.designation).toBeLessThan(225);
    }
    // where half of the impulse is spent: early for a regressive burn, late for a progressive one
    const halves = all.map(({ thrust: { times, thrusts } }) => {
      const shares = times.slice(1).map((t, i) => 0.5 * (t - times[i]!) * (thrusts[i + 1]! + thrusts[i]!));
      const early = shares.reduce((sum, share, i) => sum + share * 0.5 * (times[i]! + times[i + 1]!), 0);
      return early / shares.reduce((a, b) => a + b, 0) / times.at(-1)!;
    });
    expect(Math.min(...halves)).toBeLessThan(0.42);
    expect(Math.max(...halves)).toBeGreaterThan(0.52);
  });
});
