import type { CutPlan, Setting } from "@delaywright/engine";
import type { Answer } from "./answer.js";
import { descentJson, flightJson } from "./flight-json.js";

/** Without the last digits that adding and dividing leave: nanoseconds and nanometres mean nothing here. */
function neat(value: number): number {
  return Math.round(value * 1e9) / 1e9;
}

/** A cut as machines read it. */
export function cutJson({ delay, removed, end, spacers, depth }: CutPlan) {
  return { delay: neat(delay), removed: neat(removed), end, spacers, depth: depth === null ? null : neat(depth) };
}

const nothing = {
  openingSpeed: { p50: null, p90: null, p95: null },
  openingHeight: { p05: null, p10: null, p50: null },
  secondsFromApogee: { p05: null, p50: null, p95: null },
};

function settingJson(setting: Setting) {
  return {
    ...cutJson(setting),
    odds: setting.odds,
    openingSpeed: setting.openingSpeed ?? nothing.openingSpeed,
    openingHeight: setting.openingHeight ?? nothing.openingHeight,
    secondsFromApogee: setting.secondsFromApogee ?? nothing.secondsFromApogee,
    delaySd: setting.delaySd,
    firesFirst: setting.firesFirst,
  };
}

/** A decision for machines: SI numbers and codes, as `schemas/decide.schema.json` says. */
export function decisionJson({ decision, inputs, context, doubts }: Answer) {
  const { toCut, choice, overCut, stability, unopened } = decision;
  return {
    context,
    flight: flightJson(decision.flight),
    coast: decision.coast,
    apogeeHeight: decision.apogeeHeight,
    apogeeAirspeed: decision.apogeeAirspeed,
    settings: decision.settings.map(settingJson),
    toCut: toCut && {
      ...cutJson(toCut),
      reachesLeast: toCut.reachesLeast,
      reachesHolds: toCut.reachesHolds,
      why: toCut.why,
      reasons: toCut.reasons,
      helps: toCut.helps,
      homeCut: toCut.homeCut && cutJson(toCut.homeCut),
      homeWeather: toCut.homeWeather,
    },
    choice: choice && { setting: settingJson(choice.setting), reason: choice.reason },
    opened: descentJson(decision.opened),
    overCut,
    unopened: { odds: unopened.odds, east: unopened.east, north: unopened.north, ellipse95: unopened.ellipse95 },
    stability: {
      cp: stability.cp,
      atGuideExit: stability.guideExit.calibres,
      atBurnout: stability.burnout.calibres,
      guideExit: stability.guideExit,
      guideExitAtAngle: stability.guideExitAtAngle,
      burnout: stability.burnout,
    },
    drivers: decision.drivers,
    delayShareOfOdds: decision.delayShareOfOdds,
    strength: decision.strength,
    limits: inputs.limits,
    checks: decision.checks,
    warnings: decision.warnings,
    doubts,
    seed: decision.seed,
    draws: decision.draws,
    model: decision.model,
  };
}
