import * as at from "../flight/fast/slots.js";
import type { FastWork } from "../flight/fast/work.js";
import type { FlightModel } from "../flight/model.js";
import { dormandPrince } from "../math/dormand-prince.js";
import { doublesScratch } from "../math/scratch.js";
import { canopyData, canopyDragArea, fillTime } from "../packing/canopy.js";
import type { Canopy } from "../packing/recovery.js";

const size = 6;
const [EAST, NORTH, UP, EAST_SPEED, NORTH_SPEED, CLIMB] = [0, 1, 2, 3, 4, 5];

/** Relative tolerance of a step. */
const tolerance = 1e-5;
/** Magnitudes below which only absolute error counts. */
const scales = [100, 100, 100, 10, 10, 10];

/** Most steps of one descent. */
const mostSteps = 8192;

/**
 * Steps under full canopies after which a slow fall is followed by its steady state. Stability, not accuracy, keeps the steps to some
 * 1.6 steady speeds over gravity: a thirtieth of a second at 0.2 m/s, so that half an hour would take fifty thousand.
 */
const fullSteps = 512;

/** Steady speed below which a fall is slow [m/s]: it forgets another wind within a metre of its way. Faster ones take few steps. */
const slow = 3;

/** By so much of it its speed may differ from the steady one. */
const nearlySteady = 0.05;

/** The last of the way, in lags of a steady fall behind the wind: near the ground the wind changes within some of them. */
const lastLags = 20;

/** Longest step of a steady fall: this share of the height and a little more, and no longer than so many metres. */
const sinkShare = 0.05;
const sinkLeast = 0.02;
const sinkMost = 20;

const stepTimes = doublesScratch();
const stepHeights = doublesScratch();
const stepClimbs = doublesScratch();

const { nodes, error: errors } = dormandPrince;
const matrix = Float64Array.from({ length: 49 }, (_, i) => dormandPrince.matrix[Math.floor(i / 7) - 1]?.[i % 7] ?? 0);

/** A canopy that opens, with the numbers of its growth. */
interface Growing {
  readonly from: number;
  readonly fill: number;
  readonly full: number;
  readonly growth: number;
}

/**
 * The way down of one draw under its canopies: the equations of `descend`, on the fast flight's tables and in memory made once.
 *
 * `descend` in the draw's own inputs is its judge in the tests.
 */
export class CanopyFall {
  /** East, north, height, then the three velocities; at landing once it has fallen. */
  readonly state = new Float64Array(size);
  time = 0;
  /** Times of the openings and of the landing, each once. */
  knots: number[] = [];
  readonly #work: FastWork;
  readonly #nominal: FlightModel;
  readonly #bodyArea: number;
  readonly #rates = new Float64Array(7 * size);
  readonly #stage = new Float64Array(size);
  readonly #next = new Float64Array(size);
  // read before another draw falls
  readonly #stepTimes = stepTimes.take(mostSteps + 1);
  readonly #stepHeights = stepHeights.take(mostSteps + 1);
  readonly #stepClimbs = stepClimbs.take(mostSteps + 1);
  #stepCount = 0;
  #countAtOpening = 0;
  #growing: Growing[] = [];
  #area = 0;
  #mass = 1;
  #windEast = 0;
  #windNorth = 0;
  /** Time at which rates are wanted: a field, since a number handed over half a million times a decision would be as many objects. */
  #stageTime = 0;
  /** Length of the step tried last. */
  #tried = 0;

  /**
   * @param work memory that `setDraw` fills
   * @param nominal model of the nominal flight
   */
  constructor(work: FastWork, nominal: FlightModel) {
    this.#work = work;
    this.#nominal = nominal;
    this.#bodyArea = nominal.drag(0.05, 1e6, false) * nominal.area;
  }

  /**
   * Follows the draw that stands in the work's memory from line stretch to the ground.
   *
   * @param start east, north, height and velocity at line stretch
   * @param dragScale the draw's factor on the tube's drag
   * @returns false where it does not come down
   */
  fall(start: Float64Array, time: number, dragScale: number): boolean {
    const { state } = this;
    const { drogue, main } = this.#nominal.inputs.recovery;
    const { loadedMass, propellantMass } = this.#nominal.inputs.motor;
    this.#mass = this.#work.slots[at.FRAME_MASS]! + loadedMass - propellantMass;
    this.#area = this.#bodyArea * dragScale;
    this.#growing = [];
    this.knots = [];
    this.#stepCount = 0;
    state.set(start);
    this.time = time;
    const mainAt = drogue === undefined ? Number.POSITIVE_INFINITY : (main.opensAt ?? Number.POSITIVE_INFINITY);
    let waiting = drogue !== undefined && state[UP]! > mainAt;
    if (drogue !== undefined) this.#open(drogue.canopy);
    if (!waiting) this.#open(main.canopy);
    this.#note();
    this.#deriveHere();
    let h = 0.01;
    while (this.#stepCount < mostSteps) {
      const level = waiting ? Math.max(0, mainAt) : 0;
      if (this.#isSteady(level)) {
        this.#sink(level + this.#lastWay());
        this.#deriveHere();
      }
      const kink = this.#nextKink();
      const last = h * 1.01 >= kink - this.time;
      const length = last ? kink - this.time : h;
      const error = this.#try(length);
      h = length * Math.min(3, Math.max(0.2, 0.9 * Math.max(error, 1e-10) ** -0.2));
      if (!(error <= 1)) {
        if (!(length > 1e-9)) return false;
        continue;
      }
      if (this.#next[UP]! < level) {
        this.#try(length * this.#shareAt(level, length));
        this.#accept(this.time + this.#tried);
        if (level === 0) return this.#landed();
        waiting = false;
        this.#open(main.canopy);
        this.#deriveHere();
        h = 0.01;
      } else this.#accept(last ? kink : this.time + length);
    }
    return false;
  }

