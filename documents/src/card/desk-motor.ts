import type { Raw } from "../migrate.js";
import { parseQuantity } from "../quantity/parse.js";
import type { Desk } from "./desk.js";

/** Impulse of a kilogram of propellant [N s/kg]: a specific impulse of 200 s, which composite propellants exceed a little. Memory; own default. */
const IMPULSE_PER_MASS = 200 * 9.806_65;
/** Loaded mass of a motor over its propellant's: own default, no source. */
const LOADED_OVER_PROPELLANT = 1.9;
/** Length of a motor over its diameter: own default, no source. */
const SLENDERNESS = 6;
/** Share of the burn in which the thrust rises, and in which it falls: own default, no source. */
const RAMP = 0.05;

/** The motor of the card with its delay as it is set: one of the library, or made of its label's figures. */
export function deskMotor(desk: Desk): Raw {
  const { motor } = desk.entry;
  const seconds = desk.needed("delay", '"9 s"');
  if (motor === undefined) return { ...labelMotor(desk), delay: { kind: "fixed", seconds } };
  const { $schema: _, designation, ...document } = motor.document;
  const { charge, wellHolds, clock } = motor.document.delay as Raw;
  const more = Object.fromEntries(
    Object.entries({ charge, wellHolds, clock }).filter(([, value]) => value !== undefined),
  );
  return {
    ...document,
    // the label's delay is that of the uncut element
    ...(designation === undefined ? {} : { designation: designation.replace(/-\w+$/, "") }),
    thrust: { time: motor.thrust.times, newtons: motor.thrust.thrusts },
    delay: { kind: "fixed", seconds, ...more },
  };
}

function labelMotor(desk: Desk): Raw {
  const impulse = desk.amount("impulse", "impulse", '"309 N s"');
  const burn = desk.amount("burnTime", "time", '"2.1 s"');
  const propellant = desk.or("propellantMass", () => grams((impulse ?? 1) / IMPULSE_PER_MASS));
  const loaded = desk.or("loadedMass", () => grams(LOADED_OVER_PROPELLANT * kilograms(propellant)));
  const diameter = desk.or("motorDiameter", () => "38 mm");
  const length = desk.or("motorLength", () => `${Math.round(SLENDERNESS * 1000 * metres(diameter))} mm`);
  desk.assume("motor", "a thrust that rises, stays and falls, of that impulse and burn time");
  return {
    kind: "motor",
    version: 1,
    name: desk.or("motorName", () => "motor of the card"),
    diameter,
    length,
    loadedMass: loaded,
    propellantMass: propellant,
    thrust: trapezoid(impulse ?? 1, burn ?? 1),
  };
}

/** A thrust curve of that impulse whose burn time, by the 5 % of the certification standard, is the one given. */
function trapezoid(impulse: number, burnTime: number): { time: number[]; newtons: number[] } {
  const ramp = RAMP * burnTime;
  const whole = burnTime + 0.1 * ramp;
  const thrust = impulse / (whole - ramp);
  return { time: [0, ramp, whole - ramp, whole], newtons: [0, thrust, thrust, 0] };
}

const kilograms = (text: string): number => siOf(text, "mass") ?? 0.1;
const metres = (text: string): number => siOf(text, "length") ?? 0.038;

function siOf(text: string, dimension: "mass" | "length"): number | undefined {
  const parsed = parseQuantity(text, dimension);
  return parsed.ok ? parsed.value : undefined;
}

function grams(mass: number): string {
  return `${Math.max(1, Math.round(1000 * mass))} g`;
}
