import type { Vec3 } from "../math/vec3.js";
import { canopyData, canopyDragArea, fillTime } from "../packing/canopy.js";
import type { Canopy } from "../packing/recovery.js";
import { type Derivatives, integrate } from "./integrate.js";
import type { FlightModel } from "./model.js";
import { type Kinematics, type Leg, speedOf, trajectoryAt } from "./trajectory.js";

/** One canopy's opening on the way down. */
export interface OpenedCanopy {
  readonly which: "drogue" | "main";
  /** Line stretch [s from ignition]. */
  readonly time: number;
  readonly height: number;
  readonly airspeed: number;
  /** Time the canopy needs to fill [s]. */
  readonly fill: number;
}

/** The way down under canopies. */
export interface Descent {
  readonly openings: readonly OpenedCanopy[];
  /** Where and how it lands, or null where it never does within the time limit. */
  readonly landing: {
    readonly time: number;
    readonly position: Vec3;
    /** Downward [m/s]. */
    readonly descentSpeed: number;
    /** Over ground, downward and sideways together [m/s]. */
    readonly groundSpeed: number;
    /** Kinetic energy of the whole rocket over ground [J]. */
    readonly energy: number;
  } | null;
  /** Times at which a step of the integration ended [s]. */
  readonly times: readonly number[];
  /** Motion at any time from line stretch to landing. */
  readonly at: (time: number) => Kinematics;
}

/** A canopy that grows, from its line stretch on [s]. */
interface GrownCanopy {
  readonly canopy: Canopy;
  readonly from: number;
  readonly fill: number;
  /** Drag area when full [m²]. */
  readonly full: number;
}

/** A point mass under its canopies. One function for all descents, as `pitchingRatesAt` is for all flights. */
function fallingAt(
  model: FlightModel,
  grown: readonly GrownCanopy[],
  bodyArea: number,
  mass: number,
  t: number,
  y: Float64Array,
  rates: Float64Array,
): void {
  const air = model.airAt(y[2]!);
  const wind = model.windAt(y[2]!);
  const [ux, uy, uz] = [y[3]! - wind[0], y[4]! - wind[1], y[5]! - wind[2]];
  let dragArea = bodyArea;
  for (const c of grown)
    dragArea += c.full * Math.min(1, Math.max(0, (t - c.from) / c.fill)) ** canopyData[c.canopy.shape].growth;
  const slow = (0.5 * air.density * Math.hypot(ux, uy, uz) * dragArea) / mass;
  rates[0] = y[3]!;
  rates[1] = y[4]!;
  rates[2] = y[5]!;
  rates[3] = -slow * ux;
  rates[4] = -slow * uy;
  rates[5] = -slow * uz - model.gravityAt(y[2]!);
}

/**
 * Follows an opened rocket to the ground.
 *
 * A point mass under the drag area of its canopies, each growing over its filling time as its shape does; the tube's
 * own drag counts in full from the start. The drogue opens first where there is one, the main then at its height (at once
 * when already below it).
 *
 * @param model the flight's model
 * @param opened motion at line stretch of the first canopy
 * @param tolerance relative
 * @source filling: T. W. Knacke, Parachute Recovery Systems Design Manual, NWC TP 6575 (1991), 5.4, memory
 */
export function descend(model: FlightModel, opened: Kinematics, tolerance: number): Descent {
  const { recovery, motor } = model.inputs;
  const mass = model.airframe.mass + motor.loadedMass - motor.propellantMass;
  const bodyArea = model.drag(0.05, 1e6, false) * model.area;
  const openings: OpenedCanopy[] = [];
  const legs: Leg<"canopy">[] = [];
  const stretch = model.stretches[model.stretches.length - 1]!;
  const grown: GrownCanopy[] = [];

  const open = (
    which: "drogue" | "main",
    canopy: Canopy,
    at: { time: number; height: number; airspeed: number },
  ): void => {
    const fill = fillTime(canopy, at.airspeed, model.gravityAt(at.height));
    openings.push({ which, ...at, fill });
    grown.push({ canopy, from: at.time, fill, full: canopyDragArea(canopy) });
  };
  const rates: Derivatives = (t, y, out) => fallingAt(model, grown, bodyArea, mass, t, y, out);
  const airspeedOf = (y: Float64Array): number => {
    const wind = model.windAt(y[2]!);
    return Math.hypot(y[3]! - wind[0], y[4]! - wind[1], y[5]! - wind[2]);
  };

  let state = Float64Array.of(...opened.position, ...opened.velocity);
  let time = opened.time;
  const first = { time, height: opened.position[2], airspeed: opened.airspeed };
  const { drogue, main } = recovery;
  const mainAt = drogue === undefined ? Number.POSITIVE_INFINITY : (main.opensAt ?? Number.POSITIVE_INFINITY);
  let mainOpen = drogue === undefined || first.height <= mainAt;
  if (drogue !== undefined) open("drogue", drogue.canopy, first);
  if (mainOpen) open("main", main.canopy, first);

  const whole = (): Omit<Descent, "landing"> => ({
    openings,
    times: legs.flatMap((leg) => leg.steps.map((step) => step.to)),
    at: (t) => trajectoryAt(model, legs, t),
  });
  for (;;) {
    // the drag area has a kink where a canopy is full: steps end there
    const kinks = grown.map((c) => c.from + c.fill).filter((t) => t > time);
    const until = Math.min(time + 3600, ...kinks);
    const run = integrate(rates, state, time, until, {
      tolerance,
      scales: [100, 100, 100, 10, 10, 10],
      events: [
        { name: "landing", value: (_, y) => y[2]!, direction: -1, stops: true },
        ...(mainOpen
          ? []
          : [
              {
                name: "main",
                value: (_: number, y: Float64Array) => y[2]! - mainAt,
                direction: -1 as const,
                stops: true,
              },
            ]),
      ],
    });
    if (run.steps.length > 0) legs.push({ phase: "canopy", stretch, steps: run.steps });
    time = run.time;
    state = Float64Array.from(run.state);
    const stop = run.ended === "event" ? run.hits[run.hits.length - 1]?.name : undefined;
    if (stop === "main") {
      mainOpen = true;
      open("main", main.canopy, { time, height: state[2]!, airspeed: airspeedOf(state) });
    } else if (stop === "landing") {
      const velocity: Vec3 = [state[3]!, state[4]!, state[5]!];
      const groundSpeed = speedOf(velocity);
      return {
        ...whole(),
        landing: {
          time,
          position: [state[0]!, state[1]!, state[2]!],
          descentSpeed: -velocity[2],
          groundSpeed,
          energy: 0.5 * mass * groundSpeed ** 2,
        },
      };
    } else if (run.ended !== "reached-end" || kinks.length === 0) {
      return { ...whole(), landing: null };
    }
  }
}
