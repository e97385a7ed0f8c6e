import { RowTable } from "../../math/row-table.js";
import type { FlightModel } from "../model.js";

/** Below this Mach number the rows are finer: the friction's laws change there from one to the next. */
export const slowMach = 0.06;

export const slowMachRows = { from: -0.002, step: 0.001, count: 68 };

export const dragMachRows = { from: 0, step: 0.005, count: 1204 };

/** Heights whose Reynolds numbers the rows hold [m]: a cubic through them in its logarithm serves all between. */
const heights = [-300, 1500, 5000, 12_000] as const;

/** Drag coefficient on the reference area. */
export type RigidDrag = (mach: number, logReynolds: number, reynolds: number, thrusting: boolean) => number;

/**
 * Drag coefficient of a built-up rocket from rows over Mach number that fill themselves; anything else as it is given.
 *
 * @returns coefficient on the reference area from Mach number, logarithm of the Reynolds number per metre and Mach number, the same
 *   with the Mach number in it [1/m], and whether the motor burns; within 1e-3 of `model.drag`
 *   where a law of friction changes, elsewhere within 1e-5
 */
export function dragRows(model: FlightModel): RigidDrag {
  const rows = builtUpRows(model);
  if (rows === null) return (mach, _, reynolds, thrusting) => model.drag(mach, reynolds, thrusting);
  const { burning, coasting, slowBurning, slowCoasting, nodes, weights } = rows;
  const [n0, n1, n2, n3] = nodes;
  const [d0, d1, d2, d3] = weights;
  return (mach, logReynolds, _, thrusting) => {
    const table = mach > slowMach ? (thrusting ? burning : coasting) : thrusting ? slowBurning : slowCoasting;
    const offset = table.locate(mach);
    const [x0, x1, x2, x3] = [logReynolds - n0, logReynolds - n1, logReynolds - n2, logReynolds - n3];
    return (
      x1 * x2 * x3 * d0 * table.value(offset, 0) +
      x0 * x2 * x3 * d1 * table.value(offset, 1) +
      x0 * x1 * x3 * d2 * table.value(offset, 2) +
      x0 * x1 * x2 * d3 * table.value(offset, 3)
    );
  };
}

type Four = readonly [number, number, number, number];

/** Rows of a built-up drag with and without thrust, the logarithms of the Reynolds numbers that they hold, and Lagrange's weights of these. */
export interface BuiltUpRows {
  readonly burning: RowTable;
  readonly coasting: RowTable;
  readonly slowBurning: RowTable;
  readonly slowCoasting: RowTable;
  readonly nodes: Four;
  readonly weights: Four;
}

/** The rows of a built-up drag; null where the drag is given. */
export function builtUpRows(model: FlightModel): BuiltUpRows | null {
  if (model.inputs.rocket.drag.from !== "build-up") return null;
  const nodes = heights.map((z) => {
    const { density, soundSpeed, viscosity } = model.airAt(z);
    return Math.log((density * soundSpeed) / viscosity);
  }) as unknown as Four;
  const rowsOf = (places: { from: number; step: number; count: number }, thrusting: boolean): RowTable =>
    new RowTable({
      ...places,
      width: 4,
      fill: (x, out, at) => {
        const mach = Math.max(0, x);
        nodes.forEach((node, i) => {
          out[at + i] = model.drag(mach, Math.max(mach, 1e-4) * Math.exp(node), thrusting);
        });
      },
    });
  const weights = nodes.map((node) =>
    nodes.reduce((product, other) => (other === node ? product : product / (node - other)), 1),
  ) as unknown as Four;
  return {
    burning: rowsOf(dragMachRows, true),
    coasting: rowsOf(dragMachRows, false),
    slowBurning: rowsOf(slowMachRows, true),
    slowCoasting: rowsOf(slowMachRows, false),
    nodes,
    weights,
  };
}
