import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Bench, fullFacts, plainFacts } from "../../test/prep.js";
import {
  type PrepBasis,
  type PrepEvent,
  type PrepFacts,
  type PrepStepId,
  prepState,
  prepStepIds,
  prepSteps,
} from "../index.js";

/**
 * What must not come before what, as a range safety officer says it, written apart from the steps' own data.
 * The first must not be signed while the second, where it is on the sheet, is not.
 */
const never: readonly (readonly [PrepStepId, PrepStepId])[] = [
  ["cut", "instructions"],
  ["cut", "depth-before"],
  ["motor-charge", "depth-after"],
  ["charge-cap", "motor-charge"],
  ["retention", "charge-cap"],
  ["bay-charge", "electronics-off"],
  ["bay-charge", "ground-test"],
  ["pins", "links"],
  ["electronics-on", "on-pad"],
  ["electronics-on", "children-back"],
  ["igniter", "circuit-dead"],
  ["igniter", "on-pad"],
  ["igniter", "children-back"],
  ["igniter", "electronics-on"],
  ["igniter", "retention"],
  ["igniter", "card"],
  ["igniter", "pins"],
  ["igniter", "weather"],
  ["igniter", "name"],
  ["leads", "igniter"],
  ["armed", "pad-clear"],
  ["armed", "leads"],
  ["launched", "armed"],
  ["approach", "circuit-off"],
  ["charge-fired", "power-down"],
  ["charge-fired", "approach"],
  ["motor-out", "charge-fired"],
];

const facts: fc.Arbitrary<PrepFacts> = fc.record({
  delay: fc.constantFrom("adjustable", "fixed", "none"),
  cut: fc.constantFrom("none", "to-make", "made", "not-confirmed", "does-not-hold"),
  electronics: fc.boolean(),
  ownCharge: fc.boolean(),
  shearPins: fc.boolean(),
  drogue: fc.boolean(),
  checkSaysStop: fc.boolean(),
  basis: fc.constant(plainFacts.basis),
});
const bases = Object.keys(plainFacts.basis) as PrepBasis[];

type Tap =
  | { readonly kind: "next" | "scrub" | "misfire" }
  | { readonly kind: "sign" | "unsign"; readonly step: PrepStepId }
  | { readonly kind: "change"; readonly what: PrepBasis; readonly to: string }
  | { readonly kind: "facts"; readonly facts: Partial<PrepFacts> }
  | { readonly kind: "wait"; readonly seconds: number };

const step = fc.constantFrom(...prepStepIds);
const kind = <Kind extends string>(name: Kind) => fc.constant(name);
const tap: fc.Arbitrary<Tap> = fc.oneof(
  { weight: 60, arbitrary: fc.record({ kind: kind("next") }) },
  { weight: 8, arbitrary: fc.record({ kind: kind("sign"), step }) },
  { weight: 4, arbitrary: fc.record({ kind: kind("unsign"), step }) },
  { weight: 2, arbitrary: fc.record({ kind: kind("scrub") }) },
  { weight: 4, arbitrary: fc.record({ kind: kind("misfire") }) },
  {
    weight: 2,
    arbitrary: fc.record({ kind: kind("change"), what: fc.constantFrom(...bases), to: fc.constantFrom("a", "b") }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      kind: kind("facts"),
      facts: fc.constantFrom<Partial<PrepFacts>[]>(
        { cut: "made" },
        { cut: "to-make" },
        { checkSaysStop: true },
        { checkSaysStop: false },
      ),
    }),
  },
  { weight: 8, arbitrary: fc.record({ kind: kind("wait"), seconds: fc.constantFrom(1, 30, 60) }) },
);
/** Half of the sheets are the longest or the plainest there is; the others are any whose plan hinders nothing at first. */
const start = fc.oneof(
  { weight: 1, arbitrary: facts.map((given) => ({ ...given, cut: "made" as const, checkSaysStop: false })) },
  { weight: 1, arbitrary: fc.constantFrom(plainFacts, fullFacts) },
);
/** Where a hand begins to tap: most of what can go wrong lies late on the sheet. */
const reached = fc.constantFrom<PrepStepId[]>(
  "motor-label",
  "card",
  "electronics-off",
  "igniter",
  "armed",
  "armed",
  "launched",
);

function tapOn(bench: Bench, each: Tap) {
  if (each.kind === "wait") return bench.wait(each.seconds);
  if (each.kind === "change") return bench.change(each.what, each.to);
  if (each.kind === "facts") {
    bench.facts = { ...bench.facts, ...each.facts };
    return undefined;
  }
  if (each.kind === "scrub") return bench.scrub();
  if (each.kind === "misfire") return bench.misfire();
  if (each.kind === "sign") return bench.sign(each.step);
  if (each.kind === "unsign") return bench.unsign(each.step);
  const { next } = bench.state;
  return next === null ? undefined : bench.sign(next);
}

const walks = new Map<string, Pick<Bench, "events" | "seconds">>();

