import { type DeskFields, deskPlan } from "@delaywright/documents";
import { expect, test } from "vitest";
import {
  canopyShapes,
  finFields,
  guideFields,
  labelFields,
  moreLabelFields,
  noseShapes,
  rocketFields,
} from "./desk-form.js";

test("the form reaches every field of a card, each once, and each shape that it offers is accepted", () => {
  const listed = [rocketFields, finFields, labelFields, moreLabelFields, guideFields].flat().map(({ field }) => field);
  const apart: (keyof DeskFields)[] = ["noseShape", "noseLength", "delay", "canopy", "canopyShape"];
  const least = {
    mass: "2.28 kg",
    balance: "942 mm",
    diameter: "76 mm",
    length: "1.52 m",
    cp: "1.106 m",
    impulse: "309 N s",
    burnTime: "2.08 s",
    delay: "9 s",
    canopy: "1.1 m",
  };
  // what an empty card needs and what one assumes are all the fields there are but four that nothing stands for
  const asked = [...deskPlan({}).issues.map(({ path }) => path), ...deskPlan(least).assumptions.map((a) => a.field)];
  const unasked = ["name", "tilt", "toward", "finCount", "finAt", "finTip", "finSpan", "finSweep", "finThickness"];
  const elsewhere = ["electronics", "motor", "field", "weather"];
  const all = new Set([...asked, ...unasked].filter((each) => !elsewhere.includes(each)));
  expect([...listed, ...apart].toSorted()).toEqual([...all].toSorted());
  for (const noseShape of noseShapes) expect(deskPlan({ ...least, noseShape }).issues).toEqual([]);
  for (const canopyShape of canopyShapes) expect(deskPlan({ ...least, canopyShape }).issues).toEqual([]);
  expect(Math.min(noseShapes.length, canopyShapes.length)).toBeGreaterThan(1);
});