  /** Height at a time between opening and landing [m]: a cubic through both ends of the step. */
  heightAt(time: number): number {
    let low = 0;
    let high = this.#stepCount - 1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (this.#stepTimes[middle]! <= time) low = middle;
      else high = middle;
    }
    const span = this.#stepTimes[high]! - this.#stepTimes[low]!;
    return cubic(
      this.#stepHeights[low]!,
      span * this.#stepClimbs[low]!,
      this.#stepHeights[high]!,
      span * this.#stepClimbs[high]!,
      (time - this.#stepTimes[low]!) / span,
    );
  }

  #landed(): true {
    this.knots.push(this.time);
    return true;
  }

  /** Drag area of the tube and of canopies that are full [m²]. */
  #fullArea(): number {
    let area = this.#area;
    for (const { full } of this.#growing) area += full;
    return area;
  }

  /** Speed at which drag carries the weight under full canopies [m/s]. */
  #steadySpeed(z: number): number {
    return Math.sqrt((2 * this.#mass * this.#gravity(z)) / (this.#density(z) * this.#fullArea()));
  }

  /** Way before a height over which the wind changes too fast for a steady fall: so many times what it lags behind [m]. */
  #lastWay(): number {
    const z = this.state[UP]!;
    return (lastLags * this.#steadySpeed(z) ** 2) / this.#gravity(z);
  }

  /** It has been followed for long, falls slowly, is far from the height of interest, and nothing changes any more but air and wind. */
  #isSteady(level: number): boolean {
    if (this.#stepCount - this.#countAtOpening < fullSteps || this.#nextKink() < Number.POSITIVE_INFINITY) return false;
    const steady = this.#steadySpeed(this.state[UP]!);
    if (this.state[UP]! < level + 2 * this.#lastWay()) return false;
    return steady < slow && Math.abs(this.state[CLIMB]! + steady) < nearlySteady * steady;
  }

  /**
   * Falls steadily to a height: down at the steady speed v, along with the wind that blew v²/g higher up, which is how far it lags
   * behind a changing wind to the first order. Time and way are sums by Simpson's rule over the height.
   */
  #sink(level: number): void {
    const { state } = this;
    while (state[UP]! > level && this.#stepCount < mostSteps) {
      const top = state[UP]!;
      const rest = top - level;
      const way = Math.min(sinkMost, sinkShare * top + sinkLeast, rest);
      let [time, east, north] = [0, 0, 0];
      for (let i = 0; i <= 2; i++) {
        const z = top - 0.5 * i * way;
        const speed = this.#steadySpeed(z);
        this.#readWind(z + (speed * speed) / this.#gravity(z));
        const part = ((i === 1 ? 4 : 1) * way) / (6 * speed);
        time += part;
        east += part * this.#windEast;
        north += part * this.#windNorth;
        state[CLIMB] = -speed;
      }
      this.time += time;
      state[EAST] = state[EAST]! + east;
      state[NORTH] = state[NORTH]! + north;
      state[UP] = way === rest ? level : top - way;
      state[EAST_SPEED] = this.#windEast;
      state[NORTH_SPEED] = this.#windNorth;
      this.#note();
    }
  }

  #open(canopy: Canopy): void {
    const { state } = this;
    this.#readWind(state[UP]!);
    const speed = Math.hypot(state[EAST_SPEED]! - this.#windEast, state[NORTH_SPEED]! - this.#windNorth, state[CLIMB]!);
    this.#growing.push({
      from: this.time,
      fill: fillTime(canopy, speed, this.#gravity(state[UP]!)),
      full: canopyDragArea(canopy),
      growth: canopyData[canopy.shape].growth,
    });
    this.#countAtOpening = this.#stepCount;
    if (this.knots[this.knots.length - 1] !== this.time) this.knots.push(this.time);
  }

  /** The drag area has a kink where a canopy is full: steps end there. */
  #nextKink(): number {
    let next = Number.POSITIVE_INFINITY;
    for (const { from, fill } of this.#growing) if (from + fill > this.time && from + fill < next) next = from + fill;
    return next;
  }

  #note(): void {
    this.#stepTimes[this.#stepCount] = this.time;
    this.#stepHeights[this.#stepCount] = this.state[UP]!;
    this.#stepClimbs[this.#stepCount] = this.state[CLIMB]!;
    this.#stepCount += 1;
  }

  #accept(time: number): void {
    this.time = time;
    this.state.set(this.#next);
    this.#rates.copyWithin(0, 6 * size, 7 * size);
    this.#note();
  }

  #gravity(z: number): number {
    const c = this.#work.slots;
    return c[at.GRAVITY0]! + z * (c[at.GRAVITY1]! + z * c[at.GRAVITY2]!);
  }

  #density(z: number): number {
    const { air, slots, lastAirCell } = this.#work;
    const place = z > 0 ? z * slots[at.INVERSE_AIR_STEP]! : 0;
    const cell = Math.min(Math.floor(place), lastAirCell);
    return air[2 * cell]! + (place - cell) * (air[2 * cell + 2]! - air[2 * cell]!);
  }

  /** Reads the wind at a height. */
  #readWind(z: number): void {
    const { wind, slots, lastWindCell } = this.#work;
    const top = slots[at.WIND_TOP]!;
    const place = z > 0 ? (z < top ? Math.sqrt(Math.sqrt(z)) * slots[at.WIND_SCALE]! : lastWindCell + 1) : 0;
    const cell = Math.min(Math.floor(place), lastWindCell);
    const part = place - cell;
    const k = 2 * cell;
    this.#windEast = wind[k]! + part * (wind[k + 2]! - wind[k]!);
    this.#windNorth = wind[k + 1]! + part * (wind[k + 3]! - wind[k + 1]!);
  }

  /** Rates at the time and state as they are, into the first row. */
  #deriveHere(): void {
    this.#stageTime = this.time;
    this.#derive(this.state, 0);
  }

  /** Rates at `#stageTime` and a state, into a row. */
  #derive(y: Float64Array, row: number): void {
    const time = this.#stageTime;
    const rates = this.#rates;
    this.#readWind(y[UP]!);
    const ux = y[EAST_SPEED]! - this.#windEast;
    const uy = y[NORTH_SPEED]! - this.#windNorth;
    const uz = y[CLIMB]!;
    let area = this.#area;
    for (let i = 0; i < this.#growing.length; i++) {
      const { from, fill, full, growth } = this.#growing[i]!;
      area += time >= from + fill ? full : full * Math.max(0, (time - from) / fill) ** growth;
    }
    const slow = (0.5 * this.#density(y[UP]!) * Math.sqrt(ux * ux + uy * uy + uz * uz) * area) / this.#mass;
    rates[row + EAST] = y[EAST_SPEED]!;
    rates[row + NORTH] = y[NORTH_SPEED]!;
    rates[row + UP] = uz;
    rates[row + EAST_SPEED] = -slow * ux;
    rates[row + NORTH_SPEED] = -slow * uy;
    rates[row + CLIMB] = -slow * uz - this.#gravity(y[UP]!);
  }

  /** Tries one step; returns the error's root mean square in units of the tolerance. */
  #try(h: number): number {
    const { state } = this;
    const rates = this.#rates;
    this.#tried = h;
    for (let stage = 1; stage < 7; stage++) {
      const target = stage === 6 ? this.#next : this.#stage;
      for (let i = 0; i < size; i++) {
        let sum = 0;
        for (let j = 0; j < stage; j++) sum += matrix[7 * stage + j]! * rates[j * size + i]!;
        target[i] = state[i]! + h * sum;
      }
      this.#stageTime = this.time + nodes[stage]! * h;
      this.#derive(target, stage * size);
    }
    let squares = 0;
    for (let i = 0; i < size; i++) {
      let error = 0;
      for (let j = 0; j < 7; j++) error += errors[j]! * rates[j * size + i]!;
      squares += (error / Math.max(scales[i]!, Math.abs(this.#next[i]!))) ** 2;
    }
    return (h * Math.sqrt(squares / size)) / tolerance;
  }

  /** Share of the step just tried at which it falls through a height, on the cubic through its ends. */
  #shareAt(level: number, h: number): number {
    let low = 0;
    let high = 1;
    for (let i = 0; i < 40; i++) {
      const middle = 0.5 * (low + high);
      const z = cubic(this.state[UP]!, h * this.state[CLIMB]!, this.#next[UP]!, h * this.#next[CLIMB]!, middle);
      if (z > level) low = middle;
      else high = middle;
    }
    return high;
  }
}

function cubic(from: number, fromSlope: number, to: number, toSlope: number, s: number): number {
  const r = 1 - s;
  return r * r * ((1 + 2 * s) * from + s * fromSlope) + s * s * ((1 + 2 * r) * to - r * toSlope);
}
