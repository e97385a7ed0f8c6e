import type { LargestSwing, SteadinessData, SwingData } from "../answer/steadiness-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { amount, figureWords } from "./numbers.en.js";
import { angleWords } from "./stability.en.js";

/** Closer than this two tops are told as one in time [s] and in height [m]. */
const SAME_TIME = 0.01;
const SAME_HEIGHT = 0.05;

/** How far one top lies from another: `0.02 s later than the default model, 1.3 m higher`. */
function apart(quick: SwingData, other: SwingData, named: boolean, units: UnitSystem): string | null {
  if (quick.top === null || other.top === null) return null;
  const later = other.top.time - quick.top.time;
  const higher = other.top.height - quick.top.height;
  const when =
    Math.abs(later) < SAME_TIME
      ? `within a hundredth of a second${named ? " of the default model" : ""}`
      : `${amount(Math.abs(later), "s", 2)} ${later > 0 ? "later" : "sooner"}${named ? " than the default model" : ""}`;
  const where =
    Math.abs(higher) < SAME_HEIGHT
      ? "at the same height"
      : `${figureWords(Math.abs(higher), "distance", units, 1, 0)} ${higher > 0 ? "higher" : "lower"}`;
  return `${when}, ${where}`;
}

/** How far the rigid model's top lies from the default model's, and how long each coasts. */
export function modelsApartSentence(data: SteadinessData, units: UnitSystem = "metric"): string {
  const { quick, rigid, rough, seed, calm } = data;
  const still = apart(quick, rigid, true, units);
  if (still === null) return "Not every model reaches a top: their flights can't be compared.";
  const coast = (flight: SwingData): string => amount(flight.coast ?? 0, "s", 2);
  const coasts = `: it coasts ${coast(rigid)}, the default model ${coast(quick)}`;
  const moved = apart(quick, rough, false, units);
  const gusts = calm
    ? " A calm makes no turbulence."
    : moved === null
      ? ""
      : ` In turbulence (seed ${seed}) ${moved}, a coast of ${coast(rough)}; other seeds give other gusts.`;
  return `The rigid model reaches the top ${still}${coasts}.${gusts}`;
}

function swingWords({ from, to, time, angle, left }: LargestSwing, burnout: boolean): string {
  const most = `up to ${angleWords(angle)}, ${amount(time, "s", 2)} after ignition`;
  const later = `${angleWords(left)} left at ${amount(to, "s", 1)}`;
  return burnout
    ? `Around burnout, ${amount(from, "s", 1)} to ${amount(to, "s", 1)}, it swings ${most}.`
    : `After the guide it swings ${most}; ${later}.`;
}

/** How the rigid body swings after the guide and around burnout, in the mean wind and in turbulence. */
export function swingSentences({ quick, rigid, rough, calm, seed }: SteadinessData): readonly string[] {
  const said: string[] = [];
  if (rigid.afterExit !== null) said.push(swingWords(rigid.afterExit, false));
  if (rigid.aroundBurnout !== null) said.push(swingWords(rigid.aroundBurnout, true));
  if (!calm && rough.afterExit !== null) {
    const burnout =
      rough.aroundBurnout === null ? "" : `, around burnout up to ${angleWords(rough.aroundBurnout.angle)}`;
    said.push(`In turbulence (seed ${seed}): after the guide up to ${angleWords(rough.afterExit.angle)}${burnout}.`);
  }
  if (quick.handOver !== null)
    said.push(
      `The default model counts the swing as settled after ${amount(quick.handOver, "s", 1)}, and flies nose-first.`,
    );
  return said;
}
