import type { RawView } from "../raw.js";

/** What a motor's fields must be to each other. */
export function checkMotor(motor: RawView): void {
  const loaded = motor.at("loadedMass").si("mass");
  const propellant = motor.at("propellantMass").si("mass");
  if (loaded !== undefined && propellant !== undefined && propellant >= loaded) {
    motor.at("propellantMass").report("propellant-above-loaded", "less than loadedMass");
  }
  if (motor.at("thrust").isObject) checkThrust(motor.at("thrust"));
  const delay = motor.at("delay");
  const longest = delay.at("longest").si("time");
  for (const key of ["mostRemoved", "leastLeft"]) {
    const seconds = delay.at(key).si("time");
    if (longest !== undefined && seconds !== undefined && seconds > longest) {
      delay.at(key).report("beyond-longest", "no more than longest");
    }
  }
}

function checkThrust(thrust: RawView): void {
  const times = thrust.at("time").list.map((each) => each.number);
  const newtons = thrust.at("newtons").list.map((each) => each.number);
  if (times.length > 0 && newtons.length > 0 && times.length !== newtons.length) {
    thrust.at("newtons").report("lengths-differ", `a list of ${times.length}, one for each time`);
  }
  times.forEach((time, index) => {
    const before = times[index - 1];
    if (time !== undefined && before !== undefined && time <= before) {
      thrust.at("time").at(index).report("time-not-rising", `a time after ${before} s`);
    }
  });
  if (newtons.length > 0 && newtons.every((each) => each === undefined || each <= 0)) {
    thrust.at("newtons").report("no-thrust", "at least one thrust above 0");
  }
}
