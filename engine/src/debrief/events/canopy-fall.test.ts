import { expect, test } from "vitest";
import { between, fallUnder } from "./canopy-fall.js";

const GRAVITY = 9.80665;
const [opens, fill, sideways, descent, start, climb, body, growth] = [1, 0.6, 4, 6, 200, -18, 0.03, 2.2];

/** Height and felt pull at times, by Euler's plain method in steps of 10 µs. */
function plainly(times: readonly number[]): { height: number; felt: number }[] {
  const step = 1e-5;
  let [t, h, v, u] = [0, start, climb, sideways];
  return times.map((until) => {
    let felt = 0;
    for (; t < until; t += step) {
      const grown = t < opens ? 0 : Math.min(1, (t - opens) / fill) ** growth;
      const drag = body + (GRAVITY / descent ** 2 - body) * grown;
      const speed = Math.hypot(v, u);
      felt = drag * speed * speed;
      h += v * step;
      v += (-GRAVITY - drag * speed * v) * step;
      u -= drag * speed * u * step;
    }
    return { height: h, felt };
  });
}

test("fallUnder() gives the heights and the felt pull of a filling canopy that a plain integration gives", () => {
  const times = [0.5, 1.1, 1.2, 1.35, 1.5, 1.65, 2, 3];
  const { heights, felt, step } = fallUnder([opens, fill, sideways, descent, start, climb, body, growth], 0, 4);
  plainly(times).forEach((wanted, k) => {
    const place = times[k]! / step;
    expect(Math.abs(between(heights, place) - wanted.height)).toBeLessThan(0.01);
    expect(Math.abs(between(felt, place + 0.5) / wanted.felt - 1)).toBeLessThan(0.01);
  });
});
