import { type PrepFacts, type PrepStepId, prepState } from "@delaywright/engine";
import { beforeAll, describe, expect, test } from "vitest";
import { preparedPlan } from "../../../test/prepared.js";
import type { Raw } from "../../migrate.js";
import { readValue } from "../../read.js";
import {
  newFlight,
  prepEvents,
  type SignedFlight,
  signMisfire,
  signOff,
  signScrub,
  takeBackSignOff,
} from "./sign-offs.js";

let facts: PrepFacts;
beforeAll(async () => {
  facts = { ...(await preparedPlan()).brief.planned.facts, cut: "made" };
});

/** A flight whose steps are signed a minute and a second apart. */
class Hand {
  flight: Raw = newFlight("Third flight", "plan.json", "bag-3.json");
  seconds = 0;
  facts: PrepFacts;
  constructor(given: PrepFacts) {
    this.facts = given;
  }
  get when(): string {
    return new Date(Date.UTC(2026, 4, 2, 9) + 1000 * this.seconds).toISOString();
  }
  get inputs() {
    return { flight: this.flight, facts: this.facts, by: "AB", when: this.when };
  }
  take(signed: SignedFlight): SignedFlight {
    if (signed.ok) this.flight = signed.flight;
    this.seconds += 61;
    return signed;
  }
  until(last: PrepStepId): void {
    for (let i = 0; i < 60; i++) {
      const next = this.take(signOff(this.next, this.inputs));
      if (!next.ok) throw new Error(next.refusal);
      if (next.state.steps.find(({ step }) => step.id === last)?.status === "signed") return;
    }
  }
  private get next(): PrepStepId {
    return prepState(this.facts, prepEvents(this.flight)).next ?? "launched";
  }
}

describe("signOff()", () => {
  test("adds an entry, and nothing else changes", () => {
    const hand = new Hand(facts);
    const before = structuredClone(hand.flight);
    const signed = signOff("motor-label", hand.inputs);
    expect(hand.flight).toEqual(before);
    expect(signed.ok && signed.flight["signOffs"]).toEqual([
      {
        step: "motor-label",
        by: "AB",
        when: "2026-05-02T09:00:00.000Z",
        restsOn: expect.stringMatching(/^\[".+",".+"\]$/),
      },
    ]);
    expect(signed.ok && readValue(signed.flight, { file: "flight.json" })).toMatchObject({
      state: "ready",
      issues: [],
    });
  });

  test("a whole sheet, a misfire, a scrub and what is taken back read as they were written", () => {
    const hand = new Hand(facts);
    hand.until("armed");
    expect(hand.take(signMisfire({ ...hand.inputs, reason: "no smoke" })).ok).toBe(true);
    expect(hand.take(signScrub({ ...hand.inputs, reason: "rain" })).ok).toBe(true);
    expect(hand.take(takeBackSignOff("name", { ...hand.inputs, reason: "wrong number" })).ok).toBe(true);
    const { state, issues } = readValue(hand.flight, { file: "flight.json" });
    expect({ state, issues }).toEqual({ state: "ready", issues: [] });
    const events = prepEvents(JSON.parse(JSON.stringify(hand.flight)) as Raw);
    expect(events).toEqual(prepEvents(hand.flight));
    expect(events.slice(-3)).toMatchObject([
      { kind: "misfire", reason: "no smoke" },
      { kind: "scrub", reason: "rain" },
      { kind: "unsign", step: "name", reason: "wrong number" },
    ]);
  });

  test("60 s after a misfire are counted from the times that are written", () => {
    const hand = new Hand(facts);
    hand.until("armed");
    hand.take(signMisfire({ ...hand.inputs, reason: "" }));
    hand.take(signOff("misfire-interlock", { ...hand.inputs, when: "2026-05-02T12:00:00+01:00" }));
    const wait = (when: string) => signOff("misfire-wait", { ...hand.inputs, when });
    expect(wait("2026-05-02T11:00:59Z")).toMatchObject({ ok: false, refusal: "too-early" });
    expect(wait("soon")).toMatchObject({ ok: false, refusal: "too-early" });
    expect(wait("2026-05-02T11:01:00Z").ok).toBe(true);
  });

  test("refuses what is blocked, and says what it waits for", () => {
    const refused = signOff("igniter", new Hand(facts).inputs);
    expect(refused).toMatchObject({ ok: false, refusal: "blocked" });
    expect(!refused.ok && refused.step?.waitsFor).toContain("circuit-dead");
  });
});

describe("prepEvents()", () => {
  test("passes over what is none, and keeps it in the document", () => {
    const own = [{ step: "igniter at the pad", by: "the flyer" }, { what: "later", by: "AB" }, 3, { step: "card" }];
    const flight = { ...newFlight("Third flight", "plan.json"), signOffs: own };
    expect(prepEvents(flight)).toEqual([
      { kind: "sign", step: "igniter at the pad", by: "the flyer", when: "", at: null, rests: null },
    ]);
    const signed = signOff("motor-label", { ...new Hand(facts).inputs, flight });
    expect(signed.ok && (signed.flight["signOffs"] as unknown[]).slice(0, 4)).toEqual(own);
    expect(() => prepEvents({ signOffs: "none" })).toThrow(RangeError);
  });

  test("a step is missing from a signature, or stands in a scrub: the document says so", () => {
    const flight = {
      ...newFlight("Third flight", "plan.json"),
      signOffs: [{ by: "AB" }, { what: "scrub", step: "card", by: "AB" }],
    };
    expect(readValue(flight, { file: "" }).issues.map(({ path, code }) => `${path} ${code}`)).toEqual([
      "signOffs[0].step missing",
      "signOffs[1].step not-together",
    ]);
  });
});
