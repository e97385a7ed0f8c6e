import { type AirTable, airTable } from "../../air/table.js";
import { type DragTable, dragTable } from "../../rocket/drag-table.js";
import { windAt } from "../../wind/wind-at.js";
import type { FlightModel } from "../model.js";

/** What a wind table is made of: a profile that each draw bends, or components that each draw turns and scales. */
export type WindBase =
  | {
      readonly kind: "power";
      readonly east: number;
      readonly north: number;
      readonly exponent: number;
      readonly logRatios: Float64Array;
    }
  | { readonly kind: "aloft"; readonly east: Float64Array; readonly north: Float64Array };

/**
 * The tables that every draw of one plan shares.
 *
 * Heights above the pad [m]; wind nodes lie at `windTop` (i/n)⁴, dense near the ground where the power law bends.
 */
export interface FastTables {
  readonly model: FlightModel;
  readonly air: AirTable;
  readonly windTop: number;
  readonly windCount: number;
  readonly wind: WindBase;
  /** Heights at which the wind's profile has a kink [m], rising. */
  readonly windKnots: Float64Array;
  readonly drag: DragTable;
  /**
   * Per Mach node: Σ CN, Σ CN x, Σ CN x² of all parts, then slope and place of each part.
   * Slopes are per radian on the reference area, x from the nose tip.
   */
  readonly aero: Float64Array;
  readonly aeroStride: number;
  readonly partCount: number;
  /** Gravity as c0 + c1 z + c2 z². */
  readonly gravity: readonly [number, number, number];
}

const dragHeightStep = 250;

/** Mach numbers of the aerodynamic table: those of the drag table. */
function aeroTable(model: FlightModel, machStep: number, machCount: number): { aero: Float64Array; stride: number } {
  const { parts, options } = model;
  const stride = 3 + 2 * parts.length;
  const aero = new Float64Array(stride * machCount);
  for (let i = 0; i < machCount; i++) {
    const mach = options.compressibility ? i * machStep : 0;
    let k = i * stride + 3;
    for (const part of parts) {
      const slope = part.slopeAt(mach);
      const at = part.cpAt(mach);
      aero[k++] = slope;
      aero[k++] = at;
      for (let power = 0; power < 3; power++) aero[i * stride + power]! += slope * at ** power;
    }
  }
  return { aero, stride };
}

type WindTables = Pick<FastTables, "wind" | "windTop" | "windCount" | "windKnots">;

function windBase(model: FlightModel, top: number): WindTables {
  const profile = model.inputs.wind;
  if (profile.kind === "power") {
    const windTop = Math.min(profile.gradientHeight, top);
    const windCount = windTop > 500 ? 192 : 72;
    const logRatios = Float64Array.from({ length: windCount + 1 }, (_, i) =>
      Math.log((windTop * (i / windCount) ** 4) / profile.referenceHeight),
    );
    return {
      windTop,
      windCount,
      windKnots: Float64Array.from(profile.gradientHeight < top ? [profile.gradientHeight] : []),
      wind: { kind: "power", east: profile.east, north: profile.north, exponent: profile.exponent, logRatios },
    };
  }
  const windTop = Math.max(10, profile.heights[profile.heights.length - 1] as number);
  const windCount = 256;
  const at = windAt(profile);
  const nodes = Array.from({ length: windCount + 1 }, (_, i) => at(windTop * (i / windCount) ** 4));
  return {
    windTop,
    windCount,
    windKnots: Float64Array.from(profile.heights.filter((height) => height > 0)),
    wind: { kind: "aloft", east: Float64Array.from(nodes, (w) => w[0]), north: Float64Array.from(nodes, (w) => w[1]) },
  };
}

/**
 * Prepares the tables of one plan.
 *
 * @param model the nominal flight's model
 * @param top height to which the tables reach [m]; draws that go higher are extrapolated
 * @param topMach Mach number to which they reach
 */
export function fastTables(model: FlightModel, top: number, topMach: number): FastTables {
  const air = airTable(model.inputs.air, top);
  const drag = dragTable(
    model.inputs.rocket,
    model.inputs.motor,
    {
      speedOfSoundAt: (z) => model.airAt(z).soundSpeed,
      kinematicViscosityAt: (z) => model.airAt(z).viscosity / model.airAt(z).density,
      heights: { step: dragHeightStep, count: Math.ceil(top / dragHeightStep) + 1 },
    },
    topMach,
  );
  const { aero, stride } = aeroTable(model, drag.machStep, drag.machCount);
  const [g0, g1, g2] = [0, 1e4, 2e4].map((z) => model.gravityAt(z)) as [number, number, number];
  const c2 = (g2 - 2 * g1 + g0) / 2e8;
  return {
    model,
    air,
    drag,
    ...windBase(model, top),
    aero,
    aeroStride: stride,
    partCount: model.parts.length,
    gravity: [g0, (g1 - g0) / 1e4 - c2 * 1e4, c2],
  };
}
