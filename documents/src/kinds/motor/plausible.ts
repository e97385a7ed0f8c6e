import type { RawView } from "../raw.js";

/** What is unlikely about a motor, though it may be so. */
export function doubtMotor(motor: RawView): void {
  const [diameter, length] = [motor.at("diameter").si("length"), motor.at("length").si("length")];
  if (diameter !== undefined && (diameter < 0.006 || diameter > 0.2))
    motor.at("diameter").report("size-unlikely", "6 mm to 200 mm");
  if (diameter !== undefined && length !== undefined && length < diameter)
    motor.at("length").report("size-unlikely", "more than its diameter");
  const [loaded, propellant] = [motor.at("loadedMass").si("mass"), motor.at("propellantMass").si("mass")];
  if (diameter !== undefined && length !== undefined && loaded !== undefined) {
    const density = loaded / ((Math.PI / 4) * diameter * diameter * length);
    if (density > 4000 || density < 300)
      motor.at("loadedMass").report("mass-unlikely", "a mass that fits the motor's size");
  }
  if (loaded !== undefined && propellant !== undefined && propellant > 0.9 * loaded) {
    motor.at("propellantMass").report("propellant-large", "up to nine tenths of loadedMass");
  }
  const delay = motor.at("delay");
  for (const key of ["longest", "seconds"]) {
    const seconds = delay.at(key).si("time");
    if (seconds !== undefined && seconds > 25) delay.at(key).report("delay-long", "up to 25 s");
  }
  const depth = delay.at("depthPerSecond").si("length");
  if (depth !== undefined && (depth < 0.2e-3 || depth > 3e-3))
    delay.at("depthPerSecond").report("depth-unlikely", "0.2 mm to 3 mm for one second");
}
