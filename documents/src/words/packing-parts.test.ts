import { bayFindings, type EjectionBay, staticPortFindings } from "@delaywright/engine";
import { beforeAll, describe, expect, test } from "vitest";
import { decided } from "../../test/decided.js";
import type { DecisionData } from "../answer/decision-data.js";
import { fieldAt } from "../forms/field-at.js";
import type { Kind } from "../kinds/kinds.js";
import { packingSentences } from "./packing.en.js";
import { type PackingPart, type PackingTopic, packingParts } from "./packing-parts.en.js";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");
const of = (parts: readonly PackingPart[], topic: PackingTopic): PackingPart =>
  parts.find((part) => part.topic === topic)!;
const said = (part: PackingPart): string => plain(part.sentences.join(" "));
const fields = (parts: readonly PackingPart[]): readonly string[] =>
  parts.flatMap(({ gaps }) => gaps.map(({ field }) => field));

const PSI = 6894.757293168;
let demo: DecisionData;
beforeAll(async () => {
  demo = await decided();
});

const packed = (changed: Partial<DecisionData["packing"]>): DecisionData => ({
  ...demo,
  packing: { ...demo.packing, ...changed },
});
const withBay = (bay: EjectionBay, mass = 0.001): DecisionData =>
  packed({
    bay: bayFindings(bay, { motorCharge: { mass, wellHolds: 0.0014 } }),
    staticPorts: staticPortFindings({ bay }),
  });

/** 2.6 in x 8 in at 15 psi. */
const small = { diameter: 0.06604, length: 0.2032, pressure: 15 * PSI };

describe("packingParts()", () => {
  test("tells everything that the sentences of the command line tell, each once", () => {
    const told = packingParts(demo).flatMap(({ sentences, gaps }) => [...sentences, ...gaps.map(({ words }) => words)]);
    for (const sentence of packingSentences(demo)) expect(told).toContain(sentence);
    expect(new Set(told).size).toBe(told.length);
  });

  test("sizes charge and ports of a bay by the check values", () => {
    const data = withBay(small);
    // 42.474333 in3 (696.030 cm3), 0.3285245 g, 79.63937 lbf (354.2536 N); check values, section 11
    const charge = (units: "metric" | "imperial") => said(of(packingParts(data, units), "charge"));
    expect(charge("metric")).toMatch(
      /^0\.33 g of black powder in 696 cm³ raise the pressure by 15\.0 psi \(103 kPa\) and push with 354 N/,
    );
    expect(charge("imperial")).toMatch(
      /^0\.012 oz \(0\.33 g\) of black powder in 42\.5 in³ raise the pressure by 15\.0 psi \(103 kPa\) and push with 80 lbf/,
    );
    expect(charge("imperial")).toMatch(
      /mostly 15: 0\.006 to 0\.015 oz \(0\.18 to 0\.44 g\), mostly 0\.012 oz \(0\.33 g\)\./,
    );
    // 0.0193257 mm2 per cm3: 13.4513 mm2, a hole of 4.1385 mm; check values, section 11
    expect(said(of(packingParts(data), "ports"))).toContain("the bay of 696 cm³: one hole of 4.1 mm");
    expect(said(of(packingParts(data, "imperial"), "ports"))).toContain("one hole of 0.163 in");
  });

  test("names what is missing and a field that there is, where nothing is known", () => {
    const { usual } = demo.packing.harness;
    const parts = packingParts(
      packed({
        bay: null,
        staticPorts: null,
        openings: demo.packing.openings.map((opening) => ({ ...opening, weakest: null, margin: null })),
        harness: { usual, length: null, code: null },
      }),
    );
    expect(fields(parts)).toEqual([
      "rocket: bay.diameter",
      "rocket: electronicsBay.diameter",
      "rocket: recovery.main.strength",
      "rocket: sectionMasses",
      "rocket: recovery.harness.length",
    ]);
    for (const named of fields(parts)) {
      const [kind = "", field = ""] = named.split(": ");
      expect(fieldAt(kind as Kind, field), named).toBeDefined();
    }
    expect(of(parts, "charge")).toMatchObject({ stop: null, sentences: [], caveats: [] });
    expect(plain(of(parts, "harness").gaps[0]?.words ?? "")).toBe(
      "The harness's length is not known; flyers take 4.6 to 7.6 m (common practice, no source).",
    );
    expect(packingParts(packed({ openings: [] })).find(({ topic }) => topic === "openings")).toMatchObject({
      sentences: ["Nothing opens in the expected flight."],
      gaps: [],
    });
  });

  test("asks for the motor's charge, its well and what holds the joint, once each", () => {
    const asked = (bay: EjectionBay) =>
      fields([of(packingParts(packed({ bay: bayFindings(bay, { motorCharge: {} }) })), "charge")]);
    expect(asked(small)).toEqual(["motor: delay.charge", "motor: delay.wellHolds", "rocket: bay.friction"]);
    expect(asked({ ...small, friction: 20 })).toEqual(["motor: delay.charge", "motor: delay.wellHolds"]);
    expect(asked({ ...small, pins: [{ size: "M9", count: 1 }] })).toEqual([
      "motor: delay.charge",
      "motor: delay.wellHolds",
      "rocket: bay.shearPins",
    ]);
    const plugged = of(packingParts(packed({ bay: bayFindings({ ...small, friction: 20 }, {}) })), "charge");
    expect(plugged.gaps).toEqual([]);
    expect(plugged.sentences).toContain("This motor has no ejection charge.");
  });

  test("says stop where the motor's charge does not part the joint, and not where it does", () => {
    // 354 N at 15 psi; 1 g makes three times that
    expect(of(packingParts(withBay({ ...small, friction: 5000 })), "charge").stop).toBe(
      "The motor's own charge does not do in this bay.",
    );
    expect(of(packingParts(withBay({ ...small, friction: 20 })), "charge").stop).toBeNull();
  });

  test("says how many opened flights could not be followed to the ground", () => {
    const { landings } = demo.packing;
    const lost = (draws: number) => {
      const opened = { ...landings.opened!, draws, notFollowed: 35, outside: 0.4, keepOff: null };
      return packingSentences(packed({ landings: { ...landings, opened } })).map(plain);
    };
    const said = "Opened, of 128 flights 35 could not be followed to the ground: where they land is not known.";
    expect(lost(93)).toEqual(expect.arrayContaining(["Opened, of 93 flights: 40 % outside the field.", said]));
    expect(lost(0).filter((sentence) => sentence.startsWith("Opened, of"))).toEqual([said.replace("128", "35")]);
  });

  test("tells the drift and what of it is not known", () => {
    expect(said(of(packingParts(demo), "drift"))).toMatch(
      /^Opened, 19 in 20 flights land in an ellipse \d+ m long and \d+ m wide.* of 64 flights: .* outside the field/,
    );
    const { field: _, ...context } = demo.context;
    expect(fields([of(packingParts({ ...demo, context }), "drift")])).toEqual(["plan: field"]);
    const unopened = { ...demo.packing.landings.unopened, outside: null, keepOff: null };
    const open = { ...demo.packing, landings: { ...demo.packing.landings, unopened } };
    expect(fields([of(packingParts({ ...demo, packing: open }), "drift")])).toEqual([
      "field: boundary",
      "field: keepOff",
    ]);
  });
});
