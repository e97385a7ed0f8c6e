import { expect, test } from "vitest";
import { referenceInputs } from "../../reference/trajectories/inputs.js";
import { usualLimits } from "../../test/plan.js";
import { prepareFlight } from "../flight/model.js";
import { resolveFlightOptions } from "../flight/options.js";
import { openingLoad } from "../packing/opening-load.js";
import type { Recovery } from "../packing/recovery.js";
import { fillDistanceOf, strengthOf } from "./opening-rules.js";

const canopy = { shape: "flat circular", diameter: 1 } as const;
const small = { shape: "conical", diameter: 0.3 } as const;
const base: Recovery = { motorCharge: "primary", lineStretch: 0.5, main: { canopy } };
const modelWith = (recovery: Recovery) => prepareFlight({ ...referenceInputs, recovery }, resolveFlightOptions({}));
const top = 1500;

test("strengthOf() takes twice the speed limit where nothing is rated, and says so", () => {
  expect(strengthOf(modelWith(base), usualLimits, top)).toEqual({ speed: 40, rated: false });
});

test("strengthOf() is the speed at which the opening load reaches the weakest rated part, in the denser air", () => {
  const model = modelWith({ ...base, main: { canopy, strength: 900 }, harness: { strength: 500 } });
  const { speed, rated } = strengthOf(model, usualLimits, top);
  expect(rated).toBe(true);
  const loads = [0, top].map((z) => openingLoad({ mass: 1.15, canopy, density: model.airAt(z).density }, speed).force);
  expect(Math.max(...loads)).toBeCloseTo(500, 9);
  // fittings are parts like the others
  expect(strengthOf(model, usualLimits, top, 600).speed).toBe(speed);
  expect(strengthOf(model, usualLimits, top, 125).speed).toBeCloseTo(speed / 2, 9);
  expect(strengthOf(modelWith(base), usualLimits, top, 125).rated).toBe(true);
});

test("strengthOf() and fillDistanceOf() look at the canopy that opens first", () => {
  const model = modelWith({ ...base, drogue: { canopy: small, strength: 300 }, main: { canopy, strength: 10 } });
  const { speed } = strengthOf(model, usualLimits, top);
  const loads = [0, top].map(
    (z) => openingLoad({ mass: 1.15, canopy: small, density: model.airAt(z).density }, speed).force,
  );
  expect(Math.max(...loads)).toBeCloseTo(300, 9);
  // fill constants: NWC TP 6575, memory; 8 diameters for both shapes
  expect(fillDistanceOf(model)).toBeCloseTo(8 * 0.3, 12);
  expect(fillDistanceOf(modelWith(base))).toBe(8);
});
