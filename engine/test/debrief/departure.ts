import type { Random } from "../random.js";

/** What a flight does beside its model, as a share of its greatest height, and how long it hangs together as a share of the climb. */
const share = 5e-4;
const together = 0.15;
const waveCount = 24;

/** Height [m] and speed [m/s] beside the model's at a time. */
export type Departure = (time: number) => { readonly height: number; readonly speed: number };

/**
 * A smooth departure from the flight model, from rest at lift-off: gusts, waves of the air, a drag that is not quite the curve's. After the opening it
 * fades until the landing. A sum of many waves with normal frequencies is nearly a Gaussian process of a Gaussian covariance; what
 * it has of height and speed at lift-off is taken off as such a process forgets it.
 */
export function departure(
  random: Random,
  flight: { from: number; top: number; height: number; opens: number; down: number },
): Departure {
  const scale = together * (flight.top - flight.from);
  const size = share * flight.height * Math.sqrt(2 / waveCount);
  const waves = Array.from(
    { length: waveCount },
    () => [random.normal() / scale, 2 * Math.PI * random.uniform()] as const,
  );
  let [h0, v0] = [0, 0];
  for (const [often, phase] of waves) {
    h0 += size * Math.cos(phase);
    v0 -= size * often * Math.sin(phase);
  }
  return (time) => {
    const t = time - flight.from;
    let [height, speed] = [0, 0];
    for (const [often, phase] of waves) {
      height += size * Math.cos(often * t + phase);
      speed -= size * often * Math.sin(often * t + phase);
    }
    const kept = Math.exp(-0.5 * (t / scale) ** 2);
    height -= (h0 + v0 * t) * kept;
    speed -= (v0 - ((h0 + v0 * t) * t) / scale ** 2) * kept;
    const part = Math.min(1, Math.max(0, (time - flight.opens) / (flight.down - flight.opens)));
    const left = (1 - part) ** 2 * (1 + 2 * part);
    const fading = (-6 * part * (1 - part)) / (flight.down - flight.opens);
    return { height: height * left, speed: speed * left + height * fading };
  };
}
