import { describe, expect, test } from "vitest";
import { demoFiles, few, inHand, runOver } from "../../test/demo.js";
import { inProcessPool } from "../io/pool.js";

const widest = (text: string): number => Math.max(...text.split("\n").map((line) => [...line].length));

const unconfirmed = {
  "demo-h150.motor.json": (motor: { delay: { instructions?: unknown } }) => {
    delete motor.delay.instructions;
  },
};
const stormy = {
  "plan.json": (plan: { weather: { wind: string } }) => {
    plan.weather.wind = "9 m/s";
  },
  "demo.rocket.json": (rocket: { recovery: { main: { strength: string } } }) => {
    rocket.recovery.main.strength = "150 N";
  },
};
const backUp = {
  "demo.rocket.json": (rocket: { recovery: Record<string, unknown> }) => {
    rocket.recovery["motorCharge"] = "backup";
    rocket.recovery["electronics"] = { fires: "apogee", delay: "0 s" };
  },
};
const depthStop = {
  "stop.tool.json": () => ({
    kind: "tool",
    version: 1,
    name: "Two-collar cutter (demo)",
    stop: { from: "0 mm", to: "8 mm", step: "0.1 mm" },
  }),
  "plan.json": (plan: { tool: string }) => {
    plan.tool = "stop.tool.json";
  },
};
const longNames = {
  "two-collar.tool.json": (tool: { ends: { name: string }[]; spacers: { name: string }[] }) => {
    tool.ends[0] = { ...tool.ends[0], name: "the long end with the very wide black collar on its shank" };
    tool.spacers[0] = { ...tool.spacers[0], name: "washeroftenmillimetreswithanameofasinglewordthatislong" };
  },
};

test("one draw of a plan with a spread is not called a flight without spread", async () => {
  const { out } = await runOver(demoFiles(), ["decide", "plan.json", "--draws", "1"]);
  expect(out).toMatch(/^One flight, which makes no odds: (not )?clean, /m);
  expect(out.replace(/\s+/g, " ")).not.toMatch(/without (any )?spread/);
});

