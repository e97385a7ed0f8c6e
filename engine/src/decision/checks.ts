import type { FlightResult } from "../flight/result.js";
import { speedOf } from "../flight/trajectory.js";
import { mostFiresFirst } from "./choose.js";
import type { Check, CheckCode, OverCut, Setting, Stability, ToCut } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";

const commonPractice = "common practice, no source";
const safetyCode = "High Power Rocket Safety Code, National Association of Rocketry, August 2012";
const own = "own default, no source";
const instructions = "the motor's printed instructions; High Power Rocket Safety Code, item 3";

/** Value against two limits: below `stop` it must not fly, below `look` somebody should look. */
function rising(code: CheckCode, value: number, stop: number, look: number, unit: string, source: string): Check {
  const verdict = value < stop ? "stop" : value < look ? "look" : "pass";
  return { code, verdict, value, limit: verdict === "stop" ? stop : look, unit, source };
}

function falling(
  code: CheckCode,
  verdict: "look" | "stop",
  value: number,
  limit: number,
  unit: string,
  source: string,
): Check {
  return { code, verdict: value > limit ? verdict : "pass", value, limit, unit, source };
}

/** Wind that the rocket meets as it leaves the guide, taken at the height of the reading [m/s]. */
export function windNearGround(inputs: DecisionInputs): number {
  const { wind } = inputs;
  return wind.kind === "power" ? Math.hypot(wind.east, wind.north) : Math.hypot(wind.east[0]!, wind.north[0]!);
}

/** What the rocket, motor, guide and day alone say. */
export function flightChecks(
  inputs: DecisionInputs,
  flight: FlightResult,
  stability: Stability,
  highTop: number,
): Check[] {
  const { model, events } = flight;
  const mass = model.airframe.mass + inputs.motor.loadedMass;
  const exitSpeed = events.guideExit === null ? 0 : speedOf(events.guideExit.velocity);
  const wind = windNearGround(inputs);
  const exitMargin = stability.guideExit.calibres;
  const burnoutMargin = stability.burnout.calibres;
  const checks: Check[] = [
    {
      code: "cp-ahead-of-balance",
      verdict: Math.min(exitMargin, burnoutMargin) <= 0 ? "stop" : "pass",
      value: Math.min(exitMargin, burnoutMargin),
      limit: 0,
      unit: "calibres",
      source: "BAR67: centre of pressure behind the balance point",
    },
    rising("guide-exit-speed", exitSpeed, 10, 15, "m/s", commonPractice),
    rising("guide-exit-against-wind", exitSpeed, 3 * wind, 4 * wind, "m/s", commonPractice),
    rising("thrust-to-weight", model.burn.averageThrust / (mass * model.gravityAt(0)), 3, 5, "", commonPractice),
    rising("margin-at-guide-exit", exitMargin, Number.NEGATIVE_INFINITY, 1, "calibres", commonPractice),
    rising("margin-at-burnout", burnoutMargin, Number.NEGATIVE_INFINITY, 1, "calibres", commonPractice),
    falling("over-stable", "look", Math.max(exitMargin, burnoutMargin), 3, "calibres", commonPractice),
    falling("wind-limit", "look", wind, 8.9408, "m/s", safetyCode),
    falling("tilt-limit", "look", inputs.guide.tilt, (20 * Math.PI) / 180, "rad", safetyCode),
  ];
  const { ceiling, tiltSector } = inputs.fieldLimits;
  if (ceiling !== undefined)
    checks.push(
      falling("ceiling", "stop", highTop, ceiling, "m", "the field's ceiling, at the height that 95 % stay below"),
    );
  if (tiltSector !== undefined && inputs.guide.tilt > 0)
    checks.push({
      code: "tilt-sector",
      verdict: inSector(inputs.guide.toward, tiltSector) ? "pass" : "stop",
      value: inputs.guide.toward,
      limit: null,
      unit: "rad",
      source: "the field's sector in which the guide may lean",
    });
  return checks;
}

const turn = 2 * Math.PI;

