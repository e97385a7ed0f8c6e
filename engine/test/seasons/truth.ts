import type { DecisionInputs, Spread } from "../../src/index.js";
import { inputsWith, uncertainInputCount } from "../../src/index.js";
import type { Random } from "../random.js";

/**
 * What is true of a rocket and a motor type in one season, drawn from the priors as they are documented: not the learning's own
 * code. Half of the delay's variance is a single motor's, an eighth each the type's offset and rate, the rest the lot's; all
 * times one inverse-gamma factor of mean 1 and ten degrees. A twenty-fifth of the drag's variance and half of the impulse's are
 * the single flight's.
 */
export class Truth {
  readonly prior: Spread;
  private readonly random: Random;
  private readonly lnDrag: number;
  private readonly lnImpulse: number;
  private readonly factor: number;
  private readonly offset: number;
  private readonly rate: number;
  private readonly lots = new Map<string, number>();

  constructor(prior: Spread, random: Random) {
    this.prior = prior;
    this.random = random;
    const { seconds, fraction } = prior.delay;
    this.lnDrag = prior.dragScale * Math.sqrt(0.96) * random.normal();
    this.lnImpulse = prior.totalImpulse * Math.sqrt(0.5) * random.normal();
    this.factor = Math.sqrt(0.8 / random.meanSquare(10));
    this.offset = (this.factor * seconds * random.normal()) / Math.sqrt(8);
    this.rate = (this.factor * fraction * random.normal()) / Math.sqrt(8);
  }

  /** Drag and impulse of one flight, as logarithms. */
  scales(): { readonly lnDrag: number; readonly lnImpulse: number } {
    return {
      lnDrag: this.lnDrag + 0.2 * this.prior.dragScale * this.random.normal(),
      lnImpulse: this.lnImpulse + Math.sqrt(0.5) * this.prior.totalImpulse * this.random.normal(),
    };
  }

  /** How long one motor of a lot burns its delay. */
  delay(set: number, lot: string): number {
    const { seconds, fraction } = this.prior.delay;
    const whole = Math.max(seconds, fraction * set) ** 2;
    const ofLots = Math.sqrt(0.5 * whole - seconds ** 2 / 8 - (fraction * set) ** 2 / 8);
    if (!this.lots.has(lot)) this.lots.set(lot, this.factor * this.random.normal());
    const own = this.factor * Math.sqrt(0.5 * whole) * this.random.normal();
    return set + this.offset + this.rate * set + this.lots.get(lot)! * ofLots + own;
  }
}

/** The plan as it comes to be flown: these scales, and the rest of the day within its spread. */
export function dayOf(
  inputs: DecisionInputs,
  { lnDrag, lnImpulse }: { readonly lnDrag: number; readonly lnImpulse: number },
  random: Random,
): DecisionInputs {
  const z = Float64Array.from({ length: uncertainInputCount }, random.normal);
  const { rocket, motor } = inputs;
  const there = {
    ...inputs,
    rocket: { ...rocket, drag: { ...rocket.drag, scale: rocket.drag.scale * Math.exp(lnDrag) } },
    motor: {
      ...motor,
      thrust: { ...motor.thrust, thrusts: motor.thrust.thrusts.map((thrust) => thrust * Math.exp(lnImpulse)) },
    },
  };
  return { ...there, ...inputsWith(there, { ...inputs.spread, dragScale: 0, totalImpulse: 0 }, z) };
}
