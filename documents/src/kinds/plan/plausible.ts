import type { RawView } from "../raw.js";

const CELSIUS = 273.15;

/** What is unlikely about a plan, though it may be so. */
export function doubtPlan(plan: RawView): void {
  const weather = plan.at("weather");
  const temperature = weather.at("temperature").si("temperature");
  if (temperature !== undefined && (temperature < CELSIUS - 40 || temperature > CELSIUS + 55)) {
    weather.at("temperature").report("temperature-unlikely", "-40 degC to 55 degC");
  }
  const wind = weather.at("wind").si("speed");
  if (wind !== undefined && wind > 20) weather.at("wind").report("wind-strong", "up to 20 m/s");
  if (!weather.has("wind") && !weather.has("aloft"))
    weather.at("wind").report("wind-not-given", "a wind (calm air is taken until then)");
  if (wind !== undefined && wind > 0 && !weather.has("windFrom"))
    weather.at("windFrom").report("wind-from-not-given", "where it blows from: north is reckoned with");
  const travel = plan.at("guide").at("travel").si("length");
  if (travel !== undefined && (travel < 0.5 || travel > 6))
    plan.at("guide").at("travel").report("travel-unlikely", "0.5 m to 6 m");
  const rail = plan.at("guide").at("rail").si("length");
  if (rail !== undefined && (rail < 0.8 || rail > 8))
    plan.at("guide").at("rail").report("travel-unlikely", "0.8 m to 8 m");
  const tilt = plan.at("guide").at("tilt").si("angle");
  if (tilt !== undefined && tilt > (20.01 * Math.PI) / 180)
    plan.at("guide").at("tilt").report("tilt-unlikely", "up to 20 deg");
  if (tilt !== undefined && tilt > 0 && !plan.at("guide").has("toward")) {
    plan.at("guide").at("toward").report("toward-not-given", "where it leans to: north is reckoned with");
  }
  const speed = plan.at("limits").at("openingSpeed").si("speed");
  if (speed !== undefined && speed > 40) plan.at("limits").at("openingSpeed").report("limit-high", "up to 40 m/s");
  const height = plan.at("limits").at("openingHeight").si("length");
  if (height !== undefined && height < 30) plan.at("limits").at("openingHeight").report("limit-low", "30 m or more");
}