describe("decide()", () => {
  test("answers first: the cut and its odds on the first line, and ends with 0", async () => {
    const { out, err, code } = await runOver(demoFiles(), ["decide", "plan.json", ...few]);
    const lines = out.split("\n");
    expect(lines[0]).toMatch(/^Cut to 9 s: take 5 s out, end A with the ring, 4\.0 mm \(5\/32 in\)\./);
    expect(lines.slice(0, 2).join(" ")).toMatch(/\d+ % clean \(± \d+\.\d\), holds (over )?[\d.]+ %\./);
    expect(out).toContain("9 in 10 open below");
    expect(out.trimEnd().split("\n").at(-1)).toContain("local law come before anything said here");
    expect({ err, code }).toEqual({ err: "", code: 0 });
  });

  test.each([
    ["the demo", demoFiles()],
    ["unconfirmed instructions", demoFiles(unconfirmed)],
    ["a storm", demoFiles(stormy)],
    ["a back-up charge", demoFiles(backUp)],
    ["a depth stop", demoFiles(depthStop)],
    ["long names", demoFiles(longNames)],
    ["an over-cut motor", inHand("28.2 mm")],
  ])("keeps to 100 columns: %s", async (_, files) => {
    const { out } = await runOver(files, ["decide", "plan.json", ...few]);
    expect(widest(out)).toBeLessThanOrEqual(100);
    expect(out).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
    expect(out).not.toMatch(/[^\d.]0 %|100 %/);
  });

  test("shows no end, spacer or depth anywhere until the instructions are confirmed", async () => {
    const { out, code } = await runOver(demoFiles(unconfirmed), ["decide", "plan.json", ...few]);
    expect(out).toMatch(/^STOP: /);
    expect(out).toContain("no cut is shown");
    expect(out).not.toMatch(/end [AB]|ring|\/32 in|\/64 in|Before you cut/);
    expect(code).toBe(3);
    const { json } = await runOver(demoFiles(unconfirmed), ["decide", "plan.json", "--json", ...few]);
    for (const setting of json().settings.filter((each: { removed: number }) => each.removed > 0))
      expect(setting).toMatchObject({ end: null, depth: null, spacers: [] });
  });

  test("says stop first and asks for no cut where no setting holds", async () => {
    const { out, code } = await runOver(demoFiles(stormy), ["decide", "plan.json", ...few]);
    const [stops, verdict] = [out.indexOf("STOP: "), out.indexOf("At best")];
    expect(stops).toBe(0);
    expect(verdict).toBeGreaterThan(stops);
    expect(out).toContain("and that does not hold");
    expect(out).toContain("What would help:");
    expect(code).toBe(3);
  });

  test("says only what it finds worth a look, and ends with 0, where odds and checks are good", async () => {
    const { out, code } = await runOver(
      demoFiles({
        "demo.rocket.json": (rocket: { recovery: { main: { strength?: string }; harness?: unknown } }) => {
          delete rocket.recovery.main.strength;
          delete rocket.recovery.harness;
        },
      }),
      ["decide", "plan.json", ...few],
    );
    expect(out).toContain("LOOK: strength of the recovery");
    expect(out).toContain("nothing is rated");
    expect(code).toBe(0);
  });

  test("tells in one line how many rules pass and how many were not checked, and lists all on demand", async () => {
    const short = await runOver(demoFiles(), ["decide", "plan.json", ...few]);
    expect(short.out).toMatch(
      /\n\d+ rules are within limits \(--all-checks lists every rule\)\. \d+ rules were not checked/,
    );
    expect(short.out).not.toContain("Every rule");
    const { out } = await runOver(demoFiles(), ["decide", "plan.json", "--all-checks", ...few]);
    expect(out).toMatch(
      /\n {2}- within: Guide-exit speed 1\d\.\d m\/s, least 15 m\/s\. \[common practice, no source\]/,
    );
    expect(out).toMatch(/\n {2}- not checked: Cloud cover\. Not known: the cloud cover\. \[14 CFR 101\.25\(a\)/);
    expect(out.replace(/\s+/g, " ")).toContain("What is not known would be said here:");
    expect(out).toMatch(/\n {4}Plan: .*site\.cloudCover/s);
    expect(widest(out)).toBeLessThanOrEqual(100);
  });

  test("says stop, and ends with 3, where the wind is above the code's limit or the club's", async () => {
    const windOf = (wind: string, ruleSet?: unknown) =>
      demoFiles({
        "plan.json": (plan: { weather: { wind: string }; ruleSet?: unknown }) => {
          plan.weather.wind = wind;
          if (ruleSet !== undefined) plan.ruleSet = ruleSet;
        },
      });
    const club = { kind: "rule-set", version: 1, name: "Demo club", limits: { "wind-limit": { stop: "1.5 m/s" } } };
    const bound = await runOver(windOf("2 m/s", club), ["decide", "plan.json", ...few]);
    expect(bound.out).toMatch(/^STOP: wind 2 m\/s, most 1\.5 m\/s: the wind is above the limit for a launch: wait\./);
    expect(bound.out).toContain("Rules: Demo club");
    expect(bound.code).toBe(3);
    const free = await runOver(windOf("2 m/s"), ["decide", "plan.json", ...few]);
    expect(free.code).toBe(0);
    const { json } = await runOver(windOf("9 m/s"), ["decide", "plan.json", "--json", ...few]);
    const wind = json().checks.find(({ code }: { code: string }) => code === "wind-limit");
    expect(wind).toMatchObject({ verdict: "stop", unit: "m/s", sense: "most", status: "verified" });
    expect(wind.source).toContain("High Power Rocket Safety Code");
  });

  test("cuts a long list down to the settings around the best", async () => {
    const { out } = await runOver(demoFiles(depthStop), ["decide", "plan.json", ...few]);
    expect(out).toMatch(/\d+ more settings are left out here/);
    expect(out.split("\n").filter((line) => line.includes("depth stop  ")).length).toBeLessThanOrEqual(12);
  });

  test("asks both questions of a back-up charge", async () => {
    const { out } = await runOver(demoFiles(backUp), ["decide", "plan.json", ...few]);
    expect(out).toContain("Odds that it fires before the electronics has opened the rocket:");
    expect(out).toContain("If the electronics fails, it opens the rocket alone:");
  });

  test("offers an over-cut motor ballast and the other rockets of the folder", async () => {
    const heavy = {
      ...JSON.parse(demoFiles()["demo.rocket.json"] ?? ""),
      name: "Demo rocket 76, heavy",
      massWithoutMotor: "2.7 kg",
    };
    const files: Record<string, string> = {
      ...inHand("28.2 mm", { "heavy.rocket.json": () => heavy }),
      "broken.rocket.json": "{",
      "notes.txt": "no document",
    };
    const { out } = await runOver(files, ["decide", "plan.json", ...few]);
    expect(out).toContain("Cut deeper than meant: the delay is now 6.4 s");
    expect(out).toContain("Ballast of");
    expect(out).toContain("Another rocket, Demo rocket 76, heavy");
    const apart = Object.fromEntries(Object.entries(files).map(([path, text]) => [`field/${path}`, text]));
    const plan = JSON.parse(files["plan.json"] ?? "");
    for (const part of ["rocket", "motor", "tool", "field"]) plan[part] = `../field/${plan[part]}`;
    delete apart["field/plan.json"];
    const elsewhere = { ...apart, "day/plan.json": JSON.stringify(plan) };
    expect((await runOver(elsewhere, ["decide", "day/plan.json", ...few])).out).toContain("Demo rocket 76, heavy");
  });

  test("shows the flyer's own choice beside the suggestion", async () => {
    const files = demoFiles({
      "plan.json": (plan: { choice: unknown }) => {
        plan.choice = { delay: "8 s", reason: "landing before the trees" };
      },
    });
    const { out } = await runOver(files, ["decide", "plan.json", ...few]);
    expect(out).toContain("Your own choice is 8 s (landing before the trees):");
    expect(out).toContain("* your own choice");
  });

  test("keeps each caution beside its hazard", async () => {
    const { out } = await runOver(demoFiles(), ["decide", "plan.json", ...few]);
    const section = (head: string): string => out.split("\n\n").find((each) => each.startsWith(head)) ?? "";
    expect(section("Before you cut")).toContain("eye protection");
    expect(section("If nothing opens")).toContain("A late charge can fire");
    expect(section("Packing")).toContain("retention");
    expect(out).not.toMatch(/\bsafe\b/);
  });

  test("shows no control characters that a document carries", async () => {
    const files = demoFiles({
      "plan.json": (plan: { name: string; choice: unknown }) => {
        plan.name = "red \u001b[31m plan\u202e";
        plan.choice = { delay: "9 s", reason: "bell \u0007" };
      },
    });
    const { out } = await runOver(files, ["decide", "plan.json", ...few]);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f\u007f\u202e]/);
  });

  test("weighs words only where colour is wanted", async () => {
    const plain = await runOver(demoFiles(), ["decide", "plan.json", ...few]);
    const bold = await runOver(demoFiles(), ["decide", "plan.json", ...few], { colour: true });
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(bold.out.replace(/\u001b\[\d+m/g, "")).toBe(plain.out);
    expect(bold.out).not.toBe(plain.out);
  });

  test("the aligned model gives other odds in wind", async () => {
    const one = await runOver(demoFiles(), ["decide", "plan.json", "--json", ...few]);
    const other = await runOver(demoFiles(), ["decide", "plan.json", "--json", "--model", "aligned", ...few]);
    expect(one.json().model).toBe("pitching");
    expect(other.json().model).toBe("aligned");
    expect(other.json().settings).not.toEqual(one.json().settings);
  });

  test("the rigid model flies its draws too, near the default's odds", async () => {
    const words = ["decide", "plan.json", "--json", "--draws", "64"];
    const quick = (await runOver(demoFiles(), words)).json();
    const rigid = (await runOver(demoFiles(), [...words, "--model", "rigid"])).json();
    expect({ model: rigid.model, draws: rigid.draws }).toEqual({ model: "rigid", draws: 64 });
    expect(rigid.flight.lastFitting.time).toBeGreaterThan(rigid.flight.guideExit.time);
    expect(quick.flight.lastFitting.time).toBeCloseTo(rigid.flight.lastFitting.time, 3);
    expect(rigid.coast).not.toEqual(quick.coast);
    // the same draws but for the body's turn: a few hundredths apart
    expect(Math.abs(rigid.coast.p50 - quick.coast.p50)).toBeLessThan(0.3);
  });

  test("the same seed gives the same answer, another seed another", async () => {
    const words = ["decide", "plan.json", "--json", ...few];
    const [first, again, other] = [
      await runOver(demoFiles(), words),
      await runOver(demoFiles(), words),
      await runOver(demoFiles(), [...words, "--seed", "2"]),
    ];
    expect(again.out).toBe(first.out);
    expect(other.out).not.toBe(first.out);
  });

  test("tells how far the draws are, and ends the line", async () => {
    const seen: number[] = [];
    let ends = 0;
    const progress = { update: (done: number) => seen.push(done), end: () => ends++ };
    await runOver(demoFiles(), ["decide", "plan.json", "--draws", "600"], { progress });
    expect(seen.slice(0, 3)).toEqual([50, 300, 550]);
    expect(ends).toBeGreaterThan(0);
  });

  test("one worker unless told otherwise or very many draws; closes what it opened", async () => {
    const opened: number[] = [];
    let closed = 0;
    const openPool = (workers: number) => {
      opened.push(workers);
      return Promise.resolve({ ...inProcessPool(), close: async () => void closed++ });
    };
    const io = { openPool, cores: 8 };
    await runOver(demoFiles(), ["decide", "plan.json", ...few], io);
    await runOver(demoFiles(), ["decide", "plan.json", ...few, "--workers", "3"], io);
    await runOver(demoFiles(), ["decide", "plan.json", "--draws", "4001"], io);
    expect(opened).toEqual([1, 3, 4]);
    expect(closed).toBe(3);
  });

  test("tells every issue of every file on standard error, and ends with 2", async () => {
    const files = demoFiles({
      "plan.json": (plan: { guide: unknown; weather: { wind: unknown } }) => {
        plan.guide = { travel: "1.8" };
        plan.weather.wind = 3;
      },
      "demo.rocket.json": (rocket: { massWithoutMotor: string }) => {
        rocket.massWithoutMotor = "-1 kg";
      },
    });
    const { out, err, code } = await runOver(files, ["decide", "plan.json"]);
    expect(out).toBe("");
    for (const part of ["guide.travel", "weather.wind", "massWithoutMotor", "for example"]) expect(err).toContain(part);
    expect(widest(err)).toBeLessThanOrEqual(100);
    expect(code).toBe(2);
  });
});
