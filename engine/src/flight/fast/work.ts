import * as at from "./slots.js";
import type { FastTables } from "./tables.js";

/** Numbers a row in `k`: the largest state. */
export const rowSize = 10;

/** Numbers a recorded step: start, length, place, then five coefficients each for height and the three velocities. */
export const recordSize = 24;

/** Most steps kept after burnout; a flight that needs more is given up as unfinished. */
export const mostRecords = 4096;

/** The hot loop's memory, made once a worker and used for every draw. */
export interface FastWork {
  readonly tables: FastTables;
  readonly slots: Float64Array;
  /** Density and one over the speed of sound, node by node. */
  readonly air: Float64Array;
  /** Wind east and north, node by node. */
  readonly wind: Float64Array;
  readonly coasting: Float64Array;
  readonly thrusting: Float64Array;
  readonly machCount: number;
  /** Last cells of the tables, kept as integers: an index that was a double costs a conversion at every look-up. */
  readonly lastAirCell: number;
  readonly lastWindCell: number;
  readonly lastMachCell: number;
  /** −1: drag does not depend on height. */
  readonly lastDragRow: number;
  readonly windKnots: Float64Array;
  readonly aero: Float64Array;
  readonly aeroStride: number;
  readonly partCount: number;
  /** The settled model after a hand-over; false flies the plain aligned one. */
  readonly settled: boolean;
  readonly y: Float64Array;
  readonly stage: Float64Array;
  readonly next: Float64Array;
  /** Seven stages' rates. */
  readonly k: Float64Array;
  /** East and north of the pad, carried beside the state. */
  readonly place: Float64Array;
  readonly records: Float64Array;
}

/** Allocates the memory and fills in what no draw changes. */
export function createWork(tables: FastTables): FastWork {
  const { model, air, drag } = tables;
  const { rocket, motor, guide } = model.inputs;
  const slots = new Float64Array(at.slotCount);
  slots[at.AREA] = model.area;
  slots[at.GRAVITY0] = tables.gravity[0];
  slots[at.GRAVITY1] = tables.gravity[1];
  slots[at.GRAVITY2] = tables.gravity[2];
  slots[at.MOTOR_CENTRE] = model.motorPlace.centre;
  slots[at.MOTOR_AFT] = rocket.mount.motorAftAt;
  slots[at.MOTOR_LOADED] = motor.loadedMass;
  slots[at.PROPELLANT] = motor.propellantMass;
  slots[at.MOTOR_GYRATION] = model.motorPlace.gyration;
  slots[at.INVERSE_AIR_STEP] = 1 / air.step;
  slots[at.WIND_TOP] = tables.windTop;
  slots[at.WIND_SCALE] = tables.windCount / tables.windTop ** 0.25;
  slots[at.INVERSE_MACH_STEP] = 1 / drag.machStep;
  slots[at.INVERSE_DRAG_HEIGHT] = 1 / drag.heightStep;
  slots[at.CROSS_FLOW] = model.bodyLift === null ? 0 : (model.bodyLift.area * model.bodyLift.cdc) / model.area;
  slots[at.CROSS_FLOW_AT] = model.bodyLift?.at ?? 0;
  slots[at.TRAVEL] = guide.travel;
  return {
    tables,
    slots,
    air: new Float64Array(2 * air.count),
    wind: new Float64Array(2 * (tables.windCount + 1)),
    coasting: drag.coasting,
    thrusting: drag.thrusting,
    machCount: drag.machCount,
    lastAirCell: air.count - 2,
    lastWindCell: tables.windCount - 1,
    lastMachCell: drag.machCount - 2,
    lastDragRow: drag.heightCount - 2,
    windKnots: tables.windKnots,
    aero: tables.aero,
    aeroStride: tables.aeroStride,
    partCount: tables.partCount,
    settled: model.options.model === "pitching",
    y: new Float64Array(rowSize),
    stage: new Float64Array(rowSize),
    next: new Float64Array(rowSize),
    k: new Float64Array(7 * rowSize),
    place: new Float64Array(2),
    records: new Float64Array(recordSize * mostRecords),
  };
}
