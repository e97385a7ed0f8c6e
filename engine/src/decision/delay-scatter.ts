import type { LearnedDelay } from "../learning/learned.js";
import { learnedDelayAt } from "../learning/learned-delay.js";
import type { Spread } from "../spread/spread.js";

/** What widens the delay's scatter beyond the motor's own. */
export interface DelayConditions {
  /** One sigma of the depth cut or read [m]; 0 for an uncut element. */
  readonly depthError: number;
  /** Depth for one second [m/s]; left out: depth errors cannot be turned into time. */
  readonly depthPerSecond?: number;
  /** Soaked motor [K]. */
  readonly motorTemperature: number;
  /** Air pressure at which the delay burns [Pa]. */
  readonly pressure: number;
  /** What flights taught of the motor's own delay; left out: the spread's prior holds. */
  readonly learned?: LearnedDelay;
}

/** Temperature and pressure at which delays are certified [K, Pa]: 20 °C at sea level, memory. */
const certified = Object.freeze({ temperature: 293.15, pressure: 101_325 });

/** One sigma of the burning rate per kelvin away from the certified temperature. Common practice, no source (memory). */
const ratePerKelvin = 0.001;

/** One sigma of the exponent with which the burning rate follows pressure. Common practice, no source (memory). */
const ratePressureExponent = 0.1;

/** The parts of the delay's scatter, one sigma each [s]; independent. */
export interface DelayScatter {
  readonly motor: number;
  readonly cut: number;
  readonly burningRate: number;
  readonly total: number;
  /** Mean of the delay as it burns [s], where flights have taught it; left out: the delay as cut. */
  readonly mean?: number;
  /** Degrees of freedom of the Student-t that then stands for the whole scatter. */
  readonly degrees?: number;
}

/** No delay, no scatter. */
export const noScatter: DelayScatter = Object.freeze({ motor: 0, cut: 0, burningRate: 0, total: 0 });

/**
 * Scatter of the delay at one setting.
 *
 * The motor's own is the greater of a time and a share of the delay as cut; the depth error and the unknown dependence of
 * the burning rate on temperature and pressure widen it. Nothing shifts it: until flights teach better the mean is the delay
 * as cut. What flights taught moves the mean and makes the motor's own part a Student-t; the other parts, normal, are added to
 * its variance and the shape is kept: an approximation, exact in mean and variance.
 *
 * @param delay as cut [s], ≥ 0
 * @source default spread: NFPA 1125's tolerance (±1.5 s or ±20 %) read as two sigma; memory, clause not seen
 * @example
 * delayScatter(10, defaultSpread.delay, conditions).motor; // 1
 */
export function delayScatter(delay: number, spread: Spread["delay"], conditions: DelayConditions): DelayScatter {
  const known = spread.seconds > 0 || spread.fraction > 0;
  const { depthPerSecond, depthError, learned } = conditions;
  const outlook = learned === undefined ? undefined : learnedDelayAt(learned, delay);
  const motor = known && outlook !== undefined ? outlook.sd : Math.max(spread.seconds, spread.fraction * delay);
  const cut = depthPerSecond === undefined ? 0 : depthError / depthPerSecond;
  const burningRate = known
    ? delay *
      Math.hypot(
        ratePerKelvin * (conditions.motorTemperature - certified.temperature),
        ratePressureExponent * Math.log(conditions.pressure / certified.pressure),
      )
    : 0;
  return {
    motor,
    cut,
    burningRate,
    total: Math.hypot(motor, cut, burningRate),
    ...(outlook === undefined ? {} : { mean: outlook.mean }),
    ...(outlook === undefined || !known ? {} : { degrees: outlook.degrees }),
  };
}
