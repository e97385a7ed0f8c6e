import { describe, expect, test } from "vitest";
import type { Keyed } from "../parts/field-path.js";
import { branchOf, switchBranch } from "./either.js";
import { fieldParts } from "./field-parts.js";
import { finParts } from "./fin-parts.js";
import type { EitherPart, FormPart } from "./model.js";
import { motorParts } from "./motor-parts.js";
import { planGuideParts, planWeatherParts } from "./plan-parts.js";
import { recoveryParts } from "./recovery-parts.js";
import { rocketParts } from "./rocket-parts.js";
import { planSpreadParts } from "./spread-parts.js";
import { toolParts } from "./tool-parts.js";

function eithers(parts: readonly FormPart[]): readonly EitherPart[] {
  return parts.flatMap((part) => {
    if (part.part === "either") return [part, ...part.branches.flatMap((branch) => eithers(branch.parts))];
    return part.part === "more" || part.part === "rows" ? eithers(part.parts) : [];
  });
}

function find(parts: readonly FormPart[], label: string): EitherPart {
  const found = eithers(parts).find((each) => each.label === label);
  if (found === undefined) throw new Error(`no choice ${label}`);
  return found;
}

const typed: readonly (readonly [string, EitherPart, Keyed, string])[] = [
  [
    "mass",
    find(rocketParts, "Weighed"),
    { name: "x", massWithoutMotor: "1.95 kg", balanceWithoutMotor: "0.86 m" },
    "ready",
  ],
  ["inertia", find(rocketParts, "Moment of inertia without motor"), { inertiaWithoutMotor: "0.36 kg m2" }, "swing"],
  ["nose", find(rocketParts, "Nose"), { shape: "haack", c: 0.33, length: "300 mm" }, "power"],
  [
    "drag",
    find(rocketParts, "Drag"),
    { from: "table", mach: [0.1], coasting: [0.5], thrusting: [0.4], scale: 0.9 },
    "constant",
  ],
  [
    "electronics",
    find(recoveryParts, "Electronics open it"),
    { electronics: { fires: "apogee", delay: "1 s" } },
    "none",
  ],
  ["drogue", find(recoveryParts, "A drogue opens first"), { drogue: { strength: "1 kN" }, main: {} }, "none"],
  [
    "fins",
    find(finParts, "Shape"),
    { count: 3, root: "180 mm", tip: "80 mm", span: "90 mm", sweep: "100 mm" },
    "polygon",
  ],
  ["guide", find(planGuideParts, "Launch guide"), { rail: "2.4 m", stop: "150 mm", tilt: "2 deg" }, "travel"],
  ["wind", find(planWeatherParts, "Wind"), { wind: "2 m/s", windFrom: "240 deg", temperature: "12 degC" }, "aloft"],
  ["pressure", find(planWeatherParts, "Pressure"), { pressure: "987 hPa" }, "sea"],
  ["spread", find(planSpreadParts, "How far inputs may be off"), { spread: { mass: 0.02 } }, "none"],
  ["tool", find(toolParts, "Kind of tool"), { ends: [{ name: "A" }], spacers: [], depthPerSecond: "1/32 in" }, "stop"],
  ["boundary", find(fieldParts, "The field's edge"), { boundary: { shape: "circle", radius: "400 m" } }, "polygon"],
  ["delay", find(motorParts, "Delay"), { kind: "adjustable", longest: "14 s", charge: "1 g" }, "fixed"],
];

describe("switchBranch()", () => {
  test.each(typed)("keeps what was typed when the %s is switched there and back", (_, part, whole, there) => {
    const from = branchOf(whole, part.branches, undefined, part.undecided ?? false);
    const to = part.branches.find((branch) => branch.id === there);
    if (from === undefined || to === undefined) throw new Error("no such branch");
    const away = switchBranch(whole, from, to);
    expect(to.matches(away.whole)).toBe(true);
    expect(branchOf(away.whole, part.branches, there, part.undecided ?? false)).toBe(to);
    const back = switchBranch(away.whole, to, from, away.aside);
    expect(back.whole).toEqual(whole);
  });

  test("leaves nothing behind that only the other way could say", () => {
    const [, part, whole] = typed[0] ?? [];
    if (part === undefined || whole === undefined) throw new Error("no case");
    const [without, ready] = part.branches;
    if (ready === undefined) throw new Error("no branch");
    expect(switchBranch(whole, without, ready).whole).toEqual({ name: "x" });
  });

  test("keeps what both ways say: the root of the fins, the scale of the drag", () => {
    const fins = find(finParts, "Shape");
    const [trapezoid, ellipse] = fins.branches;
    if (ellipse === undefined) throw new Error("no branch");
    expect(switchBranch({ root: "180 mm", tip: "80 mm", span: "90 mm" }, trapezoid, ellipse).whole).toEqual({
      shape: "ellipse",
      root: "180 mm",
      span: "90 mm",
    });
  });

  test("does not put a value where it cannot stand: a circle is no outline", () => {
    const { branches } = find(fieldParts, "The field's edge");
    const [, circle, polygon] = branches;
    if (polygon === undefined) throw new Error("no branch");
    const { whole } = switchBranch({ boundary: { shape: "circle", radius: "400 m" } }, circle, polygon);
    expect(whole).toEqual({ boundary: { shape: "polygon", points: [] } });
  });
});

describe("branchOf()", () => {
  test("follows the document before what was picked", () => {
    const { branches } = find(planGuideParts, "Launch guide");
    expect(branchOf({ travel: "1.8 m" }, branches, "rail", false)?.id).toBe("travel");
    expect(branchOf({}, branches, "travel", false)?.id).toBe("travel");
  });

  test("presets no kind of delay and no nose", () => {
    expect(branchOf({}, find(motorParts, "Delay").branches, undefined, true)).toBeUndefined();
    expect(branchOf({}, find(rocketParts, "Nose").branches, undefined, true)).toBeUndefined();
  });
});
