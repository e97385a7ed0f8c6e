import type { Basis } from "../rules/rule.js";
import { highPowerCode } from "../rules/sources.js";
import { foot } from "../rules/units.js";

/** A figure of the safety code that belongs to a step. */
export interface SafetyCodeRule extends Basis {
  /** Stable, in kebab case. */
  readonly id: "misfire-wait" | "countdown" | "heat-distance" | "igniter-at-pad";
  readonly value: number | null;
  /** `s`, `m`, or empty. */
  readonly unit: string;
}

/**
 * What the safety code says of the launch itself: wait after a misfire, countdown, distance of heat from motors, place of the igniter.
 *
 * @source High Power Rocket Safety Code, August 2012: misfire 60 s with the interlock or the battery removed; countdown 5 s; no
 * smoking, flame or heat within 25 ft of motors; igniter at the pad or in a designated prepping area only. Seen on clubs' copies.
 */
export const launchRules = Object.freeze({
  misfireWait: rule("misfire-wait", 60, "s"),
  countdown: rule("countdown", 5, "s"),
  heatDistance: rule("heat-distance", 25 * foot, "m"),
  igniterAtPad: rule("igniter-at-pad", null, ""),
});

function rule(id: SafetyCodeRule["id"], value: number | null, unit: string): SafetyCodeRule {
  return Object.freeze({ id, value, unit, ...highPowerCode("verified") });
}
