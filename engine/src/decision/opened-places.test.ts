import { expect, test } from "vitest";
import { plan } from "../../test/plan.js";
import { decide } from "./decide.js";
import type { Setting } from "./decision.js";
import { prepareFlightSample } from "./flight-sample.js";
import { flightSampleSpec } from "./flight-sample-spec.js";
import { roughFlight } from "./odds.js";
import { openedPlaces } from "./opened-places.js";
import { weatherWindow } from "./weather-window.js";

const setting = { delay: 9, delaySd: 1 } as Setting;
const wood = { kind: "circle", east: 900, north: 0, radius: 50 } as const;
const rough = roughFlight(plan, { model: "pitching" });
const told = { seed: 3, model: "pitching" } as const;

test("openedPlaces() follows draws with pauses to the places, to the bit, where they come down without any", async () => {
  const whole = prepareFlightSample(flightSampleSpec(plan, setting, { ...told, flight: rough }))(0, 40).opened;
  let pauses = 0;
  const pause = async () => {
    pauses += 1;
  };
  const { east, north } = await openedPlaces(plan, setting, { rough, draws: 40 }, { ...told, pause });
  expect(pauses).toBe(3);
  expect(east).toEqual(whole.east);
  expect(north).toEqual(whole.north);
});

test("openedPlaces() of no draws are none", async () => {
  const { east, north } = await openedPlaces(plan, setting, { rough, draws: 0 }, told);
  expect([east.length, north.length]).toEqual([0, 0]);
});

test("decide() does not check where opened draws land that cannot be followed, and says how many", async () => {
  // two kilometres wide: it fills and sinks so slowly that no steps suffice
  const main = { canopy: { shape: "flat circular", diameter: 2000 } } as const;
  const boundary = { kind: "circle", east: 0, north: 0, radius: 1e7 } as const;
  const field = { boundary, keepOff: [wood] };
  const { packing, checks, warnings } = await decide(
    { ...plan, recovery: { ...plan.recovery, main }, fieldLimits: field },
    { draws: 32 },
  );
  expect(packing.landings.opened).toMatchObject({ draws: 0, notFollowed: 32 });
  for (const code of ["landing-inside", "keep-off-zones"])
    expect(checks.find((check) => check.code === code)?.verdict, code).toBe("not-checked");
  expect(warnings).toContainEqual({ code: "descents-not-followed", value: 32, limit: null });
});

test("decide() and weatherWindow() reject with what their pause rejects with", async () => {
  const off = new Error("called off");
  const pause = () => Promise.reject(off);
  await expect(decide(plan, { draws: 64, pause })).rejects.toBe(off);
  const field = { ...plan, fieldLimits: { keepOff: [wood] } };
  await expect(weatherWindow(field, { delay: 9, winds: [0, 2], tilts: [0], draws: 64, pause })).rejects.toBe(off);
});
