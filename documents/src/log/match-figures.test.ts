import { describe, expect, test } from "vitest";
import { inventedFlight, logText } from "../../test/invented-log.js";
import { ready, taken } from "../../test/read-ready.js";

const flight = inventedFlight();

describe("readLog() tells columns and units by what figures do", () => {
  const everything = (unit: { t: number; h: number; v: number; a: number; p: number; b: number }) =>
    logText(
      flight,
      [
        ["", ({ time }) => time / unit.t, 4],
        ["", ({ height }) => height / unit.h, 4],
        ["", ({ speed }) => speed / unit.v, 4],
        ["", ({ acceleration }) => acceleration / unit.a, 4],
        ["", ({ pressure }) => pressure / unit.p, 4],
        ["", ({ temperature }) => temperature],
        ["", ({ battery }) => battery / unit.b, 4],
        ["", ({ mark }) => mark],
      ],
      { headings: false },
    );

  test.each([
    ["SI", { t: 1, h: 1, v: 1, a: 1, p: 1, b: 1 }, ["s", "m", "m/s", "m/s2", "Pa", "degC", "V"]],
    [
      "ms, cm, g, hPa, mV",
      { t: 1e-3, h: 0.01, v: 1, a: 9.80665, p: 100, b: 1e-3 },
      ["ms", "cm", "m/s", "g", "hPa", "degC", "mV"],
    ],
    [
      "feet and inches of mercury",
      { t: 1e-6, h: 0.3048, v: 0.44704, a: 0.3048, p: 3386.389, b: 1 },
      ["us", "ft", "mph", "ft/s2", "inHg", "degC", "V"],
    ],
  ])("%s", (_, unit, symbols) => {
    const read = ready(everything(unit));
    const names = ["time", "height", "speed", "acceleration", "pressure", "temperature", "battery"];
    expect(taken(read)).toEqual([...names.map((name, k) => `${name} ${symbols[k]}`), "marks"]);
    expect(read.samples.marks.map(({ text }) => text)).toEqual(["ASCENT", "DESCENT", "LANDED"]);
    expect(read.samples.marks[0]!.time).toBeCloseTo(5, 9);
    expect(read.doubts.filter(({ code }) => code === "column-by-figures")).toHaveLength(8);
    expect(read.samples.pressure![0]).toBeCloseTo(flight[0]!.pressure, 0);
  });

  test.each([
    ["s", "m"],
    ["s", "ft"],
    ["ms", "m"],
    ["ms", "ft"],
    ["us", "cm"],
  ])("time in %s and height in %s, with nothing beside them", (time, height) => {
    const t = { s: 1, ms: 1e-3, us: 1e-6 }[time]!;
    const h = { m: 1, ft: 0.3048, cm: 0.01 }[height]!;
    const read = ready(
      logText(
        flight,
        [
          ["", (row) => row.time / t, 3],
          ["", (row) => row.height / h],
        ],
        { headings: false, delimiter: ";" },
      ),
    );
    expect(taken(read)).toEqual([`time ${time}`, `height ${height}`]);
    expect(read.doubts.map(({ code }) => code)).toContain("unit-guessed");
  });

  test("an accelerometer that points aft is turned round", () => {
    const read = ready(
      logText(flight, [
        ["time (s)", (row) => row.time],
        ["accel", (row) => -row.acceleration / 9.80665, 4],
      ]),
    );
    expect(taken(read)).toEqual(["time s", "reversed acceleration g"]);
    expect(read.mapping.acceleration).toEqual({ column: "accel", unit: "g", reversed: true });
    expect(Math.max(...read.samples.acceleration!)).toBeCloseTo(90, -1);
    expect(read.doubts.map(({ code }) => code)).toContain("reversed");
    expect([
      ...ready(
        logText(flight, [
          ["time (s)", (row) => row.time],
          ["accel", (row) => -row.acceleration / 9.80665, 4],
        ]),
        read.mapping,
      ).samples.acceleration!,
    ]).toEqual([...read.samples.acceleration!]);
  });

  test("an accelerometer without gravity is told from the speed that it makes", () => {
    for (const [unit, symbol] of [
      [9.80665, "g"],
      [1, "m/s2"],
    ] as const) {
      const read = ready(
        logText(flight, [
          ["time (s)", (row) => row.time],
          ["height (m)", (row) => row.height],
          ["accel", (row) => (row.acceleration - 9.80665) / unit, 4],
        ]),
      );
      expect(taken(read)[2]).toBe(`acceleration ${symbol}`);
    }
  });

  test("of three axes the one along the rocket is taken, with a doubt", () => {
    const read = ready(
      logText(flight, [
        ["time (s)", (row) => row.time],
        ["ax (g)", (row) => 0.02 * Math.sin(row.time), 4],
        ["ay (g)", (row) => row.acceleration / 9.80665, 4],
        ["az (g)", (row) => 0.03 * Math.cos(row.time), 4],
      ]),
    );
    expect(taken(read)).toEqual(["time s", "-", "acceleration g", "-"]);
    expect(read.doubts.map(({ code }) => code)).toContain("axis-guessed");
  });

  test("heights that do not start near zero stand above the sea", () => {
    const columns = (name: string) =>
      logText(flight, [
        ["time (s)", (row) => row.time],
        [name, (row) => row.height + 210],
      ]);
    expect(taken(ready(columns("Altitude (m)")))).toEqual(["time s", "altitude m"]);
    expect(ready(columns("Altitude (m)")).doubts.map(({ code }) => code)).toEqual(["height-or-altitude"]);
    expect(ready(columns("Altitude MSL (m)")).doubts).toEqual([]);
  });

  test("a column that counts rows is not the time", () => {
    const read = ready(
      logText(
        flight,
        [
          ["", (row) => Math.round(20 * row.time), 0],
          ["", (row) => row.time],
          ["", (row) => row.height],
        ],
        {
          headings: false,
        },
      ),
    );
    expect(taken(read)).toEqual(["-", "time s", "height m"]);
  });

  test("a heading that names another unit than the air's pressure can have is doubted", () => {
    const read = ready(
      logText(flight, [
        ["time (s)", (row) => row.time],
        ["pressure (Pa)", (row) => row.pressure / 100, 3],
      ]),
    );
    expect(taken(read)).toEqual(["time s", "pressure hPa"]);
    expect(read.doubts).toMatchObject([{ code: "unit-disagrees", found: "Pa", instead: "hPa" }]);
  });

  test("an hour on the pad at 50 rows a second hides no flight", () => {
    const long = inventedFlight({ rate: 50, pad: 3600 });
    const read = ready(
      logText(
        long,
        [
          ["", (row) => row.time],
          ["", (row) => row.height / 0.3048],
          ["", (row) => row.pressure, 0],
        ],
        { headings: false },
      ),
    );
    expect(taken(read)).toEqual(["time s", "height ft", "pressure Pa"]);
    expect(read.rows).toBe(long.length);
  });
});

