import { parseQuantity } from "../../quantity/parse.js";
import type { RawView } from "../raw.js";

const METRIC_LENGTHS = ["mm", "cm", "m"];

/** What is unlikely about a rocket, though it may be so. */
export function doubtRocket(rocket: RawView): void {
  const diameter = rocket.at("diameter").si("length");
  const length = rocket.at("length").si("length");
  const nose = rocket.at("nose").at("length").si("length");
  if (diameter !== undefined && (diameter < 0.012 || diameter > 0.6)) {
    rocket.at("diameter").report("size-unlikely", expectedSize(rocket.at("diameter").text, "12 mm to 600 mm"));
  }
  if (length !== undefined && (length < 0.2 || length > 8)) {
    rocket.at("length").report("size-unlikely", expectedSize(rocket.at("length").text, "0.2 m to 8 m"));
  }
  for (const key of ["balanceWithoutMotor", "balanceReady", "statedCp"]) {
    const at = rocket.at(key).si("length");
    if (at !== undefined && length !== undefined && at > length)
      rocket.at(key).report("behind-tail", "a place before the tail");
    if (at !== undefined && nose !== undefined && at < nose)
      rocket.at(key).report("ahead-of-nose-base", "a place behind the nose");
  }
  doubtDensity(rocket, diameter, length);
  for (const fins of rocket.at("fins").list) doubtFins(fins, length);
  doubtRecovery(rocket.at("recovery"), diameter);
  const aft = rocket.at("mount").at("motorAftAt").si("length");
  if (aft !== undefined && length !== undefined && Math.abs(aft - length) > Math.max(0.15 * length, 0.05)) {
    rocket.at("mount").at("motorAftAt").report("motor-far-from-tail", "a place near the tail, from the nose tip");
  }
  for (const fitting of rocket.at("fittings").list) {
    const at = fitting.at("at").si("length");
    if (at !== undefined && length !== undefined && at > length)
      fitting.at("at").report("behind-tail", "a place before the tail");
  }
}

function expectedSize(text: string | undefined, range: string): string {
  const parsed = text === undefined ? undefined : parseQuantity(text, "length");
  const metric = parsed?.ok === true && METRIC_LENGTHS.includes(parsed.unit);
  return metric ? `${range}; was it meant in inches?` : range;
}

/** Mass over the volume of a tube of the rocket's size: rockets float. */
function doubtDensity(rocket: RawView, diameter: number | undefined, length: number | undefined): void {
  for (const key of ["massWithoutMotor", "massReady"]) {
    const mass = rocket.at(key).si("mass");
    if (mass === undefined || diameter === undefined || length === undefined) continue;
    const density = mass / ((Math.PI / 4) * diameter * diameter * length);
    if (density > 900) rocket.at(key).report("too-heavy-for-size", expectedMass(rocket.at(key).text));
    if (density < 40) rocket.at(key).report("too-light-for-size", "more mass for a rocket of this size");
  }
}

function expectedMass(text: string | undefined): string {
  const parsed = text === undefined ? undefined : parseQuantity(text, "mass");
  return parsed?.ok === true && parsed.unit === "kg"
    ? "less mass for a rocket of this size; was it meant in lb?"
    : "less mass for a rocket of this size";
}

function doubtFins(fins: RawView, length: number | undefined): void {
  const thickness = fins.at("thickness").si("length");
  if (thickness !== undefined && thickness > 0.02) fins.at("thickness").report("fin-thick", "up to 20 mm");
  const [at, root] = [fins.at("at").si("length"), fins.at("root").si("length")];
  if (at !== undefined && length !== undefined && at + (root ?? 0) > length * 1.02) {
    fins.at("at").report("behind-tail", "a root that ends on the tube; at is the root's leading edge");
  }
}

function doubtRecovery(recovery: RawView, diameter: number | undefined): void {
  const canopy = recovery.at("main").at("canopy").at("diameter");
  const size = canopy.si("length");
  if (size !== undefined && diameter !== undefined && size < 2 * diameter)
    canopy.report("canopy-small", "a canopy wider than two calibres");
  const strength = recovery.at("main").at("strength").si("force");
  if (strength !== undefined && strength < 50)
    recovery.at("main").at("strength").report("strength-low", "50 N or more");
}
