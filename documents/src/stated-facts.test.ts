import type { DecisionInputs } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { bent, demoFiles, field, motor, plan, rocket } from "../test/fixtures.js";
import { loadAny } from "./load.js";
import { loadPlan } from "./load-plan.js";
import { planToEngine } from "./to-engine.js";
import { issueLine } from "./words/issues.en.js";

async function inputsOf(changed: Readonly<Record<string, unknown>> = {}): Promise<DecisionInputs> {
  const { parts, issues } = await loadPlan("plan.json", demoFiles(changed));
  const made = parts === undefined ? undefined : planToEngine(parts);
  if (made === undefined || !made.ok) throw new Error((made?.issues ?? issues).map(issueLine).join("\n"));
  return made.inputs;
}

const club = { kind: "rule-set", version: 1, name: "Larkmoor club", limits: { "wind-limit": { stop: "6 m/s" } } };

describe("planToEngine(), for the rules", () => {
  test("knows of the demo only what it says", async () => {
    const { stated, ruleSet, fieldLimits } = await inputsOf();
    expect(stated).toEqual({ fieldHours: null });
    expect(ruleSet).toBe("association");
    expect(fieldLimits.boundary).toEqual({ kind: "circle", east: 0, north: 0, radius: 400 });
    expect(fieldLimits.keepOff).toHaveLength(1);
    expect(fieldLimits.people).toBeUndefined();
  });

  test("gives every statement of flyer, motor, rocket, field and day in SI units", async () => {
    const flyer = { kind: "flyer", version: 1, name: "Demo flyer", certification: 2, age: 41 };
    const site = {
      launchAt: "11:30",
      daylight: true,
      cloudCover: 0.25,
      cloudBase: "4000 ft",
      visibility: "10 mi",
      people: "200 ft",
      adultInCharge: true,
      fireMeans: true,
      controlledAirspace: false,
      authorised: false,
      noticeGiven: "36 h",
    };
    const { stated, fieldLimits } = await inputsOf({
      "me.json": flyer,
      "plan.json": { ...plan, flyer: "me.json", site },
      "demo-h150.motor.json": { ...motor, certified: "a demo body", metalSponge: false, mostLiftOffMass: "none" },
      "demo.rocket.json": { ...rocket, materials: "other" },
      "larkmoor.field.json": {
        ...field,
        hours: "9:00 to 18.30",
        smallest: "700 m",
        clearedDiameter: "20 m",
        controlledAirspace: true,
        distances: { building: "800 m", road: "none", airport: "10 nmi", uninvolved: "500 m" },
        people: [{ points: [["0 m", "60 m"]] }],
      },
    });
    expect(stated).toEqual({
      certification: 2,
      age: 41,
      motorCertified: true,
      metalSponge: false,
      makerMostLiftOffMass: null,
      lightMaterials: false,
      adultInCharge: true,
      fireMeans: true,
      daylight: true,
      cloudCover: 0.25,
      cloudBase: expect.closeTo(1219.2, 9),
      visibility: expect.closeTo(16_093.44, 9),
      peopleDistance: expect.closeTo(60.96, 9),
      // of the plan, not of the field
      controlledAirspace: false,
      authorised: false,
      noticeBefore: 129_600,
      timeOfDay: 41_400,
      // read at 10:40
      weatherAge: 3000,
      fieldHours: { from: 32_400, to: 66_600 },
      siteSmallest: 700,
      clearedDiameter: 20,
      buildingDistance: 800,
      roadDistance: null,
      airportDistance: 18_520,
      uninvolvedDistance: 500,
    });
    expect(fieldLimits.people).toEqual([[{ east: 0, north: 60 }]]);
  });

  test("knows nothing of a field that is not named, and that a field without them has no ceiling and no sector", async () => {
    const bare = { kind: "field", version: 1, name: "Bare", elevation: "0 m" };
    expect((await inputsOf({ "larkmoor.field.json": bare })).stated).toEqual({
      ceiling: null,
      tiltSector: null,
      fieldHours: null,
    });
    const { field: _, ...without } = plan;
    const inputs = await inputsOf({ "plan.json": without });
    expect([inputs.stated, inputs.fieldLimits]).toEqual([{}, {}]);
  });

  test("tells that no wind was read, and an age of the weather only where it can", async () => {
    expect((await inputsOf({ "plan.json": { ...plan, weather: {} } })).stated).toEqual({
      windRead: false,
      fieldHours: null,
    });
    const age = async (taken: string, launchAt: string, more = {}) => {
      const day = { ...plan, ...more, weather: { ...plan.weather, taken }, site: { launchAt } };
      return (await inputsOf({ "plan.json": day })).stated?.weatherAge;
    };
    expect(await age("2026-05-01T22:00", "6:00")).toBe(8 * 3600);
    expect(await age("12:00", "11:00")).toBeUndefined();
    expect(await age("in the morning", "11:00")).toBeUndefined();
    expect(await age("2026-05-01 22:00", "6:00", { date: undefined })).toBeUndefined();
  });

  test.each([
    ["9-18", { from: 32_400, to: 64_800 }],
    ["22:00 until 1:30", { from: 79_200, to: 5400 }],
    ["weekends only", undefined],
    ["9:00 to 25:00", undefined],
  ])("reads a field's hours: %s", async (hours, expected) => {
    expect((await inputsOf({ "larkmoor.field.json": { ...field, hours } })).stated?.fieldHours).toEqual(expected);
  });

  test("takes a club's rules by their path, inline, or a set by its word", async () => {
    const rules = { name: "Larkmoor club", limits: { "wind-limit": { stop: 6 } } };
    const named = { "plan.json": { ...plan, ruleSet: "club.json" }, "club.json": club };
    expect((await inputsOf(named)).ruleSet).toEqual(rules);
    expect((await inputsOf({ "plan.json": { ...plan, ruleSet: club } })).ruleSet).toEqual(rules);
    for (const word of ["association", "none"] as const)
      expect((await inputsOf({ "plan.json": { ...plan, ruleSet: word } })).ruleSet).toBe(word);
    const loaded = await loadAny("plan.json", demoFiles({ "plan.json": { ...plan, ruleSet: "none" } }));
    expect(loaded.files).not.toContain("none");
  });

  test("tells the faults of a club's rules with those of the others", async () => {
    const wrong = { ...club, limits: { "wind-limt": "off" } };
    const inline = await loadPlan("plan.json", demoFiles({ "plan.json": { ...plan, ruleSet: wrong } }));
    expect(inline.issues.map(({ path }) => path)).toEqual(["ruleSet.limits.wind-limt"]);
    const apart = { "plan.json": { ...plan, ruleSet: "club.json" }, "club.json": wrong, "demo.rocket.json": undefined };
    const { issues } = await loadPlan("plan.json", demoFiles(apart));
    expect(issues.map(({ file, path }) => [file, path])).toEqual([
      ["plan.json", "rocket"],
      ["club.json", "limits.wind-limt"],
    ]);
    const gone = await loadPlan("plan.json", demoFiles({ "plan.json": { ...plan, ruleSet: "gone.json" } }));
    expect(gone.issues.map(({ code }) => code)).toEqual(["file-missing"]);
  });
});

