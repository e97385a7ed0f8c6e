import { describe, expect, test } from "vitest";
import { demoFiles, type Loose, runOver } from "../../test/demo.js";

const rowsOf = (csv: string): string[][] =>
  csv
    .trimEnd()
    .split("\n")
    .map((line) => line.split(","));

describe("fly()", () => {
  test("tells the events of an unopened flight in their order", async () => {
    const { out, code } = await runOver(demoFiles(), ["fly", "plan.json"]);
    const order = ["lift-off", "guide exit", "burnout", "top", "landing, unopened"].map((name) =>
      out.indexOf(`  ${name}  `),
    );
    expect(order.every((place, i) => place > 0 && place > (order[i - 1] ?? 0))).toBe(true);
    expect(out).toContain("Nothing opens it: no delay was given.");
    expect(Math.max(...out.split("\n").map((line) => line.length))).toBeLessThanOrEqual(100);
    expect(code).toBe(0);
  });

  test("opens it after the delay and the line's stretch, and follows it down", async () => {
    const { json } = await runOver(demoFiles(), ["fly", "plan.json", "--json", "--delay", "9s"]);
    const { flight, fired, opened, trajectory } = json();
    expect(fired).toMatchObject({ by: "motor charge", delay: 9 });
    expect(fired.fires).toBeCloseTo(flight.burnout.time + 9, 9);
    expect(fired.opens).toBeCloseTo(fired.fires + 0.5, 9);
    expect(opened.landing.descentSpeed).toBeGreaterThan(3);
    expect(opened.landing.descentSpeed).toBeLessThan(12);
    expect(trajectory.time).toContain(fired.opens);
    expect(trajectory.phase.at(-1)).toBe("canopy");
    expect(trajectory.height.at(-1)).toBeCloseTo(0, 6);
  });

  test("takes the plan's own choice, or the motor's fixed delay, where none is given", async () => {
    const chosen = demoFiles({
      "plan.json": (plan: Loose) => {
        plan.choice = { delay: "8 s" };
      },
    });
    const fixed = demoFiles({
      "demo-h150.motor.json": (motor: Loose) => {
        motor.delay = { kind: "fixed", seconds: "10 s" };
        delete motor.designation;
      },
    });
    expect((await runOver(chosen, ["fly", "plan.json", "--json"])).json().fired.delay).toBe(8);
    expect((await runOver(fixed, ["fly", "plan.json", "--json"])).json().fired.delay).toBe(10);
  });

  test("lets electronics open it at the top, and a delay that is asked for stand alone", async () => {
    const files = demoFiles({
      "demo.rocket.json": (rocket: Loose) => {
        rocket.recovery.motorCharge = "backup";
        rocket.recovery.electronics = { fires: "apogee", delay: "1 s" };
      },
    });
    const { fired, flight } = (await runOver(files, ["fly", "plan.json", "--json"])).json();
    expect(fired.by).toBe("electronics");
    expect(fired.fires).toBeCloseTo(flight.apogee.time + 1, 9);
    const alone = (await runOver(files, ["fly", "plan.json", "--json", "--delay", "12s"])).json();
    expect(alone.fired).toMatchObject({ by: "motor charge", delay: 12 });
  });

  test("a delay that outlasts the flight opens nothing, and says so", async () => {
    const { out } = await runOver(demoFiles(), ["fly", "plan.json", "--delay", "50s"]);
    expect(out).toContain("It lands before that.");
    expect(out).toContain("landing, unopened");
  });

  test("writes the whole trajectory as CSV: one head, rising times, numbers everywhere", async () => {
    const { out } = await runOver(demoFiles(), ["fly", "plan.json", "--csv"]);
    const [heads, ...rows] = rowsOf(out);
    expect(heads?.join(",")).toBe(
      "time,east,north,height,velocityEast,velocityNorth,velocityUp,airspeed,mach,angleOfAttack,phase",
    );
    expect(rows.length).toBeGreaterThan(30);
    const times = rows.map((row) => Number(row[0]));
    expect(times.every((time, i) => i === 0 || time > (times[i - 1] ?? 0))).toBe(true);
    expect(
      rows.every(
        (row) => row.length === 11 && row.slice(0, 10).every((cell) => Number.isFinite(Number(cell || "NaN"))),
      ),
    ).toBe(true);
  });

  test("--every spaces the rows evenly up to the end", async () => {
    const { out } = await runOver(demoFiles(), ["fly", "plan.json", "--csv", "--every", "0.5s"]);
    const times = rowsOf(out)
      .slice(1)
      .map((row) => Number(row[0]));
    expect(times.slice(0, -1).every((time) => Math.abs(time / 0.5 - Math.round(time / 0.5)) < 1e-6)).toBe(true);
  });

  test("the rigid model tells when the last fitting leaves, and turns on it before", async () => {
    const { out } = await runOver(demoFiles(), ["fly", "plan.json", "--model", "rigid"]);
    expect(out).toContain("  last fitting  ");
    expect(out).toContain("rigid model");
    const { trajectory, model } = (
      await runOver(demoFiles(), ["fly", "plan.json", "--model", "rigid", "--json"])
    ).json();
    expect(model).toBe("rigid");
    const phases = trajectory.phase.filter((phase: string, i: number) => phase !== trajectory.phase[i - 1]);
    expect(phases).toEqual(["guide", "pivot", "rigid", "aligned"]);
  });

  test("tells the stability over the flight where it matters, and the same figures in JSON", async () => {
    const { out } = await runOver(demoFiles(), ["fly", "plan.json"]);
    const { stability, flight } = (await runOver(demoFiles(), ["fly", "plan.json", "--json"])).json();
    const [exit] = stability.moments;
    expect(exit.which).toBe("guide-exit");
    expect(exit.time).toBe(flight.guideExit.time);
    const [row = ""] =
      /^ {2}guide exit +[\d.]+ +0\.\d\d +\d\.\d\d .*$/mu.exec(out.slice(out.indexOf("Stability"))) ?? [];
    expect(row.trim().split(/ {2,}/).slice(4)).toEqual([
      exit.margin.toFixed(2),
      (exit.frequency / (2 * Math.PI)).toFixed(2),
      exit.dampingRatio.toFixed(3),
      ((exit.angleOfAttack * 180) / Math.PI).toFixed(1),
    ]);
    expect(out).toMatch(/Leaving the guide, the air meets it at/);
    expect(out).toMatch(/Neither unstable, over-stable nor under-damped|Over-stable:|Under-damped:/);
    expect(stability.columns.time).toHaveLength(stability.columns.margin.length);
    expect(stability.limits).toEqual({ leastMargin: 1, mostMargin: 3, leastDamping: 0.05 });
  });

  test("never gives a clean verdict to a rocket whose centre of pressure lies ahead of its balance point", async () => {
    const tailHeavy = demoFiles({
      "demo.rocket.json": (rocket: Loose) => {
        rocket.balanceWithoutMotor = "1.1 m";
      },
    });
    const { out } = await runOver(tailHeavy, ["fly", "plan.json"]);
    const plain = out.replaceAll(/\s+/gu, " ");
    expect(plain).toMatch(/Unstable: its centre of pressure lies ahead of its balance point between 0\.2 and /u);
    expect(plain).not.toContain("Neither");
    expect(plain).not.toContain("0.05 or more");
    const { stability } = (await runOver(tailHeavy, ["fly", "plan.json", "--json"])).json();
    const [unstable] = stability.findings;
    expect(unstable).toMatchObject({ code: "unstable", limit: 0, value: Math.min(...stability.columns.margin) });
    expect(unstable.from).toBe(stability.moments[0].time);
  });

  test("says where the flight is beyond the models' range, and that the wind aloft is a guess, in text and JSON", async () => {
    const fast = (times: number) =>
      demoFiles({
        "demo-h150.motor.json": (motor: Loose) => {
          motor.thrust.newtons = motor.thrust.newtons.map((newtons: number) => times * newtons);
          delete motor.designation;
        },
      });
    const codes = async (times: number): Promise<string[]> =>
      (await runOver(fast(times), ["fly", "plan.json", "--json"])).json().warnings.map(({ code }: Loose) => code);
    expect(await codes(1)).toEqual(["surface-wind-carried-up"]);
    expect(await codes(4)).toEqual(["mach-through-bridge", "surface-wind-carried-up"]);
    expect(await codes(18)).toEqual(["mach-through-bridge", "mach-above-validated", "surface-wind-carried-up"]);
    const { out } = await runOver(fast(4), ["fly", "plan.json"]);
    expect(out.replaceAll(/\s+/gu, " ")).toMatch(
      /What to look out for - It flies near or through the speed of sound, .* \(1\.2\d*, limit 0\.9\)\. - The wind aloft is a guess/u,
    );
  });

  test("--draw flies another flight than the plan's, the same each time", async () => {
    const apogee = async (words: string[]): Promise<number> =>
      (await runOver(demoFiles(), ["fly", "plan.json", "--json", ...words])).json().flight.apogee.time;
    const [planned, third, again, otherSeed] = [
      await apogee([]),
      await apogee(["--draw", "3"]),
      await apogee(["--draw", "3"]),
      await apogee(["--draw", "3", "--seed", "2"]),
    ];
    expect(third).not.toBe(planned);
    expect(again).toBe(third);
    expect(otherSeed).not.toBe(third);
  });
});
