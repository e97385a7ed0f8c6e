import { descentData, flightData, stabilityData } from "@delaywright/documents";
import {
  burnOf,
  type DecisionInputs,
  descend,
  drawnInputs,
  type FlightInputs,
  type FlightResult,
  flightWarnings,
  fly as flyOnce,
  type Kinematics,
  leastMarginOf,
  type TurningModel,
  turbulenceSeed,
} from "@delaywright/engine";
import { EXIT, type Io } from "../io/io.js";
import type { Fired, Flown } from "../print/answer.js";
import { csvText } from "../print/csv.js";
import { flightText } from "../print/flight-text.js";
import { jsonText } from "../print/json.js";
import { columnsOf, momentsOf, trajectoryColumns, trajectoryRows } from "../print/trajectory.js";
import { readyPlan } from "./load.js";

/** What `delaywright fly` was asked. */
export interface FlyArgs {
  readonly plan: string;
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly model?: TurningModel;
  /** Number of a draw of the plan's spread; left out: the flight as planned. */
  readonly draw?: number;
  readonly seed?: number;
  /** Delay after which the charge fires [s]; left out: the plan's choice, or the motor's fixed delay. */
  readonly delay?: number;
  /** Time between the rows of the trajectory [s]; left out: the integrator's own steps. */
  readonly every?: number;
}

/** Relative tolerance of the way down. */
const DESCENT_TOLERANCE = 1e-8;
const DEFAULT_SEED = 1;

function firing(
  inputs: DecisionInputs,
  { events }: FlightResult,
  wanted: number | undefined,
): Omit<Fired, "opens"> | null {
  const { motor, recovery } = inputs;
  const { delay: element } = motor;
  const set = wanted ?? inputs.choice?.delay ?? (element.kind === "fixed" ? element.seconds : undefined);
  const clock = element.kind === "none" ? "burnout" : element.clock;
  const start = clock === "ignition" ? burnOf(motor.thrust).end : events.burnout?.time;
  const charge =
    set === undefined || start === undefined ? null : { by: "motor charge" as const, delay: set, fires: start + set };
  const { electronics } = recovery;
  const electronic =
    electronics === undefined || events.apogee === null || wanted !== undefined
      ? null
      : { by: "electronics" as const, delay: null, fires: events.apogee.time + electronics.delay };
  if (charge === null || electronic === null) return charge ?? electronic;
  return charge.fires < electronic.fires ? charge : electronic;
}

/** Flies a plan once and opens the rocket where something opens it. */
function flown(inputs: DecisionInputs, args: FlyArgs): Flown {
  const seed = args.seed ?? DEFAULT_SEED;
  const drawn: FlightInputs = args.draw === undefined ? inputs : drawnInputs(inputs, inputs.spread, seed, args.draw);
  const result = flyOnce(drawn, {
    ...(args.model === undefined ? {} : { model: args.model }),
    ...(args.draw === undefined || args.model !== "rigid" ? {} : { turbulence: turbulenceSeed(seed, args.draw) }),
  });
  const start = firing(inputs, result, args.delay);
  const leastMargin = leastMarginOf(inputs.ruleSet ?? "association");
  const base = { result, draw: args.draw ?? null, seed, leastMargin, warnings: flightWarnings(drawn, result) };
  if (start === null) return { ...base, fired: null, descent: null };
  const opens = start.fires + inputs.recovery.lineStretch;
  const fired = { ...start, opens };
  const landing = result.events.landing;
  if (result.ended !== "landed" || (landing !== null && opens >= landing.time))
    return { ...base, fired, descent: null };
  const at: Kinematics = result.at(opens);
  return { ...base, fired, descent: descend(result.model, at, DESCENT_TOLERANCE) };
}

/** One flight: its events, or its whole trajectory. */
export async function fly(args: FlyArgs, io: Io): Promise<number> {
  const plan = await readyPlan(args.plan, io);
  if (!plan.ok) return plan.code;
  const one = flown(plan.inputs, args);
  const moments = momentsOf(one, args.every);
  if (args.csv) io.out(csvText(trajectoryColumns, trajectoryRows(one, moments)));
  else if (args.json) {
    io.out(
      jsonText({
        context: plan.context,
        flight: flightData(one.result),
        fired: one.fired,
        opened: descentData(one.descent),
        warnings: one.warnings,
        stability: stabilityData(one.result, { least: one.leastMargin }),
        trajectory: columnsOf(one, moments),
        draw: one.draw,
        seed: one.seed,
        model: one.result.options.model,
      }),
    );
  } else io.out(flightText(one, plan.context));
  return one.result.ended === "landed" ? EXIT.done : EXIT.notGoodEnough;
}
