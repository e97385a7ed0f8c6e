import { describe, expect, test } from "vitest";
import { Bench, fullFacts, plainFacts } from "../../test/prep.js";
import { prepState, prepSteps, signStep } from "../index.js";

const hand = { by: "AB", when: "2026-05-02T10:12", at: 0 };

describe("prepSteps()", () => {
  test("a fixed delay is neither measured nor cut, and its charge is not loaded", () => {
    expect(
      prepSteps(plainFacts)
        .filter(({ branch }) => branch === null)
        .map(({ id }) => id),
    ).toEqual(
      (
        "motor-label instructions airframe charge-cap retention canopy links joints balance tracker name card weather " +
        "circuit-dead on-pad children-back igniter leads pad-clear armed launched " +
        "circuit-off found approach charge-fired motor-out"
      ).split(" "),
    );
  });

  test("a cut is measured, made and measured again before washer, charge and cap", () => {
    const ids = prepSteps({ ...fullFacts, cut: "to-make" }).map(({ id }) => id);
    const order = "instructions depth-before cut depth-after washer motor-charge charge-cap retention".split(" ");
    expect(order.map((id) => ids.indexOf(id as never))).toEqual(
      order.map((id) => ids.indexOf(id as never)).sort((a, b) => a - b),
    );
    expect(order.every((id) => ids.includes(id as never))).toBe(true);
  });

  test("a motor that is cut already has its depth read once more, and no cut on its sheet", () => {
    const ids = prepSteps(fullFacts).map(({ id }) => id);
    expect(ids).toContain("depth-after");
    expect(ids).not.toContain("cut");
    expect(prepSteps(fullFacts).find(({ id }) => id === "depth-after")?.preconditions).toContainEqual({
      step: "instructions",
      kind: "needs",
    });
  });

  test("a plugged motor has no charge of its own; two charges are looked at one by one", () => {
    const plugged = prepSteps({ ...fullFacts, delay: "none", cut: "none" }).map(({ id }) => id);
    expect(plugged).not.toContain("charge-cap");
    expect(plugged).not.toContain("second-charge");
    expect(prepSteps(fullFacts).map(({ id }) => id)).toContain("second-charge");
  });
});

