import { describe, expect, test } from "vitest";
import { bent, field, motor, motorInHand, plan, rocket, tool } from "../test/fixtures.js";
import { kindNames } from "./kinds/kinds.js";
import { readBytes, readDocument } from "./read.js";
import { issueSentence } from "./words/issues.en.js";

const read = (document: unknown) => readDocument(JSON.stringify(document), { file: "a.json" });
const sentences = (document: unknown) => read(document).issues.map(issueSentence);

describe("readDocument()", () => {
  test.each([plan, rocket, motor, motorInHand, tool, field])(
    "reads the $kind of the design as it was typed",
    (document) => {
      const result = read(document);
      expect(result.issues).toEqual([]);
      expect(result.state === "ready" && result.document).toEqual(document);
    },
  );

  const light = [
    { kind: "flyer", version: 1, name: "A flyer", certification: 2, association: "A club" },
    {
      kind: "log",
      version: 1,
      name: "Third flight",
      source: "third.csv",
      columns: { time: { column: "Time (s)", unit: "s" }, height: { column: 2, unit: "ft" } },
    },
    {
      kind: "flight",
      version: 1,
      name: "Third flight",
      plan: "plan.json",
      motorInHand: motorInHand,
      flown: "2026-05-02T11:05",
      signOffs: [{ step: "igniter at the pad", by: "the flyer" }],
      findings: { set: "9 s", delay: "9.4 s", outcome: "clean" },
    },
    { kind: "library", version: 1, name: "Everything", documents: [rocket, { kind: "rocket", broken: true }] },
    {
      $schema: "schemas/tool.schema.json",
      kind: "tool",
      version: 1,
      name: "Bit",
      stop: { from: "0 mm", to: "8 mm", step: "0.1 mm" },
    },
  ];
  test.each(light)("reads a $kind", (document) => expect(sentences(document)).toEqual([]));

  test("reports every issue at once, five for five", () => {
    const wrong = {
      ...rocket,
      diameter: 76,
      length: "1,500 ft",
      balanceWithoutMotr: "0.86 m",
      fins: [{ ...rocket.fins[0], root: "180" }],
      nose: { shape: "oval", length: "300 mm" },
    };
    expect(sentences(wrong)).toEqual([
      'diameter: 76 found; a length with its unit, above 0 mm to 50 m is accepted, for example "76 mm"',
      'length: this comma may be read in two ways: "1,500 ft" found; a length with its unit, without a comma that may be read in two ways: "1500 ft" or "1.500 ft" is accepted, for example "1.52 m"',
      'nose.shape: "oval" found; one of "cone", "ogive", "parabola", "ellipsoid", "haack", "power" is accepted, for example "cone"',
      'fins[0].root: the unit is missing: "180" found; a length with its unit is accepted, for example "180 mm"',
      "balanceWithoutMotr: no such field; did you mean `balanceWithoutMotor`?",
    ]);
  });

  test("reads a document inside a document, with its whole path", () => {
    const inline = bent({ ...plan, rocket }, ["rocket", "fins", 0, "root"], "180");
    expect(sentences(inline)).toEqual([
      'rocket.fins[0].root: the unit is missing: "180" found; a length with its unit is accepted, for example "180 mm"',
    ]);
  });

  const cases: readonly (readonly [string, unknown, string])[] = [
    [
      "a missing field",
      bent(motor, ["loadedMass"], undefined),
      'loadedMass: nothing found; a mass with its unit, above 0 g to 200 kg is accepted, for example "330 g"',
    ],
    [
      "a negative length",
      bent(rocket, ["diameter"], "-76 mm"),
      'diameter: "-76 mm" found; a length with its unit, above 0 mm to 50 m is accepted, for example "76 mm"',
    ],
    [
      "a unit of another kind",
      bent(rocket, ["diameter"], "76 g"),
      'diameter: this unit measures something else: "76 g" found; a length with its unit (m, mm, cm, km, um, in, ft, yd, mi, nmi) is accepted, for example "76 mm"',
    ],
    [
      "an unknown unit",
      bent(rocket, ["diameter"], "76 MM"),
      'diameter: this unit is not known: "76 MM" found; a length with its unit (m, mm, cm, km, um, in, ft, yd, mi, nmi) is accepted, for example "76 mm"',
    ],
    [
      "a null",
      bent(rocket, ["diameter"], null),
      'diameter: null found; a length with its unit, above 0 mm to 50 m is accepted, for example "76 mm"',
    ],
    [
      "a list for an object",
      bent(rocket, ["nose"], []),
      'nose: a list of 0 found; the nose is accepted, for example { "shape": "ogive", "length": "300 mm" }',
    ],
    [
      "an empty list",
      bent(plan, ["weather", "aloft"], []),
      "weather.aloft: a list of 0 found; a list of 1 or more is accepted",
    ],
    [
      "a list that is too long",
      bent(plan, ["weather", "aloft"], Array(201).fill({ height: "9 m", wind: "1 m/s", from: "2 deg" })),
      "weather.aloft: a list of 201 found; a list of up to 200 is accepted",
    ],
    [
      "a text that is too long",
      { ...plan, note: "x".repeat(10_001) },
      `note: "${"x".repeat(68)}… found; a text of up to 10000 letters is accepted`,
    ],
    [
      "a temperature that cannot be",
      bent(plan, ["weather", "temperature"], "-300 degC"),
      'weather.temperature: "-300 degC" found; a temperature with its unit, from -90 degC to 70 degC is accepted, for example "12 degC"',
    ],
    [
      "stages",
      { ...rocket, stages: 2 },
      "stages: not covered; one stage with one motor is accepted: clusters, staging and air starts are not covered",
    ],
    [
      "a cluster",
      bent(rocket, ["mount", "count"], 3),
      "mount.count: not covered; one stage with one motor is accepted: clusters, staging and air starts are not covered",
    ],
    [
      "motors of a plan",
      { ...plan, motors: [] },
      "motors: not covered; one stage with one motor is accepted: clusters, staging and air starts are not covered",
    ],
    [
      "an air start",
      { ...plan, airStart: "3 s" },
      "airStart: not covered; one stage with one motor is accepted: clusters, staging and air starts are not covered",
    ],
    [
      "boosters",
      { ...rocket, boosters: [] },
      "boosters: not covered; one stage with one motor is accepted: clusters, staging and air starts are not covered",
    ],
    [
      "a wrong kind",
      { ...rocket, kind: "roket" },
      'kind: "roket" found; one of "plan", "rocket", "motor", "motor-in-hand", "tool", "field", "flyer", "rule-set", "log", "flight", "library" is accepted, for example "rocket"',
    ],
    ["a missing version", bent(rocket, ["version"], undefined), "version: nothing found; 1 is accepted, for example 1"],
    [
      "a newer version",
      { ...rocket, version: 9 },
      "version: made by a newer version of this program: 9 found; version 1 or older is accepted",
    ],
    [
      "falling times",
      bent(motor, ["thrust", "time", 3], 0.05),
      "thrust.time[3]: times must rise: 0.05 found; a time after 0.1 s is accepted",
    ],
    [
      "lists of two lengths",
      bent(motor, ["thrust", "newtons"], [0, 1]),
      "thrust.newtons: a list of 2 found; a list of 6, one for each time is accepted",
    ],
    [
      "propellant above the loaded mass",
      bent(motor, ["propellantMass"], "340 g"),
      'propellantMass: the propellant outweighs the motor: "340 g" found; less than loadedMass is accepted',
    ],
    [
      "an adjustable delay without its length",
      bent(motor, ["delay", "longest"], undefined),
      'delay.longest: nothing found; a time with its unit, above 0 s to 60 s is accepted, for example "14 s"',
    ],
    [
      "an unknown kind of delay",
      bent(motor, ["delay", "kind"], "electric"),
      'delay.kind: "electric" found; one of "adjustable", "fixed", "none" is accepted, for example "adjustable"',
    ],
    [
      "a guide without length",
      { ...plan, guide: {} },
      'guide.travel: nothing found; travel, or rail and stop is accepted, for example "1.8 m"',
    ],
    [
      "a rail without stop",
      { ...plan, guide: { rail: "2.4 m" } },
      'guide.stop: nothing found; the height of the stop above the rail\'s lower end is accepted, for example "150 mm"',
    ],
    [
      "a guide with both",
      bent(plan, ["guide", "travel"], "1.8 m"),
      'guide.travel: "1.8 m" found; either travel, or rail and stop is accepted',
    ],
    [
      "both pressures",
      bent(plan, ["weather", "seaLevelPressure"], "1013 hPa"),
      'weather.seaLevelPressure: "1013 hPa" found; either pressure, as read at the field, or seaLevelPressure is accepted',
    ],
    [
      "a spread that is no word",
      { ...plan, spread: "zero" },
      'spread: "zero" found; "none", or an object with one-sigma values is accepted, for example { "dragScale": 0.08 }',
    ],
    [
      "no fins",
      bent(rocket, ["fins"], undefined),
      'fins: nothing found; at least one ring of fins, or statedCp is accepted, for example "statedCp": "1.18 m"',
    ],
    [
      "no mass",
      bent(rocket, ["massWithoutMotor"], undefined),
      'massWithoutMotor: nothing found; massWithoutMotor, or massReady, balanceReady and readyWith instead of both is accepted, for example "1.95 kg"',
    ],
    [
      "masses of both forms",
      { ...rocket, massReady: "2.28 kg" },
      'massWithoutMotor: "1.95 kg" found; either the figures without motor or the figures ready to fly is accepted',
    ],
    [
      "a back-up charge without electronics",
      bent(rocket, ["recovery", "motorCharge"], "backup"),
      'recovery.electronics: nothing found; the electronics that the charge stands behind is accepted, for example { "fires": "apogee" }',
    ],
    [
      "a tool with neither ends nor stop",
      bent(tool, ["ends"], undefined),
      'ends: nothing found; ends with depthPerSecond, or a stop is accepted, for example [{ "name": "A", "removes": "6 s" }]',
    ],
    [
      "a tool whose seconds have no depth",
      bent(tool, ["depthPerSecond"], undefined),
      'depthPerSecond: nothing found; the depth of grain for one second is accepted, for example "1/32 in"',
    ],
    [
      "a removal of neither kind",
      bent(tool, ["ends", 0, "removes"], "6"),
      'ends[0].removes: the unit is missing: "6" found; a time with its unit, or a length with its unit, above 0 is accepted, for example "6 s"',
    ],
    [
      "a field without elevation",
      bent(field, ["elevation"], undefined),
      'elevation: nothing found; a length with its unit, -500 m to 6000 m is accepted, for example "210 m"',
    ],
    [
      "a wrong day",
      { ...plan, date: "2 May" },
      'date: "2 May" found; a day as year-month-day is accepted, for example "2026-05-02"',
    ],
    [
      "a negative humidity",
      bent(plan, ["weather", "humidity"], 55),
      "weather.humidity: 55 found; a number from 0 to 1 is accepted, for example 0.6",
    ],
    [
      "a rocket that is a number",
      { ...plan, rocket: 7 },
      'rocket: 7 found; a rocket document, or the path of its file is accepted, for example "demo.rocket.json"',
    ],
  ];
  test.each(cases)("says what is wrong with %s", (_, document, sentence) => {
    expect(sentences(document)).toContain(sentence.replace("unit, -500 m to", "unit, from -500 m to"));
  });

  test("answers that a newer document is newer, and unreadable text unreadable", () => {
    expect(read({ ...rocket, version: 2 }).state).toBe("newer");
    expect(read({ ...plan, rocket: { ...rocket, version: 2 } }).state).toBe("newer");
    expect(readDocument("{", { file: "a.json" }).state).toBe("unreadable");
    expect(readDocument("[1]", { file: "a.json" }).state).toBe("unreadable");
  });

  test("tolerates a byte-order mark", () => {
    expect(readDocument(`\uFEFF${JSON.stringify(rocket)}`, { file: "a.json" }).state).toBe("ready");
  });

  test("suggests the field that was meant", () => {
    const near = (document: unknown) => read(document).issues[0]?.accepted;
    expect(near({ ...rocket, balance: "0.86 m" })).toBe("did you mean `balanceWithoutMotor`?");
    expect(near(bent(motor, ["delay", "longst"], "14 s"))).toBe("did you mean `longest`?");
    expect(near({ ...rocket, colour: "red" })).toMatch(/^one of the fields \$schema, kind/);
  });

  test("says that a kind does not fit where another is needed", () => {
    const result = readDocument(JSON.stringify(motor), { file: "a.json", kinds: ["rocket"] });
    expect(result.issues.map(issueSentence)).toEqual([
      'kind: "motor" found; "rocket" is accepted, for example "rocket"',
    ]);
  });

  test("a later depth that is smaller needs its reason", () => {
    const again = { when: "2026-05-02T10:30", after: "24.0 mm" };
    const readings = [...motorInHand.readings, again];
    expect(sentences({ ...motorInHand, readings })).toEqual([
      'readings[1].after: a cut never becomes shallower: "24.0 mm" found; a depth no less than the last, or a note with the reason of the correction is accepted, for example "note": "caliper was held aslant"',
    ]);
    expect(
      sentences({ ...motorInHand, readings: [...motorInHand.readings, { ...again, note: "read aslant" }] }),
    ).toEqual([]);
  });

  test("knows every kind of document", () => expect(kindNames).toHaveLength(11));
});

test("readBytes() reports an encoding as an issue of the file", () => {
  const result = readBytes(new Uint8Array([0xff, 0xfe, 0x7b, 0]), { file: "a.json" });
  expect(result.issues).toEqual([
    {
      file: "a.json",
      path: "",
      code: "encoding",
      found: "UTF-16 text",
      accepted: "a file saved as UTF-8",
      example: "",
    },
  ]);
});
