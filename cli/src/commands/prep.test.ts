import { describe, expect, test } from "vitest";
import { demoFiles, few, inHand, type Loose, runOver } from "../../test/demo.js";
import { faultsOf, schemaOf } from "../../test/json-schema.js";

const electronics = demoFiles({
  "demo.rocket.json": (rocket) => {
    rocket.recovery.motorCharge = "backup";
    rocket.recovery.electronics = { fires: "apogee", delay: "0 s" };
  },
});
const words = ["prep", "plan.json", ...few];

function withFlight(signOffs: Loose[]): Record<string, string> {
  const flight = { kind: "flight", version: 1, name: "Third flight", plan: "plan.json", signOffs };
  return { ...demoFiles(), "flight.json": JSON.stringify(flight) };
}

describe("prep()", () => {
  test("prints the steps in their order, with boxes, reasons, hazards and room to sign", async () => {
    const { out, code } = await runOver(demoFiles(), words);
    const titles = [
      "Bag and label",
      "Motor's own instructions read",
      "Element measured before",
      "Delay cut",
      "Element measured after",
      "Washer",
      "Charge in the motor's well",
      "Cap on",
      "Motor in, and held",
      "Canopy folded",
      "Every link closed",
      "Shear pins in",
      "Tracker on",
      "Name and telephone",
      "Flight card shown",
      "Rocket on its guide",
      "Children",
      "Igniter in, last",
      "Launched",
      "Found",
      "Come near from the side",
      "Charge seen to have fired",
      "If the flight is called off",
      "\nIf it does not light\n",
    ];
    const places = titles.map((title) => out.indexOf(title));
    expect(places.every((place) => place >= 0)).toBe(true);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(out).toMatch(/^ 1 \[ \] Bag and label are the plan's motor +______ {2}__:__$/m);
    expect(out).toContain("! Eye protection.");
    expect(out).toContain("end A with the ring: 4.0 mm (5/32 in)");
    expect(out).not.toContain("Electronics on");
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(88);
    expect(code).toBe(0);
  });

  test("prep.schema.json describes every key, with and without electronics", async () => {
    for (const files of [demoFiles(), electronics, inHand("26.16875 mm")]) {
      const { json } = await runOver(files, [...words, "--json"]);
      expect(faultsOf(json(), schemaOf("prep"))).toEqual([]);
    }
    const { json } = await runOver(electronics, [...words, "--json"]);
    const ids = json().steps.map((step: Loose) => step.id);
    expect(ids).toContain("electronics-on");
    expect(ids.indexOf("electronics-on")).toBeLessThan(ids.indexOf("igniter"));
    expect(json().next).toBe("motor-label");
  });

  test("--flight shows the sheet as it was signed", async () => {
    const files = withFlight([]);
    const rests = (await runOver(files, [...words, "--json"])).json();
    expect(rests.steps[0].signed).toBeNull();
    const { out } = await runOver(withFlight([{ step: "name", by: "AB", when: "2026-05-02T10:12" }]), [
      ...words,
      "--flight",
      "flight.json",
    ]);
    expect(out).toMatch(/\[x\] Name and telephone on the airframe +AB {6}10:12$/m);
    expect(out).toContain("First: motor's own instructions read");
  });

  test("a flight that is none ends with 2; a check that says stop with 3, and at the head of the sheet", async () => {
    const bad = await runOver(withFlight([{ by: "AB" }]), [...words, "--flight", "flight.json"]);
    expect(bad.err).toContain("signOffs[0].step");
    expect({ out: bad.out, code: bad.code }).toEqual({ out: "", code: 2 });
    const stop = await runOver(
      demoFiles({
        "plan.json": (plan) => {
          plan.weather.wind = "12 m/s";
        },
      }),
      words,
    );
    expect(stop.code).toBe(3);
    expect(stop.out).toMatch(/^Stop: /m);
  });

  test("--units imperial; another word is refused", async () => {
    expect((await runOver(demoFiles(), [...words, "--units", "imperial"])).out).toContain("100 ft from the pad");
    const { err, code } = await runOver(demoFiles(), [...words, "--units", "cubits"]);
    expect(err).toContain("--units");
    expect(code).toBe(2);
  });
});