/** Signs the steps of the trunk in their order, as far as one; walked once for each sheet. */
function walkTo(bench: Bench, last: PrepStepId): void {
  const key = JSON.stringify([bench.facts, last]);
  if (!walks.has(key)) {
    for (const { step: each } of bench.state.steps) {
      bench.wait(1);
      expect(bench.sign(each.id).ok).toBe(true);
      if (each.id === last) break;
      if (prepStepIds.indexOf(each.id) > prepStepIds.indexOf(last)) break;
    }
    walks.set(key, { events: bench.events, seconds: bench.seconds });
  }
  Object.assign(bench, walks.get(key));
}

/** Runs taps from a place on the sheet, and looks after each. */
function play(
  [given, from, taps]: readonly [PrepFacts, PrepStepId, readonly Tap[]],
  look: (bench: Bench, tapped: Tap, act: ReturnType<typeof tapOn>, before: readonly PrepEvent[]) => void,
): void {
  const bench = new Bench(given);
  walkTo(bench, from);
  for (const each of taps) {
    const before = bench.events;
    look(bench, each, tapOn(bench, each), before);
  }
}

const games = fc.tuple(start, reached, fc.array(tap, { minLength: 8, maxLength: 40 }));
/** The same, from a button that was pressed in vain. */
const misfires = games.map(([given, , taps]) => [given, "armed", [{ kind: "misfire" }, ...taps]] as const);
/** The same, from a flight that was called off. */
const scrubs = games.map(([given, from, taps]) => [given, from, [{ kind: "scrub" }, ...taps]] as const);
const many = { numRuns: 80 };

/** What is signed without what must be signed before it. */
function outOfOrder({ steps }: Bench["state"]): string[] {
  const signed = new Set(steps.filter(({ status }) => status === "signed").map(({ step: { id } }) => id));
  const asked = new Set(steps.map(({ step: { id } }) => id));
  const own = steps.flatMap(({ step: { id, preconditions } }) => preconditions.map((each) => [id, each.step] as const));
  return [...never, ...own]
    .filter(([later, earlier]) => signed.has(later) && asked.has(earlier) && !signed.has(earlier))
    .map(([later, earlier]) => `${later} without ${earlier}`);
}

describe("the order of any sheet", () => {
  test("every precondition is on the sheet and stands before its step: no circle, nothing missing", () => {
    fc.assert(
      fc.property(facts, (given) => {
        const seen = new Set<PrepStepId>();
        for (const { id, preconditions } of prepSteps(given)) {
          for (const { step: before } of preconditions) expect(seen, `${id} rests on ${before}`).toContain(before);
          expect(seen).not.toContain(id);
          seen.add(id);
        }
        const sheet = prepSteps(given).map(({ id }) => id);
        expect(sheet).toEqual(prepStepIds.filter((id) => sheet.includes(id)));
      }),
      { numRuns: 100 },
    );
  });

  test("each sheet whose plan hinders nothing can be walked to its end", () => {
    fc.assert(
      fc.property(facts, (given) => {
        const free = {
          ...given,
          checkSaysStop: false,
          cut: given.cut === "made" || given.cut === "none" ? given.cut : "to-make",
        } as const;
        const bench = new Bench(free);
        if (free.cut === "to-make") {
          bench.until("cut");
          bench.facts = { ...free, cut: "made" };
        }
        expect(bench.until("motor-out").state).toMatchObject({ flown: true, next: null });
      }),
      { numRuns: 20 },
    );
  });
});

