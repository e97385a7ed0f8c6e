import { lowestShear, settledSwing } from "../src/flight/bounds.js";
import * as at from "../src/flight/fast/slots.js";
import { fastTables } from "../src/flight/fast/tables.js";
import { FastWork } from "../src/flight/fast/work.js";
import { prepareFlight } from "../src/flight/model.js";
import { drawSize } from "../src/spread/draws.js";
import type { EnsembleSpec } from "../src/spread/ensemble.js";
import { drawTolerance } from "../src/spread/fly-draw.js";
import { sobolInteger } from "../src/spread/sobol.js";

/** Bit patterns of each Sobol' dimension: the point whose Gray code has one bit set. */
function directions(): number[] {
  return Array.from({ length: drawSize * 32 }, (_, i) => sobolInteger(2 ** ((i % 32) + 1) - 1, Math.floor(i / 32)));
}

/**
 * Everything that `ensemble.c` needs, prepared here: tables, constants, stretches, spread, what openings are judged by.
 *
 * @returns text, a line per entry: name, count, that many numbers with all their digits
 */
export function dumpEnsemble(spec: EnsembleSpec): string {
  const model = prepareFlight(spec.inputs, spec.options);
  const tables = fastTables(model, spec.top, spec.topMach);
  const work = new FastWork(tables);
  const { air, drag, wind } = tables;
  const { rocket, ballast, guide } = spec.inputs;
  const { spread: s, opening } = spec;
  const slot = (place: number): number => work.slots[place] as number;
  const entries: Readonly<Record<string, ArrayLike<number>>> = {
    area: [slot(at.AREA)],
    gravity: [slot(at.GRAVITY0), slot(at.GRAVITY1), slot(at.GRAVITY2)],
    motorCentre: [slot(at.MOTOR_CENTRE)],
    motorAft: [slot(at.MOTOR_AFT)],
    motorLoaded: [slot(at.MOTOR_LOADED)],
    propellant: [slot(at.PROPELLANT)],
    motorGyration: [slot(at.MOTOR_GYRATION)],
    inverseAirStep: [slot(at.INVERSE_AIR_STEP)],
    lastAirCell: [work.lastAirCell],
    windTop: [slot(at.WIND_TOP)],
    windScale: [slot(at.WIND_SCALE)],
    lastWindCell: [work.lastWindCell],
    inverseMachStep: [slot(at.INVERSE_MACH_STEP)],
    lastMachCell: [work.lastMachCell],
    inverseDragHeight: [slot(at.INVERSE_DRAG_HEIGHT)],
    lastDragRow: [work.lastDragRow],
    crossFlow: [slot(at.CROSS_FLOW)],
    crossFlowAt: [slot(at.CROSS_FLOW_AT)],
    travel: [slot(at.TRAVEL)],
    lowestShear: [lowestShear],
    settledSwing: [settledSwing],
    totalImpulse: [model.totalImpulse],
    burnEnd: [model.burn.end],
    machCount: [drag.machCount],
    aeroStride: [tables.aeroStride],
    partCount: [tables.partCount],
    settled: [model.options.model === "pitching" ? 1 : 0],
    pitching: [model.options.model === "pitching" ? 1 : 0],
    handOver: [model.options.handOver ? 1 : 0],
    coasting: drag.coasting,
    thrusting: drag.thrusting,
    aero: tables.aero,
    windKnots: tables.windKnots,
    stretches: model.stretches.flatMap((x) => [x.from, x.to, x.thrust, x.slope, x.impulse, x.thrusting ? 1 : 0]),
    rocket: [rocket.mass, rocket.balance, rocket.inertia],
    ballast: [ballast.mass, ballast.at],
    guide: [guide.tilt, guide.toward],
    density: air.density,
    densityPerKelvin: air.densityPerKelvin,
    densityPerKelvin2: air.densityPerKelvin2,
    soundSpeed: air.soundSpeed,
    soundSpeedPerKelvin: air.soundSpeedPerKelvin,
    soundSpeedPerKelvin2: air.soundSpeedPerKelvin2,
    windPower: [wind.kind === "power" ? 1 : 0],
    ...(wind.kind === "power"
      ? {
          windProfile: [wind.east, wind.north, wind.exponent],
          // the ground's own node is never read
          windLogRatios: wind.logRatios.map((x) => (Number.isFinite(x) ? x : 0)),
        }
      : { windEasts: wind.east, windNorths: wind.north }),
    spread: [
      s.dragScale,
      s.windSpeed,
      s.guideTilt,
      s.guideTilt,
      s.totalImpulse,
      s.windExponent,
      s.windFloor,
      s.windFloor,
      s.windFrom,
      s.mass,
      s.burnTime,
      s.inertia,
      s.balance,
      s.temperature,
    ],
    settings: opening.settings.flatMap(({ delay, sd }) => [delay, sd]),
    samples: [opening.samples],
    ignitionClock: [opening.clock === "ignition" ? 1 : 0],
    lineStretch: [opening.lineStretch],
    speedLimit: [opening.speedLimit],
    strengthSpeed: [opening.strengthSpeed],
    floor: [opening.floor],
    fillDistance: [opening.fillDistance],
    electronicsDelay: opening.electronicsDelay === null ? [] : [opening.electronicsDelay],
    directions: directions(),
    seed: [spec.seed],
    tolerance: [drawTolerance],
  };
  return Object.entries(entries)
    .map(([name, values]) => `${[name, values.length, ...Array.from(values)].join(" ")}\n`)
    .join("");
}