describe("prepState()", () => {
  test("the whole sheet can be walked, each step once, and ends with the motor out", () => {
    for (const facts of [plainFacts, fullFacts]) {
      const bench = new Bench(facts).until("motor-out");
      expect(bench.state.flown).toBe(true);
      expect(bench.state.next).toBeNull();
      expect(bench.state.steps.every(({ status }) => status === "signed")).toBe(true);
      expect(bench.events).toHaveLength(prepSteps(facts).filter(({ branch }) => branch === null).length);
    }
  });

  test("a step says what it waits for", () => {
    const bench = new Bench(fullFacts);
    expect(bench.status("charge-cap")).toMatchObject({
      status: "blocked",
      waitsFor: ["instructions", "depth-after", "motor-charge"],
    });
    expect(bench.status("motor-label")?.status).toBe("open");
  });

  test("a cut waits until the instructions are confirmed, and its reading until it is written down", () => {
    const bench = new Bench({ ...fullFacts, cut: "not-confirmed" }).until("depth-before");
    expect(bench.status("cut")).toMatchObject({ status: "blocked", hindrances: ["instructions-not-confirmed"] });
    bench.facts = { ...bench.facts, cut: "does-not-hold" };
    expect(bench.status("cut")).toMatchObject({ status: "blocked", hindrances: ["does-not-hold"] });
    bench.facts = { ...bench.facts, cut: "to-make" };
    bench.until("cut");
    expect(bench.status("depth-after")).toMatchObject({ waitsFor: [], hindrances: ["reading-not-written"] });
    expect(bench.sign("depth-after").ok).toBe(false);
    bench.facts = { ...bench.facts, cut: "made" };
    expect(bench.sign("depth-after").ok).toBe(true);
  });

  test("another delay to cut takes back the cut and all that lies on it, and nothing else", () => {
    const bench = new Bench({ ...fullFacts, cut: "made" }).until("charge-cap");
    bench.change("setting", "8");
    expect(bench.status("depth-after")).toMatchObject({ status: "due-again", due: "changed" });
    expect(bench.status("washer")).toMatchObject({ status: "blocked", due: "before-it" });
    expect(bench.signed).toEqual(["motor-label", "instructions", "airframe", "ground-test"]);
    bench.change("setting", "9");
    expect(bench.status("charge-cap")?.status).toBe("signed");
  });

  test("what lies on a step that was done again is done again, too", () => {
    const bench = new Bench(fullFacts).until("charge-cap");
    bench.change("setting", "8");
    bench.sign("depth-after");
    bench.change("setting", "9");
    bench.sign("depth-after");
    expect(bench.status("washer")).toMatchObject({ status: "due-again", due: "before-it" });
  });

  test("a new wind stops the countdown until the weather is looked at again, and leaves the igniter where it is", () => {
    const bench = new Bench(fullFacts).until("pad-clear");
    bench.change("weather", "6 m/s");
    expect(bench.status("armed")?.waitsFor).toContain("weather");
    expect(bench.status("igniter")).toMatchObject({ status: "blocked", stands: true });
    expect(bench.sign("armed").ok).toBe(false);
    expect(bench.sign("weather").ok).toBe(true);
    expect(bench.status("igniter")?.status).toBe("signed");
    expect(bench.sign("armed").ok).toBe(true);
  });

  test("a check that says stop holds the pad, even after the weather was signed", () => {
    const bench = new Bench(plainFacts).until("on-pad");
    bench.facts = { ...bench.facts, checkSaysStop: true };
    expect(bench.status("weather")).toMatchObject({ status: "blocked", hindrances: ["check-says-stop"], stands: true });
    expect(bench.status("on-pad")?.status).toBe("blocked");
    bench.facts = plainFacts;
    expect(bench.status("on-pad")?.status).toBe("signed");
  });

  test("nothing under an igniter is done again while it is in: it comes out first", () => {
    const bench = new Bench(fullFacts).until("leads");
    bench.unsign("canopy");
    expect(bench.status("canopy")).toMatchObject({ status: "blocked", hindrances: ["igniter-in", "electronics-on"] });
    expect(bench.state).toMatchObject({ igniterIn: true, electronicsOn: true });
    expect(bench.scrub().ok).toBe(true);
    bench.until("scrub-igniter-out");
    expect(bench.status("canopy")?.hindrances).toEqual(["electronics-on"]);
    bench.until("scrub-electronics-off");
    expect(bench.status("canopy")?.status).toBe("due-again");
  });

  test("electronics that are on stop hands, too", () => {
    const bench = new Bench(fullFacts).until("electronics-on");
    bench.unsign("bay-charge");
    expect(bench.status("bay-charge")).toMatchObject({ status: "blocked", hindrances: ["electronics-on"] });
  });

  test("once flown, a plan that changes takes nothing back, and what was not signed stays so", () => {
    const bench = new Bench(fullFacts).until("found");
    const { signed } = bench;
    bench.change("weather", "9 m/s");
    bench.change("motor", "another");
    bench.facts = { ...bench.facts, cut: "to-make", checkSaysStop: true };
    expect(bench.signed).toEqual(signed);
    expect(bench.state).toMatchObject({ flown: true, next: "approach", igniterIn: false });
    expect(bench.unsign("igniter")).toMatchObject({ ok: false, refusal: "flown" });
    expect(bench.scrub()).toMatchObject({ ok: false, refusal: "flown" });
    expect(bench.misfire()).toMatchObject({ ok: false, refusal: "flown" });
    expect(bench.unsign("launched").ok).toBe(true);
    expect(bench.state.flown).toBe(false);
  });

  test("a log that signs the launch alone is kept, and makes nothing flown", () => {
    const log = [{ kind: "sign", step: "launched", rests: null, ...hand }] as const;
    expect(prepState(plainFacts, log)).toMatchObject({ flown: false, events: log });
    const later = [{ kind: "sign", step: "step-of-a-later-version", rests: null, ...hand }] as const;
    expect(prepState(plainFacts, later)).toMatchObject({ next: "motor-label", events: later });
  });
});

describe("scrubFlight()", () => {
  test("asks for everything at the pad to be taken back in reverse, then done again", () => {
    const bench = new Bench(fullFacts).until("pad-clear");
    bench.scrub();
    expect(bench.state.branches).toEqual(["scrub"]);
    const before = bench.events.length;
    bench.until("scrub-off-pad");
    const done = bench.events.slice(before).flatMap((event) => ("step" in event ? [event.step] : []));
    expect(done.filter((id) => id.startsWith("scrub"))).toEqual([
      "scrub-circuit-dead",
      "scrub-igniter-out",
      "scrub-electronics-off",
      "scrub-off-pad",
    ]);
    expect(bench.state).toMatchObject({ branches: [], igniterIn: false, electronicsOn: false });
    expect(bench.status("card")?.status).toBe("signed");
    expect(bench.status("circuit-dead")).toMatchObject({ due: "scrub", waitsFor: ["weather"] });
    expect(bench.until("motor-out").state.flown).toBe(true);
  });

  test("asks to be taken back only what was done", () => {
    const bench = new Bench(fullFacts).until("on-pad");
    bench.scrub();
    const asked = () => bench.state.steps.filter(({ step }) => step.branch === "scrub").map(({ step }) => step.id);
    expect(asked()).toEqual(["scrub-circuit-dead", "scrub-off-pad"]);
    const early = new Bench(fullFacts).until("card");
    early.scrub();
    expect(early.state.branches).toEqual([]);
    expect(early.status("tracker")?.due).toBe("scrub");
    expect(new Bench(fullFacts).scrub()).toMatchObject({ ok: false, refusal: "nothing-to-scrub" });
  });

  test("an igniter whose way out was signed by a slip is still in", () => {
    const bench = new Bench(fullFacts).until("igniter");
    bench.scrub();
    bench.until("scrub-off-pad");
    expect(bench.state).toMatchObject({ igniterIn: false, electronicsOn: false });
    bench.unsign("scrub-igniter-out");
    expect(bench.state).toMatchObject({ igniterIn: true, electronicsOn: false });
    bench.unsign("canopy");
    expect(bench.status("canopy")?.hindrances).toEqual(["igniter-in"]);
    bench.until("scrub-igniter-out");
    expect(bench.status("canopy")?.status).toBe("due-again");
  });

  test("an igniter whose signature was taken back may still be in", () => {
    const bench = new Bench(plainFacts).until("igniter");
    bench.unsign("igniter");
    bench.scrub();
    expect(bench.status("scrub-igniter-out")).toBeDefined();
  });
});

