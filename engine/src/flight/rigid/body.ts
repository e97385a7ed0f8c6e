import { RowTable } from "../../math/row-table.js";
import { estimateRollInertia, finRolls } from "../../rocket/roll.js";
import { pivotAtOf, pivotWayOf } from "../departure.js";
import type { FlightModel } from "../model.js";
import { attitudeAlong, sideAxes } from "./attitude.js";
import { dragRows, type RigidDrag } from "./drag-rows.js";
import type { RigidSwitches } from "./switches.js";

/** Rows of air: every 10 m from 1 km below the pad to 40 km above it. */
export const airRows = { from: -1000, step: 10, count: 4101 };

/** Rows over Mach number: up to 6. */
export const aeroRows = { from: -0.02, step: 0.005, count: 1210 };

/** What the rigid body's right-hand sides need beside the flight's model, prepared once a flight. */
export interface RigidBody {
  readonly model: FlightModel;
  readonly switches: RigidSwitches;
  /** Density [kg/m³], one over the speed of sound [s/m], logarithm of the Reynolds number per metre and Mach number, by height. */
  readonly air: RowTable;
  /** Slope and place of each part, then the roll slope of each ring of fins, by Mach number. */
  readonly aero: RowTable;
  /** Cants and arms of each ring in roll: cant · forcing [rad m], damping [m²]. */
  readonly rolls: readonly { readonly forcing: number; readonly damping: number }[];
  readonly drag: RigidDrag;
  /** About the axis, airframe with ballast; then of the motor per mass [kg m², m²]. */
  readonly rollInertia: { readonly airframe: number; readonly motorGyration: number };
  /** The thrust's unit vector in body axes, and the moment's arm of its offset: body y and z. */
  readonly thrustLine: {
    readonly along: number;
    readonly side: readonly [number, number];
    readonly offset: readonly [number, number];
  };
  /** Way between both fittings that is left on the guide when the forward one has gone [m]; 0: leaves at once. */
  readonly pivotWay: number;
  /** The aft fitting from the nose tip [m]. */
  readonly pivotAt: number;
}

/** Prepares a rigid body: tables that fill themselves as the flight asks for them. */
export function rigidBody(model: FlightModel): RigidBody {
  const { rocket, motor } = model.inputs;
  const { parts, options } = model;
  const { rigid: switches } = options;
  const rolls = switches.roll ? finRolls(rocket, parts) : [];
  const columns = 2 * parts.length + rolls.length;
  return {
    model,
    switches,
    air: new RowTable({
      ...airRows,
      width: 3,
      fill: (z, out, at) => {
        const { density, soundSpeed, viscosity } = model.airAt(z);
        out[at] = density;
        out[at + 1] = 1 / soundSpeed;
        out[at + 2] = Math.log((density * soundSpeed) / viscosity);
      },
    }),
    aero: new RowTable({
      ...aeroRows,
      width: columns,
      fill: (x, out, at) => {
        const mach = options.compressibility ? Math.max(0, x) : 0;
        parts.forEach((part, i) => {
          out[at + 2 * i] = part.slopeAt(mach);
          out[at + 2 * i + 1] = part.cpAt(mach);
        });
        rolls.forEach((roll, i) => {
          out[at + 2 * parts.length + i] = roll.slopeAt(mach);
        });
      },
    }),
    rolls: rolls.map(({ cant, forcing, damping }) => ({ forcing: cant * forcing, damping })),
    drag: dragRows(model),
    rollInertia: {
      airframe: rocket.rollInertia ?? estimateRollInertia(rocket),
      motorGyration: motor.diameter ** 2 / 8,
    },
    thrustLine: thrustLineOf(model, switches.misalignment),
    pivotWay: switches.pivot ? pivotWayOf(rocket) : 0,
    pivotAt: pivotAtOf(rocket),
  };
}

function thrustLineOf(model: FlightModel, misaligned: boolean): RigidBody["thrustLine"] {
  const line = model.inputs.rocket.mount.thrustLine;
  if (line === undefined || !misaligned) return { along: 1, side: [0, 0], offset: [0, 0] };
  // the rocket stands upright on the pad with body y to the east and z to the north
  const [east, north] = sideAxes(attitudeAlong([0, 0, 1]));
  const [sine, cosine] = [Math.sin(line.toward), Math.cos(line.toward)];
  const towards = (axis: readonly number[]): number => axis[0]! * sine + axis[1]! * cosine;
  const way = [towards(east), towards(north)] as const;
  return {
    along: Math.cos(line.angle),
    side: [Math.sin(line.angle) * way[0], Math.sin(line.angle) * way[1]],
    offset: [line.offset * way[0], line.offset * way[1]],
  };
}
