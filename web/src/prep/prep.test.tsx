import {
  decisionData,
  loadPlan,
  memoryFiles,
  newFlight,
  type PrepBrief,
  type PrepData,
  planToEngine,
  prepBrief,
  prepData,
  prepEvents,
  type Raw,
  signMisfire,
  signOff,
} from "@delaywright/documents";
import { decide, type PrepStepId } from "@delaywright/engine";
import { renderToStaticMarkup } from "react-dom/server";
import { beforeAll, describe, expect, it } from "vitest";
import type { Entry } from "../store/index.js";
import { EXAMPLE_PLAN, workedExample } from "../store/worked-example.js";
import { flightsOf } from "./flights.js";
import { PrepSheet } from "./prep-sheet.js";
import { byPhase, progressWords, secondsLeft, signedWords } from "./prep-words.js";

let brief: PrepBrief;
beforeAll(async () => {
  const texts = workedExample().map(({ path, content }) => [path, JSON.stringify(content.raw)]);
  const { parts } = await loadPlan(EXAMPLE_PLAN, memoryFiles(Object.fromEntries(texts)));
  const made = parts === undefined ? undefined : planToEngine(parts);
  if (parts === undefined || !made?.ok) throw new Error("no example");
  const data = decisionData({ ...made, decision: await decide(made.inputs, { draws: 64 }), doubts: [] });
  const made9 = prepBrief({ parts, data });
  brief = { ...made9, planned: { ...made9.planned, facts: { ...made9.planned.facts, cut: "made" } } };
});

const start = Date.UTC(2026, 4, 2, 9);

/** The sheet after its steps were signed one after the other, two minutes apart. */
function signedUntil(last: PrepStepId): { readonly flight: Raw; readonly data: PrepData } {
  let flight = newFlight("Third flight", EXAMPLE_PLAN);
  for (let i = 0; i < 60; i++) {
    const data = prepData(brief, prepEvents(flight));
    const { next } = data.state;
    if (next === null) break;
    const signed = signOff(next, {
      flight,
      facts: data.facts,
      by: "AB",
      when: new Date(start + 120_000 * i).toISOString(),
    });
    if (!signed.ok) throw new Error(signed.refusal);
    flight = signed.flight;
    if (next === last) break;
  }
  return { flight, data: prepData(brief, prepEvents(flight)) };
}

function drawn(data: PrepData, more: { readonly now?: Date; readonly closed?: string } = {}): string {
  const nothing = () => undefined;
  const { now = new Date(start), closed = null } = more;
  return renderToStaticMarkup(
    <PrepSheet data={data} units="metric" now={now} closed={closed} onSign={nothing} onTakeBack={nothing} />,
  );
}

/** One step of a drawn sheet. */
function stepIn(markup: string, id: PrepStepId): string {
  const from = markup.indexOf(`id="prep-${id}"`);
  const begin = markup.lastIndexOf("<li", from);
  const end = markup.indexOf('<li class="prep-step', from);
  return markup.slice(begin, end < 0 ? undefined : end);
}