function inSector(azimuth: number, sector: { readonly from: number; readonly to: number }): boolean {
  const past = (a: number): number => (((a - sector.from) % turn) + turn) % turn;
  return past(azimuth) <= past(sector.to) + 1e-9;
}

/** May this element be cut, and with this tool? Empty where nothing has to be cut. */
export function cuttingChecks(inputs: DecisionInputs, cuts: boolean): Check[] {
  const { delay } = inputs.motor;
  if (delay.kind !== "adjustable" || !cuts) return [];
  const verdict = (ok: boolean) => (ok ? "pass" : "stop");
  const named = delay.cuttingConfirmed && delay.toolNamed !== undefined;
  const plain = { value: null, limit: null, unit: "", source: instructions };
  const checks: Check[] = [{ code: "instructions-not-confirmed", verdict: verdict(named), ...plain }];
  if (named && inputs.tool !== undefined)
    checks.push({ code: "tool-not-named", verdict: verdict(inputs.tool.name === delay.toolNamed), ...plain });
  return checks;
}

/** What the odds say. */
export function oddsChecks(
  inputs: DecisionInputs,
  settings: readonly Setting[],
  toCut: ToCut | null,
  best: Setting | null,
  rated: boolean,
  notFlown: number,
): Check[] {
  const { limits, recovery } = inputs;
  const checks: Check[] = [];
  if (toCut === null || best === null) {
    const electronics = recovery.electronics !== undefined;
    checks.push({
      code: "no-charge",
      verdict: electronics ? "pass" : "stop",
      value: null,
      limit: null,
      unit: "",
      source: own,
    });
    return checks;
  }
  checks.push(
    rising(
      "no-setting-holds",
      Math.max(...settings.map((s) => s.odds.holds)),
      limits.leastHolds,
      limits.leastHolds,
      "odds",
      own,
    ),
    best.firesFirst === null
      ? rising("below-least-clean", best.odds.clean, 0, limits.leastClean, "odds", own)
      : falling("fires-before-electronics", "look", best.firesFirst, mostFiresFirst, "odds", own),
  );
  if (!rated)
    checks.push({
      code: "opening-strength-unrated",
      verdict: "look",
      value: null,
      limit: 2 * limits.openingSpeed,
      unit: "m/s",
      source: own,
    });
  if (notFlown > 0)
    checks.push({
      code: "draws-not-flown",
      verdict: "stop",
      value: notFlown,
      limit: 0,
      unit: "",
      source: "flights that never left the guide or never came down",
    });
  return checks;
}

/** An element that was cut too deep: may anything be done about it? */
export function overCutChecks(overCut: OverCut | null): Check[] {
  if (overCut === null) return [];
  const verdict = overCut.doNotFly ? "stop" : "look";
  return [
    { code: "element-over-cut", verdict, value: overCut.delay, limit: null, unit: "s", source: "the depth read" },
  ];
}

/** Can the flyer's own setting be made, and is it good enough? */
export function choiceChecks(setting: Setting | null, inputs: DecisionInputs): Check[] {
  const { choice } = inputs;
  if (choice === undefined) return [];
  if (setting === null)
    return [
      { code: "choice-not-achievable", verdict: "stop", value: choice.delay, limit: null, unit: "s", source: own },
    ];
  return [choiceCheck(setting, inputs)];
}

/** Is a setting that can be made good enough? */
export function choiceCheck(setting: Setting, { limits }: Pick<DecisionInputs, "limits">): Check {
  const verdict =
    setting.odds.holds < limits.leastHolds ? "stop" : setting.odds.clean < limits.leastClean ? "look" : "pass";
  return verdict === "stop"
    ? {
        code: "choice-below-least",
        verdict,
        value: setting.odds.holds,
        limit: limits.leastHolds,
        unit: "odds",
        source: own,
      }
    : {
        code: "choice-below-least",
        verdict,
        value: setting.odds.clean,
        limit: limits.leastClean,
        unit: "odds",
        source: own,
      };
}
