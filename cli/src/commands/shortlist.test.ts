import { describe, expect, test } from "vitest";
import { demoFiles, type Loose, runOver } from "../../test/demo.js";
import { faultsOf, schemaOf } from "../../test/json-schema.js";
import { inProcessPool } from "../io/pool.js";

const demo: Loose = JSON.parse(demoFiles()["demo-h150.motor.json"] ?? "");
const motor = (name: string, change: Loose = {}): Loose => ({ ...demo, name, certified: "somebody", ...change });
const scaled = (name: string, scale: number, change: Loose = {}): Loose => {
  const newtons = demo.thrust.newtons.map((each: number) => scale * each);
  const { designation: _, ...plain } = motor(name, { thrust: { ...demo.thrust, newtons }, ...change });
  return plain;
};
const shelf: Readonly<Record<string, string>> = {
  "motors/a.motor.json": JSON.stringify(motor("Demo A", { price: 40 })),
  "motors/b.motor.json": JSON.stringify(scaled("Demo B", 1.15)),
  "motors/broken.motor.json": '{ "kind": "motor", "version": 1, "name": "Demo broken", "diameter": 38 }',
  "motors/cut-off.json": '{ "kind": "mo',
  "motors/tool.json": demoFiles()["two-collar.tool.json"] ?? "",
  "motors/other.json": '{ "some": "thing else" }',
  "motors/notes.txt": "no document",
  "motors/weak.motor.json": JSON.stringify(scaled("Demo weak", 0.3)),
  "motors/wide.motor.json": JSON.stringify(motor("Demo wide", { diameter: "54 mm" })),
};
const files = (bend: Parameters<typeof demoFiles>[0] = {}) => ({ ...demoFiles(bend), ...shelf });
const asked = ["shortlist", "plan.json", "--motors", "motors", "--draws", "64"];
const flyer = {
  "plan.json": (plan: Loose) => {
    plan.flyer = "me.flyer.json";
  },
  "me.flyer.json": () => ({ kind: "flyer", version: 1, name: "Somebody", certification: 1 }),
};

