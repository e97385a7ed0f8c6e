import { describe, expect, test } from "vitest";
import { carded } from "../../test/carded.js";
import { bent, motor, motorInHand, plan, rocket } from "../../test/fixtures.js";
import { cardFlightRows } from "../words/card.en.js";
import type { CardData } from "./card-data.js";

const inHand = { "plan.json": { ...plan, motor: "bag-3.json" } };

describe("cardData()", () => {
  test("agrees with the decision and survives JSON", async () => {
    const { card, data } = await carded();
    expect(JSON.parse(JSON.stringify(card))).toEqual(card);
    // 1.95 kg and a motor of 330 g, of the demo's documents
    expect(card.rocket.liftOffMass).toBeCloseTo(2.28, 9);
    // moments about the nose tip: 1.95 kg at 0.86 m, 0.33 kg at 1.53 m less half of 205 mm
    expect(card.rocket.balanceReady).toBeCloseTo((1.95 * 0.86 + 0.33 * (1.53 - 0.1025)) / 2.28, 9);
    const check = data.checks.find(({ code }) => code === "thrust-to-weight");
    expect(Math.abs(card.motor.thrustToWeight / (check?.value ?? 0) - 1)).toBeLessThan(1e-4);
    expect(card.expectedHeight).toBe(data.flight.apogee?.height);
    expect(card.apogeeHeight.p95).toBeGreaterThan(card.apogeeHeight.p50);
    expect(card.ceiling).toBe(900);
    expect(card.suggested).toMatchObject({ delay: data.toCut?.delay, sd: null });
    expect(card.suggested?.setting).toEqual(data.settings.find(({ delay }) => delay === data.toCut?.delay));
    expect(card.choice).toMatchObject({ delay: 9, reason: "landing before the trees" });
    expect([card.asCut, card.flyer, card.motor.inHand]).toEqual([null, null, null]);
  });

  test("carries the checks that do not pass, stop first, and counts those that do", async () => {
    const { delay } = motor;
    const { instructions: _, ...unconfirmed } = delay;
    const { card, data } = await carded({ "demo-h150.motor.json": { ...motor, delay: unconfirmed } });
    const verdicts = card.checks.map(({ verdict }) => verdict);
    expect(verdicts[0]).toBe("stop");
    expect(verdicts).toEqual(
      [...verdicts].sort((a, b) => "stop look not-checked".indexOf(a) - "stop look not-checked".indexOf(b)),
    );
    expect(card.passed + card.checks.length).toBe(data.checks.length);
    expect(card.passed).toBe(data.checks.filter(({ verdict }) => verdict === "pass").length);
  });

  test("turns the depth read into the delay as cut, with its odds", async () => {
    const { card } = await carded(inHand);
    // 24.6 mm less 22.2 mm, at 1/32 in a second, out of 14 s; two readings of 0.1 mm
    expect(card.asCut?.delay).toBeCloseTo(14 - 2.4 / 0.79375, 9);
    expect(card.asCut?.sd).toBeCloseTo((Math.SQRT2 * 0.1) / 0.79375, 9);
    expect(card.asCut?.when).toBe("2026-05-02T10:12");
    expect(card.asCut?.setting?.delay).toBeCloseTo(card.asCut?.delay ?? 0, 6);
    expect(card.motor.inHand).toEqual({ name: "Bag 3", label: "3", lot: "L-17" });
  });

  test("an uncut motor that was read is as long as it came", async () => {
    const readings = [{ when: "2026-05-02T10:12", before: "22.2 mm", after: "22.2 mm" }];
    const { card } = await carded({ ...inHand, "bag-3.json": { ...motorInHand, readings } });
    expect(card.asCut).toMatchObject({ delay: 14, setting: { delay: 14 } });
  });

  test("says at which delay it lands where the flyer's own choice stands beside the suggestion", async () => {
    const lands = (card: CardData): string =>
      (cardFlightRows(card, "metric", "all").find(({ label }) => label === "Lands")?.value ?? "").replaceAll(
        "\u00a0",
        " ",
      );
    const { card } = await carded();
    expect(lands(card)).toMatch(/ of the pad \(\d+ deg\), opened at 9 s$/);
    const { choice: _, ...bare } = plan;
    expect(lands((await carded({ "plan.json": bare })).card)).toMatch(/ of the pad \(\d+ deg\)$/);
  });

  test("a choice that cannot be made has no odds", async () => {
    const { card } = await carded({ "plan.json": { ...plan, choice: { delay: "9.5 s" } } });
    expect(card.choice).toEqual({ delay: 9.5, sd: null, when: null, reason: null, setting: null });
  });

  test("a motor without delay has none to suggest, and the flyer stands on it", async () => {
    const { designation: _, ...plugged } = motor;
    const { tool: __, choice: ___, ...bare } = plan;
    const { card } = await carded({
      "plan.json": { ...bare, flyer: "me.json" },
      "me.json": { kind: "flyer", version: 1, name: "Demo flyer", certification: 2 },
      "demo-h150.motor.json": { ...plugged, delay: { kind: "none" } },
      "demo.rocket.json": bent(rocket, ["recovery", "electronics"], { fires: "apogee", delay: "1 s" }),
    });
    expect([card.suggested, card.asCut, card.choice]).toEqual([null, null, null]);
    expect(card.flyer).toEqual({ name: "Demo flyer", certification: 2, association: null });
    expect(card.recovery.electronicsDelay).toBe(1);
  });
});
