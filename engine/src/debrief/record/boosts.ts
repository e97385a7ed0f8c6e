import type { Buckets } from "./buckets.js";
import type { Climb } from "./climbs.js";
import { median } from "./rows.js";

/** Mean push over a bucket that begins a boost [m/s²], and the speed it must give within 2 s [m/s]. */
const PUSH = 12;
const LEAST_SPEED = 10;
/** Quiet for so long after a flight, which lasts so long at least [s]. */
const QUIET_TIME = 8;
const SHORTEST = 20;

/** Flights in a record that has acceleration alone (or speed alone, by its changes): a boost up to the next quiet. */
export function boostsIn({ time, value }: Buckets, isSpeed: boolean): Climb[] {
  const pushes = isSpeed ? slopes(time, value) : value;
  const climbs: Climb[] = [];
  const n = pushes.length;
  let free = 0;
  for (let i = 0; i < n; i++) {
    const rest = i - free >= 4 ? median(pushes.slice(Math.max(free, i - 20), i)) : nearestRest(pushes[free]!);
    if (!(Math.abs(pushes[i]! - rest) > PUSH)) continue;
    const sign = Math.sign(pushes[i]! - rest);
    let speed = 0;
    let height = 0;
    let top = 0;
    for (let k = i; k < n - 1; k++) {
      const step = time[k + 1]! - time[k]!;
      speed += sign * (pushes[k]! - rest) * step;
      if (speed <= 0) break;
      height += speed * step;
      top = Math.max(top, height);
      if (time[k]! > time[i]! + 2 && speed < LEAST_SPEED) break;
    }
    if (top < 20) continue;
    let calm = i;
    let end = n;
    for (let k = i; k < n; k++) {
      if (Math.abs(pushes[k]! - pushes[calm]!) > 1) calm = k;
      if (time[k]! > time[i]! + SHORTEST && time[k]! - time[calm]! > QUIET_TIME) {
        end = calm;
        break;
      }
    }
    climbs.push({ liftOff: Math.max(free, i - 1), end, top });
    free = end;
    i = end;
  }
  return climbs;
}

const nearestRest = (first: number): number => (Math.abs(first) < 5 ? 0 : Math.sign(first) * 9.80665);

function slopes(time: readonly number[], value: readonly number[]): number[] {
  return value.map((x, i) => (i === 0 ? 0 : (x - value[i - 1]!) / Math.max(1e-6, time[i]! - time[i - 1]!)));
}
