import { dragBuildUp, dragShares } from "./drag/build-up.js";
import type { DragSource, Rocket } from "./rocket.js";

/** Drag coefficient over Mach number and height, uniform grids from zero, row-major: [height][Mach number]. */
export interface DragTable {
  readonly machStep: number;
  readonly machCount: number;
  /** [m] */
  readonly heightStep: number;
  /** 1: does not depend on height. */
  readonly heightCount: number;
  readonly coasting: Float64Array;
  readonly thrusting: Float64Array;
}

/** What the build-up's Reynolds number needs to know of the air, by height above the pad. */
export interface AirForDrag {
  /** [m/s] at a height [m]. */
  readonly speedOfSoundAt: (height: number) => number;
  /** [m²/s] at a height [m]. */
  readonly kinematicViscosityAt: (height: number) => number;
  /** Rows of the table: 0, step, 2 step … above the pad [m]. A step of 250 m keeps its error below that of the Mach grid. */
  readonly heights: { readonly step: number; readonly count: number };
}

const MACH_STEP = 0.005;
const TOP_MACH = 4;

/** Piecewise linear, constant beyond its ends. */
function interpolate(xs: readonly number[], ys: readonly number[], x: number): number {
  const above = xs.findIndex((knot) => knot > x);
  if (above === 0) return ys[0] ?? 0;
  if (above < 0) return ys.at(-1) ?? 0;
  const x0 = xs[above - 1] ?? x;
  const x1 = xs[above] ?? x;
  const y0 = ys[above - 1] ?? 0;
  return y0 + (((ys[above] ?? 0) - y0) * (x - x0)) / (x1 - x0);
}

type GivenTable = Extract<DragSource, { from: "table" }>;

const givenDrag = ({ mach, coasting, thrusting }: GivenTable, at: number, burning: boolean) =>
  interpolate(mach, burning ? thrusting : coasting, at);

/**
 * Drag coefficient of a rocket, from wherever its drag comes, with its scale. The plain version, exact for every source.
 *
 * @param motor whose jet fills part of the base under thrust; its diameter [m]
 * @returns coefficient on the circle of the reference diameter, from Mach number ≥ 0, airspeed · density/viscosity [1/m] and
 * whether the motor burns
 * @source `dragBuildUp`, or what was given
 * @example
 * dragCoefficient({ ...exampleRocket, drag: { from: "constant", cd: 0.5, scale: 1.1 } }, { diameter: 0.038 })(0.3, 7e6, false); // 0.55
 */
export function dragCoefficient(
  rocket: Rocket,
  motor: { readonly diameter: number },
): (mach: number, reynoldsPerMetre: number, thrusting: boolean) => number {
  const { drag } = rocket;
  switch (drag.from) {
    case "constant":
      return () => drag.cd * drag.scale;
    case "table":
      return (mach, _, thrusting) => drag.scale * givenDrag(drag, mach, thrusting);
    case "build-up": {
      const buildUp = dragBuildUp(rocket, motor);
      return (mach, reynoldsPerMetre, thrusting) => drag.scale * buildUp({ mach, reynoldsPerMetre, thrusting });
    }
  }
}

/**
 * The drag coefficient as a table for many flights of one rocket: Mach numbers from 0 in steps of 0.005, heights as asked.
 *
 * Linear between its points it differs from `dragCoefficient` by less than the tests beside it state. A given table is sampled,
 * so a knot of its own that lies between grid points is cut off there. Drag that does not depend on the Reynolds number has
 * one height.
 *
 * @param motor whose jet fills part of the base under thrust; its diameter [m]
 * @param topMach highest Mach number of the table, 4 where left out
 * @param air speed of sound [m/s] and kinematic viscosity [m²/s] by height, and the heights of the rows
 * @returns coefficients on the circle of the reference diameter, scale included
 * @source `dragCoefficient`
 * @example
 * const air = { speedOfSoundAt: () => 340, kinematicViscosityAt: () => 1.5e-5, heights: { step: 250, count: 13 } };
 * dragTable(exampleRocket, { diameter: 0.038 }, air).machCount; // 801
 */
export function dragTable(
  rocket: Rocket,
  motor: { readonly diameter: number },
  air: AirForDrag,
  topMach: number = TOP_MACH,
): DragTable {
  const machCount = Math.ceil(topMach / MACH_STEP - 1e-9) + 1;
  const grid = { machStep: MACH_STEP, machCount, heightStep: air.heights.step };
  if (rocket.drag.from !== "build-up") {
    const coefficient = dragCoefficient(rocket, motor);
    const column = (thrusting: boolean) =>
      Float64Array.from({ length: machCount }, (_, i) => coefficient(i * MACH_STEP, 0, thrusting));
    return { ...grid, heightCount: 1, coasting: column(false), thrusting: column(true) };
  }
  const { friction, pressure } = dragShares(rocket, motor);
  const { scale } = rocket.drag;
  const heightCount = air.heights.count;
  const coasting = new Float64Array(heightCount * machCount);
  const thrusting = new Float64Array(heightCount * machCount);
  const reynoldsPerMach = new Float64Array(heightCount);
  for (let row = 0; row < heightCount; row++) {
    const height = row * air.heights.step;
    reynoldsPerMach[row] = air.speedOfSoundAt(height) / air.kinematicViscosityAt(height);
  }
  for (let column = 0; column < machCount; column++) {
    const mach = column * MACH_STEP;
    const coast = pressure(mach, false);
    const thrust = pressure(mach, true);
    for (let row = 0; row < heightCount; row++) {
      const rubbing = friction(mach, mach * reynoldsPerMach[row]!);
      coasting[row * machCount + column] = scale * (rubbing + coast);
      thrusting[row * machCount + column] = scale * (rubbing + thrust);
    }
  }
  return { ...grid, heightCount, coasting, thrusting };
}

/**
 * Drag coefficient from a table, linear between its points and constant beyond them.
 *
 * @param mach ≥ 0
 * @param height above the pad [m]
 * @returns coefficient on the circle of the reference diameter
 * @example
 * const air = { speedOfSoundAt: () => 340, kinematicViscosityAt: () => 1.5e-5, heights: { step: 250, count: 13 } };
 * dragFromTable(dragTable(exampleRocket, { diameter: 0.038 }, air), 0.3, 100, false); // 0.6476605
 */
export function dragFromTable(table: DragTable, mach: number, height: number, thrusting: boolean): number {
  const { machStep, machCount, heightStep, heightCount } = table;
  const values = thrusting ? table.thrusting : table.coasting;
  const x = Math.min(Math.max(mach / machStep, 0), machCount - 1);
  const column = Math.min(Math.floor(x), Math.max(machCount - 2, 0));
  const alongMach = x - column;
  const rowAt = (row: number) => {
    const left = values[row * machCount + column] ?? 0;
    return alongMach === 0 ? left : left + ((values[row * machCount + column + 1] ?? 0) - left) * alongMach;
  };
  if (heightCount === 1) return rowAt(0);
  const y = Math.min(Math.max(height / heightStep, 0), heightCount - 1);
  const row = Math.min(Math.floor(y), heightCount - 2);
  const low = rowAt(row);
  return low + (rowAt(row + 1) - low) * (y - row);
}
