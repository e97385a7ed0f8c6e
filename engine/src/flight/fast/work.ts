import { doublesScratch } from "../../math/scratch.js";
import { pivotAtOf, pivotWayOf } from "../departure.js";
import { mostRecords, recordSize, rowSize } from "./sizes.js";
import * as at from "./slots.js";
import type { FastTables } from "./tables.js";

/** The same of a rigid flight, which swings and meets gusts all the way up: some 20 km of it. */
const mostRigidRecords = 8192;

const scratch = doublesScratch();

/**
 * The hot loop's memory, made once a worker and used for every draw.
 *
 * A class, so that every one has the same hidden shape from its first field on: as object literals the second one made the
 * optimiser throw away all code compiled for the first.
 */
export class FastWork {
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
  readonly windKnotCount: number;
  readonly aero: Float64Array;
  readonly aeroStride: number;
  readonly partCount: number;
  /** The settled model after a hand-over; false flies the plain aligned one. */
  readonly settled: boolean;
  /** A free body pitches; false: it points along the airflow. */
  readonly pitches: boolean;
  /** It is handed over to the settled model as soon as its swing allows. */
  readonly handsOver: boolean;
  /** Stretches of the thrust curve, `stretchSize` numbers each. */
  readonly stretches: Float64Array;
  readonly stretchCount: number;
  readonly y: Float64Array;
  readonly stage: Float64Array;
  readonly next: Float64Array;
  /** Seven stages' rates. */
  readonly k: Float64Array;
  /** East and north of the pad, carried beside the state. */
  readonly place: Float64Array;
  /** Steps of the flight flown last in this thread, whatever memory it was flown in: they are read before another is flown. */
  readonly records: Float64Array;

  constructor(tables: FastTables) {
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
    const { model: turning, rigid } = model.options;
    slots[at.PIVOT_WAY] = turning === "pitching" && rigid.pivot ? pivotWayOf(rocket) : 0;
    slots[at.PIVOT_AT] = pivotAtOf(rocket);
    slots[at.TOTAL_IMPULSE] = model.totalImpulse;
    slots[at.BURN_END] = model.burn.end;
    this.tables = tables;
    this.slots = slots;
    this.air = new Float64Array(2 * air.count);
    this.wind = new Float64Array(2 * (tables.windCount + 1));
    this.coasting = drag.coasting;
    this.thrusting = drag.thrusting;
    this.machCount = drag.machCount;
    this.lastAirCell = air.count - 2;
    this.lastWindCell = tables.windCount - 1;
    this.lastMachCell = drag.machCount - 2;
    this.lastDragRow = drag.heightCount - 2;
    this.windKnots = tables.windKnots;
    this.windKnotCount = tables.windKnots.length;
    this.aero = tables.aero;
    this.aeroStride = tables.aeroStride;
    this.partCount = tables.partCount;
    this.settled = turning === "pitching";
    this.pitches = turning === "pitching";
    this.handsOver = model.options.handOver;
    this.stretches = Float64Array.from(
      model.stretches.flatMap(({ from, to, thrust, slope, impulse, thrusting }) => [
        from,
        to,
        thrust,
        slope,
        impulse,
        thrusting ? 1 : 0,
      ]),
    );
    this.stretchCount = model.stretches.length;
    this.y = new Float64Array(rowSize);
    this.stage = new Float64Array(rowSize);
    this.next = new Float64Array(rowSize);
    this.k = new Float64Array(7 * rowSize);
    this.place = new Float64Array(2);
    this.records = scratch.take(recordSize * (turning === "rigid" ? mostRigidRecords : mostRecords));
  }
}
