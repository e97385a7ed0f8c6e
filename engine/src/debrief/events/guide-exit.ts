import type { Look, Placed } from "./look.js";
import { pushedFrom } from "./pushed.js";

/** Where the acceleration, integrated twice from lift-off, has covered the guide; null without either. */
export function guideExitByAcceleration({ record, hints }: Look, liftOff: Placed): Placed | null {
  const { time, acceleration } = record;
  const travel = hints.guideTravel;
  if (travel === undefined || acceleration === null) return null;
  const { from, speed, way } = pushedFrom(time, acceleration, liftOff.time, liftOff.time + 5);
  for (let i = from; i < time.length && time[i]! < liftOff.time + 5; i++) {
    if (way[i]! < travel) continue;
    const begin = i === from ? liftOff.time : time[i - 1]!;
    const [before, slow] = i === from ? [0, 0] : [way[i - 1]!, speed[i - 1]!];
    const push = (speed[i]! - slow) / (time[i]! - begin);
    const left = travel - before;
    const at = begin + (2 * left) / (slow + Math.sqrt(slow * slow + 2 * push * left));
    const error = Math.hypot(liftOff.error, 0.03 * (at - liftOff.time), 0.1 * (time[i]! - begin));
    return { time: at, error, reason: "travelled-guide" };
  }
  return null;
}