describe("planToEngine(), for the packing", () => {
  test("gives bay, charge and wishes in SI units", async () => {
    const packed = {
      ...rocket,
      bay: { ...rocket.bay, friction: "20 N" },
      electronicsBay: { diameter: "70 mm", length: "150 mm" },
      sectionMasses: ["1.2 kg", "0.92 kg"],
      recovery: {
        ...rocket.recovery,
        fittingsStrength: "900 N",
        main: { ...rocket.recovery.main, spillHole: "10 cm" },
      },
    };
    const wishes = { charge: "1.2 g", landingSpeed: "6 m/s", energyLimit: "75 ft lbf", separationMargin: 2 };
    const { packing } = await inputsOf({
      "demo.rocket.json": packed,
      "plan.json": { ...plan, packing: wishes },
    });
    expect(packing).toEqual({
      bay: {
        diameter: expect.closeTo(0.072, 12),
        length: 0.25,
        pins: [{ size: "2-56", count: 2 }],
        pressure: expect.closeTo(103_421.36, 1),
        friction: 20,
      },
      electronicsBay: { diameter: expect.closeTo(0.07, 12), length: expect.closeTo(0.15, 12) },
      fittingsStrength: 900,
      spillHole: 0.1,
      sections: [1.2, 0.92],
      motorCharge: { mass: expect.closeTo(0.0012, 12), wellHolds: 0.0014 },
      options: { landingSpeed: 6, energyLimit: expect.closeTo(101.6863, 4), separationMargin: 2 },
    });
  });

  test("guesses nothing", async () => {
    const { bay: _, ...bare } = rocket;
    const { charge: _c, wellHolds: _w, ...delay } = motor.delay;
    const { packing } = await inputsOf({
      "demo.rocket.json": bare,
      "demo-h150.motor.json": { ...motor, delay },
    });
    expect(packing).toEqual({ motorCharge: {}, options: {} });
  });

  test("refuses a spill hole as wide as the canopy, and pins of a joint that nothing keeps shut", async () => {
    const main = { ...rocket.recovery.main, spillHole: "1.1 m", shearPins: [{ size: "2-56", count: 2 }] };
    const { issues } = await loadPlan(
      "plan.json",
      demoFiles({ "demo.rocket.json": bent(rocket, ["recovery", "main"], main) }),
    );
    expect(issues.map(({ path, code }) => [path, code])).toEqual([
      ["recovery.main.shearPins", "does-not-belong"],
      ["recovery.main.spillHole", "out-of-range"],
    ]);
  });
});
