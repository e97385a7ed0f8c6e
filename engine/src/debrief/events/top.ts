import type { Look } from "./look.js";

/** Row of the highest speed between lift-off and the top; null where it never climbs. */
export function fastestRow({ record, good }: Look): number | null {
  let best: number | null = null;
  const top = topTime({ record, good, hints: {} });
  for (let i = 0; i < record.time.length && record.time[i]! < top; i++) {
    if (record.time[i]! < -1 || !good(i)) continue;
    if (best === null || record.speed[i]! > record.speed[best]!) best = i;
    // a charge on the way up makes a false speed: the first highest counts
    else if (record.speed[i]! < 0.6 * record.speed[best]! && record.time[i]! > record.time[best]! + 1.5) break;
  }
  return best !== null && record.speed[best]! > 5 ? best : null;
}

/** Time of the highest height, of means over five unspoiled rows [s]. */
export function topTime({ record, good }: Look): number {
  const { time, height } = record;
  let best = -1;
  let highest = Number.NEGATIVE_INFINITY;
  for (let i = 2; i + 2 < time.length; i++) {
    if (time[i]! < 0 || !(good(i - 2) && good(i - 1) && good(i) && good(i + 1) && good(i + 2))) continue;
    const mean = height[i - 2]! + height[i - 1]! + height[i]! + height[i + 1]! + height[i + 2]!;
    if (mean > highest) [highest, best] = [mean, i];
  }
  return best < 0 ? time[time.length - 1]! : time[best]!;
}
