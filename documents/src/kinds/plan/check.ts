import { checkMotor } from "../motor/check.js";
import { checkMotorInHand } from "../motor-in-hand/check.js";
import type { RawView } from "../raw.js";
import { checkRocket } from "../rocket/check.js";
import { checkRuleSet } from "../rule-set/check.js";
import { checkTool } from "../tool/check.js";

/** What a plan's fields must be to each other, its inline documents included. */
export function checkPlan(plan: RawView): void {
  if (plan.at("rocket").isObject) checkRocket(plan.at("rocket"));
  const motor = plan.at("motor");
  if (motor.isObject) (motor.at("kind").text === "motor-in-hand" ? checkMotorInHand : checkMotor)(motor);
  if (plan.at("tool").isObject) checkTool(plan.at("tool"));
  if (plan.at("ruleSet").isObject) checkRuleSet(plan.at("ruleSet"));
  if (plan.at("guide").isObject) checkGuide(plan.at("guide"));
  checkWeather(plan.at("weather"));
  for (const key of ["wind", "temperature"] as const) {
    const range = plan.at("weatherRange").at(key);
    const dimension = key === "wind" ? "speed" : key;
    const [least, most] = [range.at(0).si(dimension), range.at(1).si(dimension)];
    if (least !== undefined && most !== undefined && most < least)
      range.at(1).report("out-of-range", "no less than the first of the two");
  }
}

function checkGuide(guide: RawView): void {
  const [travel, rail, stop] = [guide.has("travel"), guide.has("rail"), guide.has("stop")];
  if (travel && (rail || stop)) guide.at("travel").report("one-of-two", "either travel, or rail and stop");
  if (!travel && !rail) guide.at(stop ? "rail" : "travel").report("missing", "travel, or rail and stop", '"1.8 m"');
  if (!travel && rail && !stop)
    guide.at("stop").report("missing", "the height of the stop above the rail's lower end", '"150 mm"');
  const [long, high] = [guide.at("rail").si("length"), guide.at("stop").si("length")];
  if (long !== undefined && high !== undefined && high >= long)
    guide.at("stop").report("out-of-range", "less than the length of the rail");
}

function checkWeather(weather: RawView): void {
  if (weather.has("pressure") && weather.has("seaLevelPressure")) {
    weather.at("seaLevelPressure").report("one-of-two", "either pressure, as read at the field, or seaLevelPressure");
  }
  const heights = weather.at("aloft").list.map((row) => row.at("height"));
  if (weather.at("aloft").list.length > 0) {
    for (const key of ["wind", "windFrom", "measuredAt", "terrain", "gradientHeight"].filter((each) =>
      weather.has(each),
    )) {
      weather.at(key).report("one-of-two", "either aloft, or a wind near the ground");
    }
  }
  heights.forEach((height, index) => {
    const [before, here] = [heights[index - 1]?.si("length"), height.si("length")];
    if (before !== undefined && here !== undefined && here <= before)
      height.report("not-rising", "a height above the one before it");
  });
}
