import { prepStepIds } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { bent, motor, motorInHand, plan, rocket } from "../../test/fixtures.js";
import { preparedPlan } from "../../test/prepared.js";
import { prepData } from "../answer/prep-data.js";
import { prepBranchLines, prepLines, prepTitle } from "./prep.en.js";

/** Electronics, a drogue, charges of the flyer's own, and a motor in hand that is not cut yet. */
const everything = {
  "plan.json": { ...plan, motor: "bag-3.json" },
  "bag-3.json": { ...motorInHand, readings: [{ when: "2026-05-02T10:12", before: "22.2 mm" }] },
  "demo.rocket.json": {
    ...rocket,
    recovery: {
      ...rocket.recovery,
      motorCharge: "backup",
      electronics: { fires: "apogee" },
      drogue: { canopy: { shape: "cross", diameter: "0.4 m" } },
      main: { ...rocket.recovery.main, opensAt: "150 m" },
    },
  },
};

async function sheetOf(changed: Readonly<Record<string, unknown>> = {}) {
  const { brief } = await preparedPlan(changed);
  return prepData(brief, []);
}

describe("prepLines()", () => {
  test("every step of every sheet has a title, a manner, a reason, and no verdict", async () => {
    const sheet = await sheetOf(everything);
    const lines = [
      ...prepLines(sheet),
      ...prepBranchLines(sheet, "scrub").steps,
      ...prepBranchLines(sheet, "misfire").steps,
    ];
    expect(new Set(lines.map(({ id }) => id))).toEqual(new Set(prepStepIds));
    for (const { id, title, how, reason, hazards, waits } of lines) {
      expect(how.length, id).toBeGreaterThan(0);
      const said = [title, ...how, reason, ...hazards, ...waits];
      for (const text of said) expect(text, id).toMatch(/^[A-Z0-9].*[a-z.d-]$/s);
      expect(said.join(" "), id).not.toMatch(/\bsafe\b|\bsafely\b|undefined|NaN|null/);
    }
  });

  test("a cut is told with the plan's own figures", async () => {
    const how = (await sheetOf(everything)).state;
    expect(how.next).toBe("motor-label");
    const lines = prepLines(await sheetOf(everything));
    const line = (id: string) =>
      lines
        .find((each) => each.id === id)
        ?.how.join(" ")
        .replaceAll("\u00a0", " ");
    expect(line("cut")).toContain(
      "Cut to 9 s, end A with the ring: 4.0 mm (5/32 in). Tool by the instructions: Two-collar cutter",
    );
    // 22.2 mm and 3.97 mm
    expect(line("depth-after")).toContain("26.2 mm");
    expect(line("motor-charge")).toContain("Charge 1.0 g");
    expect(line("pins")).toBe("Pins: 2 of 2-56.");
    expect(line("motor-label")).toContain("Bag 3, label 3, lot L-17");
    expect(line("pad-clear")).toContain("30 m");
    expect(line("weather")).toContain("2.0 m/s from 240 deg");
  });

  test("figures stand in the flyer's own units", async () => {
    const lines = prepLines(await sheetOf(), "imperial");
    const said = lines
      .flatMap(({ how }) => how)
      .join(" ")
      .replaceAll("\u00a0", " ");
    expect(said).toContain("5.03 lb");
    expect(said).toContain("100 ft from the pad");
  });

  test("says what a step waits for, and what takes a signature back", async () => {
    const { brief } = await preparedPlan();
    const signed = {
      kind: "sign",
      step: "motor-label",
      by: "AB",
      when: "2026-05-02T10:12",
      at: 0,
      rests: "[]",
    } as const;
    const lines = prepLines(prepData(brief, [signed]));
    expect(lines.find(({ id }) => id === "motor-label")).toMatchObject({
      status: "due-again",
      waits: ["Due again: what it rested on has changed."],
      signed: null,
    });
    expect(lines.find(({ id }) => id === "cut")?.waits).toEqual([
      "First: motor's own instructions read; element measured before the cut.",
    ]);
    const unconfirmed = { "demo-h150.motor.json": bent(motor, ["delay", "instructions"], undefined) };
    expect(
      prepLines(await sheetOf(unconfirmed))
        .find(({ id }) => id === "cut")
        ?.waits.at(-1),
    ).toMatch(/instructions allow a cut/);
  });

  test("a branch says what must be done again after it", async () => {
    const { again } = prepBranchLines(await sheetOf(everything), "misfire");
    expect(again).toContain(prepTitle("igniter"));
    expect(again).not.toContain(prepTitle("weather"));
  });
});