describe("misfireFlight()", () => {
  test("nobody goes near before 60 s have passed with the interlock out", () => {
    const bench = new Bench(fullFacts).until("armed");
    expect(bench.misfire().ok).toBe(true);
    expect(bench.state).toMatchObject({ branches: ["misfire"], next: "misfire-interlock" });
    bench.sign("misfire-interlock");
    bench.wait(59);
    // High Power Rocket Safety Code, August 2012: interlock or battery removed, then 60 s
    expect(bench.sign("misfire-wait")).toMatchObject({ ok: false, refusal: "too-early" });
    expect(bench.sign("misfire-igniter-out")).toMatchObject({ ok: false, refusal: "blocked" });
    bench.wait(1);
    expect(bench.sign("misfire-wait").ok).toBe(true);
    expect(bench.sign("igniter")).toMatchObject({ ok: false, refusal: "blocked" });
    expect(bench.sign("misfire-igniter-out").ok).toBe(true);
    expect(bench.until("launched").state.flown).toBe(true);
  });

  test("a wait whose time is not known is not over", () => {
    const bench = new Bench(plainFacts).until("armed");
    bench.misfire();
    bench.sign("misfire-interlock");
    const { at: _, ...timeless } = hand;
    expect(signStep(bench.facts, bench.events, "misfire-wait", timeless)).toMatchObject({ refusal: "too-early" });
    const forged = [...bench.events, { kind: "sign", step: "misfire-wait", rests: null, ...hand }] as const;
    expect(prepState(bench.facts, forged).steps.find(({ step }) => step.id === "misfire-wait")?.due).toBe("too-early");
  });

  test("leaves rocket and weather signed, and can come twice", () => {
    const bench = new Bench(fullFacts).until("armed");
    for (let i = 0; i < 2; i++) {
      bench.misfire();
      expect(bench.signed).toEqual(expect.arrayContaining(["circuit-dead", "on-pad", "weather"]));
      expect(bench.signed).not.toEqual(expect.arrayContaining(["igniter"]));
      bench.until("misfire-electronics-off");
      bench.until("armed");
    }
    expect(bench.until("motor-out").state.flown).toBe(true);
  });

  test("a scrub within a misfire keeps the wait, and takes the igniter out once", () => {
    const bench = new Bench(fullFacts).until("armed");
    bench.misfire();
    bench.scrub();
    const branch = bench.state.steps.filter(({ step }) => step.branch !== null).map(({ step }) => step.id);
    expect(branch).toEqual([
      "misfire-interlock",
      "misfire-wait",
      "scrub-circuit-dead",
      "scrub-igniter-out",
      "scrub-electronics-off",
      "scrub-off-pad",
    ]);
    expect(bench.sign("scrub-circuit-dead").ok).toBe(false);
    expect(bench.until("launched").state.flown).toBe(true);
  });

  test("a misfire long after a scrub asks for its own steps only", () => {
    const bench = new Bench(fullFacts).until("igniter");
    bench.scrub();
    bench.until("armed");
    bench.misfire();
    expect(bench.state.branches).toEqual(["misfire"]);
    expect(bench.state.steps.some(({ step }) => step.branch === "scrub")).toBe(false);
    expect(bench.until("launched").state.flown).toBe(true);
  });

  test("is refused where nothing was armed", () => {
    expect(new Bench(plainFacts).until("leads").misfire()).toMatchObject({ ok: false, refusal: "not-armed" });
  });
});

describe("signStep() and unsignStep()", () => {
  test("refuse without initials, twice, off the sheet, and without a reason", () => {
    const bench = new Bench(plainFacts);
    expect(signStep(plainFacts, [], "motor-label", { ...hand, by: " " })).toMatchObject({ refusal: "no-initials" });
    bench.sign("motor-label");
    expect(bench.sign("motor-label")).toMatchObject({ ok: false, refusal: "already-signed" });
    expect(bench.sign("cut")).toMatchObject({ ok: false, refusal: "not-on-this-sheet", step: null });
    expect(bench.unsign("cut")).toMatchObject({ ok: false, refusal: "not-on-this-sheet" });
    expect(bench.unsign("airframe")).toMatchObject({ ok: false, refusal: "not-signed" });
  });

  test("a signature carries initials, time and what it rests on", () => {
    const act = signStep(plainFacts, [], "motor-label", { ...hand, by: " AB " });
    expect(act.ok && act.event).toEqual({
      kind: "sign",
      step: "motor-label",
      by: "AB",
      when: hand.when,
      at: 0,
      rests: '["H150-14","3"]',
    });
  });
});