describe("PrepSheet", () => {
  it("gives the first step the sign button, and greys what waits with its reason", () => {
    const markup = drawn(prepData(brief, []));
    expect(stepIn(markup, "motor-label")).toMatch(/class="prep-step open next"/);
    expect(stepIn(markup, "motor-label")).toMatch(/<button[^>]*aria-label="Sign: Bag and label/);
    const igniter = stepIn(markup, "igniter");
    expect(igniter).toMatch(/class="prep-step blocked"/);
    expect(igniter).toContain("First: ");
    expect(igniter).not.toContain("<button");
    // the hazard stands at its step
    expect(igniter).toMatch(/role="note"[^>]*><b>From here the motor can light/);
  });

  it("shows initials of what is signed, with the way to take it back", () => {
    const { data } = signedUntil("instructions");
    const step = stepIn(drawn(data), "instructions");
    expect(step).toMatch(/class="prep-signed">AB \d\d:\d\d</);
    expect(step).toContain('aria-label="Take back: Motor');
    expect(stepIn(drawn(data), "airframe")).toContain("next");
  });

  it("signs nothing while the answer is not that of the plan as it stands", () => {
    const step = stepIn(drawn(prepData(brief, []), { closed: "The plan has changed" }), "motor-label");
    expect(step).toMatch(/<button[^>]*disabled/);
  });

  it("counts the wait after a misfire down, and opens it after 60 s", () => {
    const { flight, data } = signedUntil("armed");
    const hand = { facts: data.facts, by: "AB", when: new Date(start + 7_200_000).toISOString() };
    const misfire = signMisfire({ ...hand, flight, reason: "" });
    const interlock = misfire.ok ? signOff("misfire-interlock", { ...hand, flight: misfire.flight }) : misfire;
    if (!interlock.ok) throw new Error(interlock.refusal);
    const after = prepData(brief, prepEvents(interlock.flight));
    const at = (seconds: number) =>
      stepIn(drawn(after, { now: new Date(start + 7_200_000 + 1000 * seconds) }), "misfire-wait");
    expect(at(17)).toContain("Wait 43 s more");
    expect(at(17)).toMatch(/<button[^>]*disabled/);
    expect(at(60)).not.toContain("more</button>");
    expect(at(60)).not.toMatch(/<button[^>]*disabled/);
  });

  it("leaves room to sign on paper", () => {
    expect(drawn(prepData(brief, []))).toContain("______ __:__");
  });

  it("carries both branches on paper until one is walked, which then stands among the steps", () => {
    const fresh = drawn(prepData(brief, []));
    expect(fresh).toMatch(/print-only" aria-label="If it does not light"/);
    expect(fresh).toMatch(/print-only" aria-label="If the flight is called off"/);
    const { flight, data } = signedUntil("armed");
    const inputs = { flight, facts: data.facts, by: "AB", when: new Date(start + 7_200_000).toISOString() };
    const misfire = signMisfire({ ...inputs, reason: "" });
    if (!misfire.ok) throw new Error(misfire.refusal);
    const walked = drawn(prepData(brief, prepEvents(misfire.flight)));
    expect(walked).not.toContain('aria-label="If it does not light"');
    expect(stepIn(walked, "misfire-interlock")).toContain("next");
  });
});

describe("words of the sheet", () => {
  it("tell how far it has come", () => {
    const { state } = signedUntil("instructions").data;
    expect(progressWords(state)).toBe(`2 of ${state.steps.length} signed`);
    expect(progressWords(signedUntil("motor-out").data.state)).toBe("flown, and all signed");
    expect(progressWords(signedUntil("launched").data.state)).toMatch(/signed, flown$/);
  });

  it("count whole seconds, and never below none", () => {
    expect(secondsLeft(null, new Date(0))).toBe(0);
    expect(secondsLeft(60, new Date(10_500))).toBe(50);
    expect(secondsLeft(60, new Date(90_000))).toBe(0);
  });

  it("pass on a time that cannot be read as initials alone", () => {
    expect(signedWords({ by: "AB", when: "" })).toBe("AB");
  });

  it("part the lines by the day", () => {
    expect(byPhase([]).length).toBe(0);
    const lines = [{ phase: "bench" }, { phase: "bench" }, { phase: "pad" }] as unknown as Parameters<
      typeof byPhase
    >[0];
    expect(byPhase(lines).map(([phase, steps]) => [phase, steps.length])).toEqual([
      ["bench", 2],
      ["pad", 1],
    ]);
  });
});

describe("flightsOf()", () => {
  it("finds the flights of a plan, the newest first", () => {
    const entry = (path: string, plan: string, savedAt: number) =>
      ({ path, name: path, kind: "flight", raw: newFlight(path, plan), savedAt }) as unknown as Entry;
    const entries = [entry("a", "one", 1), entry("b", "one", 3), entry("c", "two", 9)];
    expect(flightsOf("one", entries).map(({ path }) => path)).toEqual(["b", "a"]);
    expect(flightsOf("none", entries)).toEqual([]);
    const debriefed = entry("d", "x", 20);
    const kept = { ...debriefed, raw: { ...debriefed.raw, plan: {}, planFile: "one" } } as unknown as Entry;
    expect(flightsOf("one", [kept, ...entries]).map(({ path }) => path)).toEqual(["b", "a", "d"]);
  });
});
