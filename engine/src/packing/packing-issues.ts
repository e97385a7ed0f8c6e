import type { Issue } from "../issues.js";
import type { PackingInputs, PackingOptions } from "./packing-inputs.js";
import type { PinCount } from "./shear-pins.js";

/**
 * Everything that makes packing inputs unusable, all at once.
 *
 * Codes: `not-positive`, `negative`, `not-a-count`, `no-drogue`, `hole-too-large`. A pin of an unknown size is a finding, not
 * an issue.
 *
 * @param inputs as given
 * @param options as given
 * @returns every issue; empty for inputs that `packingOf` takes
 * @example
 * const canopy = { shape: "conical", diameter: 0 } as const;
 * const recovery = { motorCharge: "primary", lineStretch: 0.5, main: { canopy } } as const;
 * const landing = { density: 1.2, gravity: 9.8 };
 * packingIssues({ rocketLength: 1.5, mass: 2, recovery, openings: [], landing })[0]?.path; // "packing.recovery.main.canopy.diameter"
 */
export function packingIssues(inputs: PackingInputs, options: PackingOptions = {}): Issue[] {
  const issues: Issue[] = [];
  const add = (code: string, path: string, found: number | string, accepted: string) =>
    issues.push({ code, path: `packing.${path}`, found, accepted });
  const positive = (path: string, unit: string, value: number | undefined) => {
    if (value !== undefined && !(Number.isFinite(value) && value > 0))
      add("not-positive", path, value, `> 0 ${unit}`.trim());
  };
  const notNegative = (path: string, unit: string, value: number | undefined) => {
    if (value !== undefined && !(Number.isFinite(value) && value >= 0)) add("negative", path, value, `>= 0 ${unit}`);
  };
  const pins = (path: string, groups: readonly PinCount[] | undefined) =>
    groups?.forEach(({ count }, i) => {
      if (!(Number.isInteger(count) && count >= 1)) add("not-a-count", `${path}[${i}].count`, count, "1, 2, 3, …");
    });
  const { recovery, bay, motorCharge, electronicsBay, landing } = inputs;
  const { main, drogue, harness } = recovery;

  positive("rocketLength", "m", inputs.rocketLength);
  positive("mass", "kg", inputs.mass);
  for (const [which, part] of [["main", main] as const, ["drogue", drogue] as const]) {
    positive(`recovery.${which}.canopy.diameter`, "m", part?.canopy.diameter);
    positive(`recovery.${which}.canopy.cd`, "", part?.canopy.cd);
    positive(`recovery.${which}.strength`, "N", part?.strength);
  }
  positive("recovery.harness.length", "m", harness?.length);
  positive("recovery.harness.strength", "N", harness?.strength);
  positive("bay.diameter", "m", bay?.diameter);
  positive("bay.length", "m", bay?.length);
  positive("bay.pressure", "Pa", bay?.pressure);
  notNegative("bay.friction", "N", bay?.friction);
  pins("bay.pins", bay?.pins);
  notNegative("motorCharge.mass", "kg", motorCharge?.mass);
  notNegative("motorCharge.wellHolds", "kg", motorCharge?.wellHolds);
  positive("electronicsBay.diameter", "m", electronicsBay?.diameter);
  positive("electronicsBay.length", "m", electronicsBay?.length);
  positive("fittingsStrength", "N", inputs.fittingsStrength);
  pins("stillShut", inputs.stillShut);
  inputs.openings.forEach(({ which, airspeed, density, gravity }, i) => {
    positive(`openings[${i}].airspeed`, "m/s", airspeed);
    positive(`openings[${i}].density`, "kg/m³", density);
    positive(`openings[${i}].gravity`, "m/s²", gravity);
    if (which === "drogue" && drogue === undefined) add("no-drogue", `openings[${i}].which`, which, "main");
  });
  positive("landing.density", "kg/m³", landing.density);
  positive("landing.gravity", "m/s²", landing.gravity);
  notNegative("landing.speed", "m/s", landing.speed);
  notNegative("spillHole", "m", inputs.spillHole);
  if (inputs.spillHole !== undefined && inputs.spillHole >= main.canopy.diameter)
    add("hole-too-large", "spillHole", inputs.spillHole, `< ${main.canopy.diameter} m`);
  inputs.sections?.forEach((mass, i) => {
    positive(`sections[${i}]`, "kg", mass);
  });
  positive("options.separationMargin", "", options.separationMargin);
  positive("options.landingSpeed", "m/s", options.landingSpeed);
  positive("options.energyLimit", "J", options.energyLimit);
  return issues;
}