describe("any sequence of taps", () => {
  test("never signs a step before what must come before it", () => {
    fc.assert(
      fc.property(games, (game) => play(game, (bench) => expect(outOfOrder(bench.state)).toEqual([]))),
      many,
    );
  });

  test("never hands out a charge under live electronics, nor redoes what an igniter rests on while it is in", () => {
    const charges = new Set<string>("motor-charge charge-cap retention bay-charge canopy drogue pins".split(" "));
    const under = new Set<string>([...charges, "links", "joints", "circuit-dead", "on-pad", "electronics-on", "card"]);
    fc.assert(
      fc.property(games, (game) => {
        const real = { igniter: false, power: false };
        const follow = (event: PrepEvent): void => {
          if (event.kind === "unsign" && event.step.endsWith("igniter-out")) real.igniter = true;
          if (event.kind === "unsign" && /-electronics-off$/.test(event.step)) real.power = true;
          if (event.kind !== "sign") return;
          if (real.power && charges.has(event.step)) throw new Error(`${event.step} under live electronics`);
          if (real.igniter && under.has(event.step)) throw new Error(`${event.step} under an igniter`);
          if (event.step === "igniter") real.igniter = true;
          if (event.step === "electronics-on") real.power = true;
          if (event.step.endsWith("igniter-out")) real.igniter = false;
          if (/electronics-off$|power-down/.test(event.step)) real.power = false;
        };
        let read = 0;
        play(game, (bench) => {
          for (const event of bench.events.slice(read)) follow(event);
          read = bench.events.length;
        });
      }),
      many,
    );
  });

  test("a scrub leaves nothing signed at the pad; what was armed must be taken back before it is armed again", () => {
    const pad = "weather circuit-dead on-pad children-back electronics-on igniter leads pad-clear armed launched".split(
      " ",
    );
    let seen = 0;
    fc.assert(
      fc.property(scrubs, (game) =>
        play(game, (bench, { kind: tapped }, act) => {
          if (tapped !== "scrub" || act?.ok !== true) return;
          seen++;
          expect(bench.signed.filter((id) => pad.includes(id))).toEqual([]);
          if (bench.state.igniterIn) expect(bench.status("scrub-igniter-out")).toBeDefined();
          if (bench.state.electronicsOn) expect(bench.status("scrub-electronics-off")).toBeDefined();
        }),
      ),
      many,
    );
    expect(seen).toBeGreaterThan(10);
  });

  test("after a misfire 60 s pass with the interlock out before a hand touches the igniter", () => {
    let out = 0;
    fc.assert(
      fc.property(misfires, (game) =>
        play(game, (bench, { kind: tapped }, act) => {
          if (tapped === "misfire" && act?.ok === true)
            expect(bench.signed).not.toEqual(
              expect.arrayContaining([expect.stringMatching(/igniter$|leads|clear|armed/)]),
            );
          const last = bench.events.at(-1);
          if (act?.ok !== true || last?.kind !== "sign" || !/igniter-out$/.test(last.step)) return;
          const misfire = bench.events.findLastIndex((event) => event.kind === "misfire");
          const since = bench.events.slice(misfire).filter((event) => event.kind === "sign");
          const interlock = since.find((event) => event.step === "misfire-interlock");
          expect((last.at ?? 0) - (interlock?.at ?? Number.POSITIVE_INFINITY)).toBeGreaterThanOrEqual(60);
          out++;
        }),
      ),
      many,
    );
    expect(out).toBeGreaterThan(10);
  });

  test("nothing is lost, a refusal changes nothing, and a reload gives the same sheet", () => {
    fc.assert(
      fc.property(games, (game) =>
        play(game, (bench, _, act, before) => {
          expect(bench.events.slice(0, before.length)).toEqual(before);
          expect(bench.events.length - before.length).toBe(act?.ok === true ? 1 : 0);
          const reloaded = JSON.parse(JSON.stringify(bench.events)) as PrepEvent[];
          expect(prepState(bench.facts, reloaded)).toEqual(bench.state);
        }),
      ),
      { numRuns: 40 },
    );
  });

  test("to sign and to take back leaves the same steps signed", () => {
    let pairs = 0;
    fc.assert(
      fc.property(games, (game) =>
        play(game, (bench) => {
          const { next, flown } = bench.state;
          if (next === null || flown) return;
          const twin = new Bench(bench.facts);
          twin.events = bench.events;
          twin.seconds = bench.seconds;
          const { signed } = twin;
          if (!twin.sign(next).ok || next === "launched") return;
          pairs++;
          // what only waited for this step stands again with it
          expect(twin.signed).toEqual(expect.arrayContaining([...signed, next]));
          expect(twin.unsign(next).ok).toBe(true);
          expect(twin.signed).toEqual(signed);
        }),
      ),
      { numRuns: 40 },
    );
    expect(pairs).toBeGreaterThan(100);
  });
});

describe("any log, however it came about", () => {
  const event: fc.Arbitrary<PrepEvent> = fc.oneof(
    {
      weight: 20,
      arbitrary: fc.tuple(step, fc.integer({ min: 0, max: 200 })).map(([id, at]) => ({
        kind: "sign" as const,
        step: id,
        by: "AB",
        when: "",
        at,
        rests: prepSteps(fullFacts).find((each) => each.id === id)?.rests ?? null,
      })),
    },
    {
      weight: 1,
      arbitrary: step.map((id) => ({ kind: "unsign" as const, step: id, by: "AB", when: "", at: 0, reason: "" })),
    },
    {
      weight: 1,
      arbitrary: fc.constantFrom("scrub", "misfire").map((kind) => ({ kind, by: "AB", when: "", at: 0, reason: "" })),
    },
  );

  test("makes no step signed before what must come before it", () => {
    fc.assert(
      fc.property(
        fc.array(event, { maxLength: 30 }),
        fc.integer({ min: 0, max: 40 }),
        fc.array(event, { maxLength: 30 }),
        (first, walked, last) => {
          const bench = new Bench(fullFacts);
          bench.events = first;
          for (let i = 0; i < walked; i++) {
            const { next } = bench.state;
            bench.wait(60);
            if (next !== null) bench.sign(next);
          }
          expect(outOfOrder(prepState(fullFacts, [...bench.events, ...last]))).toEqual([]);
        },
      ),
      { numRuns: 60 },
    );
  });
});
