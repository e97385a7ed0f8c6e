import type { DriverName } from "@delaywright/engine";

const inputs: Readonly<Record<DriverName, string>> = Object.freeze({
  dragScale: "drag",
  totalImpulse: "total impulse",
  burnTime: "burn time",
  mass: "mass",
  inertia: "transverse inertia",
  balance: "balance point",
  guideTilt: "tilt of the guide",
  windSpeed: "wind speed",
  windFrom: "wind direction",
  windExponent: "growth of the wind with height",
  windFloor: "gusts",
  temperature: "air temperature",
  delay: "the delay itself",
  cutDepth: "depth of the cut",
});

/** An uncertain input as a flyer calls it; a name that is not known is given back as it is. */
export function wordForInput(input: string): string {
  return Object.hasOwn(inputs, input) ? inputs[input as DriverName] : input;
}
