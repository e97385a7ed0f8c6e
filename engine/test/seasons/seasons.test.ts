import { expect, test } from "vitest";
import { plan } from "../plan.js";
import { randomOf } from "../random.js";
import { offBy, reliability } from "./reliability.js";
import { type Opening, season } from "./season.js";

/** A lighter rocket on the same motor, whose settings lie elsewhere. */
const lighter = { ...plan, rocket: { ...plan.rocket, mass: 0.8 * plan.rocket.mass } };

async function seasonsOf(count: number, flights: number, believed = 1): Promise<Opening[]> {
  const random = randomOf(20_261_128);
  const openings: Opening[] = [];
  for (let i = 0; i < count; i++) {
    const believedDrag = believed * plan.spread.dragScale;
    const options = { flights, draws: 128, believedDrag, believedDelay: believed };
    openings.push(...(await season(i % 2 === 0 ? plan : lighter, options, random, 10_000 * i + 1)));
  }
  return openings;
}

test("reliability() counts every opening once, and offBy() is in standard deviations (closed form)", () => {
  const openings = [0.5, 0.5, 0.5, 0.5, 0.9, 1].map((odds, i) => ({ odds, clean: i !== 0, learned: 0 }));
  const bins = reliability(openings);
  expect(bins.map(({ from, openings: count }) => [from, count])).toEqual([
    [0.5, 4],
    [0.88, 1],
    [0.96, 1],
  ]);
  // three of four at even odds: one more than expected, its standard deviation is 1
  expect(bins[0]).toMatchObject({ clean: 3, given: 0.5, off: 1, to: 0.6 });
});

// 1000 seasons with their reliability curve: node scripts/seasons/run.mjs
test("openings come clean as often as the odds say, over seasons in which the truth is drawn from the priors", async () => {
  const openings = await seasonsOf(20, 3);
  expect(openings).toHaveLength(60);
  const { off, given } = offBy(openings);
  expect(given).toBeGreaterThan(0.6);
  // three sigmas of independent openings
  expect(Math.abs(off)).toBeLessThan(3);
}, 240_000);

test("drag and delay taken for three times better known than they are show at once: far fewer come clean", async () => {
  const openings = await seasonsOf(40, 1, 1 / 3);
  expect(offBy(openings).off).toBeLessThan(-3.5);
}, 240_000);