// 24 flights from 130 m to 1,300 m, seeds 1 to 24, with 0.1 m to 0.8 m of noise at 20 and 50 rows a second
test("readLog() tells metres from feet and seconds from milliseconds in every one of 24 flights", () => {
  for (let seed = 1; seed <= 24; seed++) {
    const [rate, noise, push] = [[20, 50][seed % 2]!, [0.1, 0.4, 0.8][seed % 3]!, [40, 90, 160][(seed >> 3) % 3]!];
    const rows = inventedFlight({ seed, rate, noise, push, pad: seed, elevation: 40 * seed });
    const [t, h] = [[1, 1e-3][seed & 1]!, [1, 0.3048][(seed >> 1) & 1]!];
    const text = logText(
      rows,
      [
        ["", (row) => row.time / t, 3],
        ["", (row) => row.height / h, 1],
      ],
      { headings: false },
    );
    expect(taken(ready(text)), `seed ${seed}`).toEqual([
      t === 1 ? "time s" : "time ms",
      h === 1 ? "height m" : "height ft",
    ]);
  }
});

test("readLog() is not led astray by spikes, gaps and an instrument's own sign for nothing", () => {
  const text = logText(
    flight.filter((_, k) => k < 400 || k > 440),
    [
      ["", (row) => row.time],
      ["", (row) => (Math.abs(row.time - 14.65) < 0.1 ? -9999 : row.height / 0.3048)],
      ["", (row) => (Math.abs(row.time - 14.65) < 0.1 ? 1013 : row.pressure / 100)],
    ],
    { headings: false },
  );
  expect(taken(ready(text))).toEqual(["time s", "height ft", "pressure hPa"]);
});
