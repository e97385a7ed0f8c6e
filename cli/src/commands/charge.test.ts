import { describe, expect, test } from "vitest";
import { bag, demoFiles, type Loose, runOver } from "../../test/demo.js";

const rocketWith = (bend: (rocket: Loose) => void) => demoFiles({ "demo.rocket.json": bend });
const words = ["charge", "demo.rocket.json"];
const withMotor = [...words, "--motor", "demo-h150.motor.json"];
const widest = (text: string): number => Math.max(...text.split("\n").map((line) => [...line].length));

describe("charge()", () => {
  test("tells charge, pins, separation and ports of the demo, with every caution and caveat", async () => {
    const { out, err, code } = await runOver(demoFiles(), withMotor);
    // 72 mm x 250 mm at 15 psi: 0.4719978 g a litre (check values, section 11); 1017.876 cm³
    expect(out).toContain("0.48 g of black powder in 1018 cm³ raise the pressure by 15.0 psi (103 kPa)");
    // two 2-56 pins: 2 x 128.77 N by the stress area, 2 x 107.92 N at the root (check values, section 11)
    expect(out).toMatch(/shear at 258 N together: 216 N at the least/);
    expect(out).toContain("Demo H150 in it");
    expect(out).toContain("3.4 times");
    expect(out).toMatch(/Static ports for the bay of 1018 cm³: one hole of 5\.0 mm, or 3 of 2\.9 mm, or 4 of 2\.5 mm/);
    expect(out.replace(/\s+/g, " ")).toContain("a ground test decides");
    for (const caution of [
      "point it away from people",
      "Ground-test it",
      "Electronics stay off",
      "retention",
      "range safety",
    ])
      expect(out.replace(/\s+/g, " "), caution).toContain(caution);
    expect(widest(out)).toBeLessThanOrEqual(100);
    expect({ err, code }).toEqual({ err: "", code: 0 });
  });

  test("goes without a motor, with a motor in hand, and with one that has no charge", async () => {
    expect((await runOver(demoFiles(), words)).out).not.toContain("The motor's");
    const files = demoFiles({
      "bag-3.json": () => bag("24.6 mm"),
      "plugged.json": () => ({
        ...JSON.parse(demoFiles()["demo-h150.motor.json"] ?? ""),
        name: "Demo plugged",
        designation: "H150-P",
        delay: { kind: "none" },
      }),
    });
    expect((await runOver(files, [...words, "--motor", "bag-3.json"])).out).toContain("Demo H150 in it");
    const plugged = await runOver(files, [...words, "--motor", "plugged.json"]);
    expect(plugged.out).toContain("This motor has no ejection charge.");
    expect(plugged.code).toBe(0);
  });

  test("says stop, and ends with 3, where the motor's charge does not part the joint", async () => {
    const stiff = rocketWith((rocket) => {
      rocket.bay.shearPins = [{ size: "6-32", count: 4 }];
    });
    const { out, code } = await runOver(stiff, withMotor);
    expect(out).toMatch(/^STOP: /);
    expect(out).toContain("it does not part it");
    expect(code).toBe(3);
    const full = demoFiles({
      "demo-h150.motor.json": (motor: Loose) => {
        motor.delay.charge = "1.5 g";
      },
    });
    const above = await runOver(full, withMotor);
    expect(above.out.replace(/\s+/g, " ")).toContain("more than the motor's well holds: 1.50 g against 1.40 g");
    expect(above.code).toBe(3);
  });

  test("knows no pin of another size, and takes the electronics bay for the ports", async () => {
    const other = rocketWith((rocket) => {
      rocket.bay.shearPins = [{ size: "M2", count: 2 }];
      rocket.electronicsBay = { diameter: "70 mm", length: "150 mm" };
    });
    const { out } = await runOver(other, withMotor);
    expect(out).toContain("What pins of M2 bear is not known here; known are 2-56, 4-40, 6-32.");
    expect(out).toContain("What holds the joint shut is not known");
    expect(out).toContain("Static ports for the electronics bay");
  });

  test("gives SI numbers for machines", async () => {
    const { json, code } = await runOver(demoFiles(), [...withMotor, "--json"]);
    const { rocket, motor, bay, staticPorts } = json();
    expect([rocket, motor, code]).toEqual(["Demo rocket 76", "Demo H150", 0]);
    expect(bay.volume).toBeCloseTo(0.001017876, 9);
    expect(bay.needed.pressure).toBeCloseTo(103_421.36, 1);
    expect(bay.motorCharge.factor).toBeGreaterThan(3);
    expect(staticPorts.holes.map((hole: Loose) => hole.count)).toEqual([1, 3, 4]);
  });

  test("wants a bay, and tells the issues of both files at once", async () => {
    const bare = rocketWith((rocket) => {
      delete rocket.bay;
    });
    const none = await runOver(bare, words);
    expect(none.err).toContain("demo.rocket.json: bay: nothing found; the bay that the ejection charge opens");
    expect({ out: none.out, code: none.code }).toEqual({ out: "", code: 2 });
    const wrong = rocketWith((rocket) => {
      rocket.bay.length = "250";
    });
    const both = await runOver(wrong, [...words, "--motor", "gone.json"]);
    expect(both.err).toContain("bay.length");
    expect(both.err).toContain("gone.json");
    expect(both.code).toBe(2);
  });
});