describe("shortlist()", () => {
  test("leads with how many are left and with the first of them, its cut and its odds", async () => {
    const { out, err, code } = await runOver(files(), asked);
    expect(out).toMatch(/^2 of 6 motors are left for Demo rocket 76 here today, best odds of a clean opening first\./);
    expect(out.split("\n\n")[0]?.replaceAll("\n", " ")).toMatch(
      /Demo [AB]: cut to \d+ s; \d+ % clean .*, holds .*; top \d+ m\.$/,
    );
    expect({ err, code }).toEqual({ err: "", code: 0 });
  });

  test("shows no way to cut, which belongs beside its cautions, and a price only where one is known", async () => {
    const { out } = await runOver(files(), asked);
    expect(out).not.toMatch(/end [AB]|ring|\/32 in|\/64 in/);
    expect(out).toContain("price");
    const unpriced = { ...files(), "motors/a.motor.json": JSON.stringify(motor("Demo A")) };
    expect((await runOver(unpriced, asked)).out).not.toContain("price");
  });

  test("groups refusals by their reason, each with value and limit, and ranks none of them", async () => {
    const { out } = await runOver(files(), asked);
    const section = (head: string) => out.split("\n\n").find((each) => each.startsWith(head)) ?? "";
    expect(section("Refused")).toMatch(/Too wide for the mount, most 38 mm: Demo wide 54 mm/);
    expect(section("Refused")).toMatch(/Thrust to weight, least 3: Demo weak 1\.\d/);
    expect(section("Motors that are not refused")).not.toMatch(/Demo (wide|weak|broken)/);
  });

  test("tells what is wrong with a broken motor and goes on; documents of other kinds are passed over", async () => {
    const { out } = await runOver(files(), asked);
    const section = out.split("\n\n").find((each) => each.startsWith("Not judged")) ?? "";
    expect(section).toContain("broken.motor.json");
    expect(section).toContain("cut-off.json");
    expect(section).not.toMatch(/tool\.json|other\.json|notes/);
  });

  test("orders by the aim", async () => {
    const names = async (...words: string[]) =>
      (await runOver(files(), [...asked, "--json", ...words])).json().ranked.map(({ name }: Loose) => name);
    expect(await names("--aim", "highest")).toEqual(["Demo B", "Demo A"]);
    expect(await names("--aim", "cheapest")).toEqual(["Demo A", "Demo B"]);
    expect(await names("--height", "300m")).toEqual(["Demo A", "Demo B"]);
  });

  test("gives the figures that decide gives with as many draws", async () => {
    const { ranked } = (await runOver(files(), [...asked, "--json"])).json();
    const decision = (await runOver(demoFiles(), ["decide", "plan.json", "--json", "--draws", "64"])).json();
    const row = ranked.find(({ name }: Loose) => name === "Demo A");
    const best = decision.settings.find(({ delay }: Loose) => delay === decision.toCut.delay);
    const { why, reachesLeast, reachesHolds } = decision.toCut;
    expect(row.toCut).toEqual({ ...best, why, reachesLeast, reachesHolds });
    expect(row.height).toEqual(decision.apogeeHeight);
  });

  test("the plan's own choice, and a motor of its own that does not fit, play no part", async () => {
    const bent = files({
      "plan.json": (plan) => {
        plan.choice = { delay: "14 s" };
      },
      "demo-h150.motor.json": (own) => {
        own.diameter = "54 mm";
      },
    });
    const { json } = await runOver(bent, [...asked, "--json"]);
    expect(json().ranked).toHaveLength(2);
  });

  test("asks the plan's flyer for a certificate, and says what it could not check without one", async () => {
    expect((await runOver(files(), asked)).out).toContain("not checked: certification level of the flyer");
    const { json } = await runOver(files(flyer), [...asked, "--json"]);
    expect(json().ranked.every(({ notChecked }: Loose) => notChecked.length === 0)).toBe(true);
    const unstated = { ...files(flyer), "motors/a.motor.json": JSON.stringify({ ...demo, name: "Demo A" }) };
    expect((await runOver(unstated, asked)).out.replace(/\s+/g, " ")).toContain(
      "Demo A: not checked: certificate of the motor, since who certified the motor is not known",
    );
    const novice = files({
      ...flyer,
      "me.flyer.json": () => ({ kind: "flyer", version: 1, name: "N", certification: 0 }),
    });
    const { out, code } = await runOver(novice, asked);
    expect(out).toMatch(/Certification level of the flyer, least 1: Demo A 0; Demo B 0/);
    expect(code).toBe(3);
  });

  test("ends with 2 where the folder holds no motor", async () => {
    const { out, err, code } = await runOver({ ...demoFiles(), "motors/notes.txt": "" }, asked);
    expect({ out, code }).toEqual({ out: "", code: 2 });
    expect(err).toMatch(/^--motors: no motor found in "motors"/);
  });

  test("ends with 3 where no motor is left", async () => {
    const storm = files({
      "plan.json": (plan) => {
        plan.weather.wind = "9 m/s";
      },
    });
    const left = await runOver(storm, asked);
    expect(left.out).toMatch(/^None of 6 motors is left/);
    expect(left.code).toBe(3);
  });

  test("refuses a cut for another grain as an issue of that motor alone", async () => {
    const other = JSON.stringify(motor("Demo other grain", { delay: { ...demo.delay, depthPerSecond: "1.1 mm" } }));
    const { json } = await runOver({ ...files(), "motors/other.motor.json": other }, [...asked, "--json"]);
    expect(json().unjudged.flatMap(({ issues }: Loose) => issues.map(({ code }: Loose) => code))).toContain(
      "tool-for-another-grain",
    );
    expect(json().ranked).toHaveLength(2);
  });

  test.each([
    ["the demo", files()],
    ["a flyer", files(flyer)],
    ["nothing but a broken motor", { ...demoFiles(), "motors/b.motor.json": "{" }],
    [
      "electronics",
      files({
        "demo.rocket.json": (rocket) => {
          rocket.recovery.motorCharge = "backup";
          rocket.recovery.electronics = { fires: "apogee", delay: "0 s" };
        },
      }),
    ],
  ])("shortlist.schema.json describes every key: %s", async (_, all) => {
    const { json } = await runOver(all, [...asked, "--json"]);
    expect(faultsOf(json(), schemaOf("shortlist"))).toEqual([]);
  });

  test("keeps to 100 columns and says nothing that is no word", async () => {
    const { out } = await runOver(files(), asked);
    expect(Math.max(...out.split("\n").map((line) => [...line].length))).toBeLessThanOrEqual(100);
    expect(out).not.toMatch(/NaN|Infinity|undefined|null|\[object|\bsafe\b/);
  });

  test("tells how many motors are judged, on as many workers as asked; the figures are the same", async () => {
    const seen: unknown[] = [];
    const opened: number[] = [];
    const io = {
      cores: 8,
      progress: {
        update: (done: number, of: number, what?: string) => void seen.push([done, of, what]),
        end: () => {},
      },
      openPool: (workers: number) => {
        opened.push(workers);
        return Promise.resolve(inProcessPool());
      },
    };
    const one = await runOver(files(), asked, io);
    const three = await runOver(files(), [...asked, "--workers", "3"], io);
    expect(three.out).toBe(one.out);
    expect(opened).toEqual([1, 3]);
    expect(seen.slice(0, 4)).toEqual([1, 2, 3, 4].map((done) => [done, 4, "motors"]));
  });

  test("tells the issues of a plan on standard error, and ends with 2", async () => {
    const bad = files({
      "plan.json": (plan) => {
        plan.guide = { travel: "1.8" };
      },
    });
    const { out, err, code } = await runOver(bad, asked);
    expect({ out, code }).toEqual({ out: "", code: 2 });
    expect(err).toContain("guide.travel");
  });
});
