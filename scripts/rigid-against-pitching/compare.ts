import { type FileSource, loadPlan, memoryFiles, planToEngine } from "@delaywright/documents";
import {
  type DecisionInputs,
  type EnsembleChunk,
  type EnsembleSpec,
  type FlightOptions,
  type FlightResult,
  fly,
  prepareEnsemble,
} from "@delaywright/engine";
import { choose } from "../../engine/src/decision/choose.js";
import type { Setting } from "../../engine/src/decision/decision.js";
import { type JudgedSettings, judgeSettings } from "../../engine/src/decision/odds.js";
import { settingsOf } from "../../engine/src/decision/settings.js";
import { stabilityOf } from "../../engine/src/decision/stability.js";
import { allOfRigid } from "../../engine/src/flight/rigid/switches.js";
import { scrambleCount, scrambleOf } from "../../engine/src/spread/draws.js";
import { APOGEE_AIRSPEED, APOGEE_HEIGHT, COAST, FLEW, flightSize } from "../../engine/src/spread/ensemble-chunk.js";
import {
  CLEAN,
  EARLY_FAST,
  GROUNDED,
  HOLDS,
  judgedSize,
  LATE_FAST,
  LEAN_FAST,
  LOW,
  sampleSize,
} from "../../engine/src/spread/opening-spec.js";
import { drawnPlan } from "./plans.mjs";

const outcomes = [
  ["clean", CLEAN],
  ["earlyFast", EARLY_FAST],
  ["lateFast", LATE_FAST],
  ["leanFast", LEAN_FAST],
  ["low", LOW],
  ["grounded", GROUNDED],
  ["holds", HOLDS],
] as const;

/** How many draws of each model; the rigid ones are the first of the pitching ones. */
export interface Draws {
  readonly pitching: number;
  readonly rigid: number;
}

/** A mean over the draws, and one standard error of it from the independent scrambles. */
export interface Mean {
  readonly mean: number;
  readonly error: number;
}

/** What a draw's flight or its opening is compared by. */
type Figure = "coast" | "top" | "airspeedAtTop" | "openingSpeed";

/** Rigid less pitching, draw by draw, and the spread among the draws of either. */
export interface Difference extends Mean {
  readonly median: number;
  /** One sigma of the difference among draws. */
  readonly scatter: number;
  readonly pitching: { readonly mean: number; readonly sd: number };
  readonly rigid: { readonly mean: number; readonly sd: number };
}

/** One rigid ensemble against the pitching one. */
export interface Against {
  readonly figures: Readonly<Record<Figure, Difference>>;
  /** Odds of a clean opening, rigid less pitching, at the setting where they differ most. */
  readonly worstClean: Mean;
  /** The same at the delay to cut by the pitching ensemble. */
  readonly atCut: Mean;
  /** Delay to cut by each [s]. */
  readonly toCut: { readonly pitching: number; readonly rigid: number };
  /**
   * Clean odds by which the best setting of the rigid ensemble that holds beats, in its eyes, the one that the pitching ensemble cuts to; within
   * `tie` it holds both equal.
   */
  readonly lost: Mean & { readonly tie: number };
  /** Does the rigid ensemble see `leastHolds` reached, cut as the pitching one says, and cut as it says itself? */
  readonly holdsReached: { readonly pitching: boolean; readonly rigid: boolean };
  readonly notFlown: number;
}

/** What the plan is. */
export interface PlanFacts {
  readonly rocket: string;
  readonly motor: string;
  readonly wind: number;
  readonly elevation: string;
  readonly tilt: number;
  readonly guideExitSpeed: number;
  readonly margin: number;
  readonly thrustToWeight: number;
  readonly top: number;
  readonly mach: number;
  /** Clean odds of the delay to cut by the pitching ensemble. */
  readonly clean: number;
}

export interface Compared {
  readonly plan: number;
  readonly facts: PlanFacts;
  /** The nominal flight in the mean wind: rigid less pitching. */
  readonly nominal: { readonly coast: number; readonly top: number; readonly airspeedAtTop: number };
  readonly turbulent: Against;
  readonly calm: Against;
  /** The turbulent one against the pitching ensemble whose rocket is free once the forward fitting has left. */
  readonly withoutTipOff: Against;
}

/** The inputs of a drawn plan, or null where a document has an issue. */
export async function inputsOf(
  seed: number,
  number: number,
): Promise<{ inputs: DecisionInputs; files: Record<string, string> } | null> {
  const files = drawnPlan(seed, number);
  const source: FileSource = memoryFiles(files);
  const loaded = await loadPlan("plan.json", source);
  if (loaded.parts === undefined) return null;
  const made = planToEngine(loaded.parts);
  return made.ok ? { inputs: made.inputs, files } : null;
}

function nominalOf(inputs: DecisionInputs, model: "pitching" | "rigid") {
  const { apogee, burnout, guideExit } = fly(inputs, { model, tolerance: 1e-8 }).events;
  if (apogee === null || burnout === null || guideExit === null) return null;
  return { coast: apogee.time - burnout.time, top: apogee.position[2], airspeedAtTop: apogee.airspeed };
}

/** Compares the models on one plan, or tells why the plan does not suit. */
export async function compare(seed: number, number: number, draws: Draws): Promise<Compared | string> {
  const found = await inputsOf(seed, number);
  if (found === null) return "document";
  const { inputs, files } = found;
  const why = unsuited(inputs, fly(inputs));
  if (why !== null) return why;
  const [pitching, rigid] = [nominalOf(inputs, "pitching"), nominalOf(inputs, "rigid")];
  if (pitching === null || rigid === null) return "nominal flight";
  const quick = await judgedBy(inputs, seed, draws, {});
  const free = await judgedBy(inputs, seed, draws, { rigid: { ...allOfRigid, pivot: false } });
  const spec = { ...quick.spec, options: { ...quick.spec.options, model: "rigid" as const } };
  const turbulent = prepareEnsemble(spec)(0, draws.rigid);
  const calm = prepareEnsemble({ ...spec, calm: true })(0, draws.rigid);
  return {
    plan: number,
    facts: factsOf(inputs, quick.judged, files),
    nominal: {
      coast: rigid.coast - pitching.coast,
      top: rigid.top - pitching.top,
      airspeedAtTop: rigid.airspeedAtTop - pitching.airspeedAtTop,
    },
    turbulent: against(inputs, quick, turbulent),
    calm: against(inputs, quick, calm),
    withoutTipOff: against(inputs, free, turbulent),
  };
}

/** The ensemble's answer, and its first draws, which the rigid model flies too. */
interface Quick {
  readonly judged: JudgedSettings;
  readonly spec: EnsembleSpec;
  readonly common: EnsembleChunk;
}

async function judgedBy(inputs: DecisionInputs, seed: number, draws: Draws, flight: FlightOptions): Promise<Quick> {
  let spec: EnsembleSpec | undefined;
  const judged = await judgeSettings(inputs, settingsOf(inputs), {
    draws: draws.pitching,
    seed,
    flight,
    run: async (asked, from, to) => {
      spec = asked;
      return prepareEnsemble(asked)(from, to);
    },
  });
  if (spec === undefined) throw new Error("no ensemble was asked for");
  return { judged, spec, common: prepareEnsemble(spec)(0, draws.rigid) };
}

function weightOf({ rocket, motor, ballast }: DecisionInputs): number {
  return 9.80665 * (rocket.mass + motor.loadedMass + (ballast?.mass ?? 0));
}

/** Flights that no rule stops on the guide, as far as models matter; null: suits. */
function unsuited(inputs: DecisionInputs, flight: FlightResult): string | null {
  const { apogee, guideExit } = flight.events;
  if (apogee === null || guideExit === null) return "no flight";
  if (flight.model.burn.averageThrust / weightOf(inputs) < 5) return "thrust to weight below 5";
  const top = apogee.position[2];
  if (top < 100 || top > 3000) return "top outside 100 to 3000 m";
  const exit = Math.hypot(...guideExit.velocity);
  if (exit < 10 || exit < 3 * Math.hypot(...flight.model.windAt(2))) return "too slow off the guide";
  const { guideExit: leaving, burnout } = stabilityOf(flight);
  return leaving.calibres < 1 || burnout.calibres < 1 ? "margin below 1 calibre" : null;
}

function factsOf(inputs: DecisionInputs, judged: JudgedSettings, files: Record<string, string>): PlanFacts {
  const { flight, settings } = judged;
  const { guideExit, apogee } = flight.events;
  return {
    rocket: JSON.parse(files["rocket.json"] ?? "{}").name,
    motor: JSON.parse(files["motor.json"] ?? "{}").name,
    elevation: JSON.parse(files["plan.json"] ?? "{}").field.elevation,
    wind: Math.hypot(...flight.model.windAt(2)),
    tilt: (inputs.guide.tilt * 180) / Math.PI,
    guideExitSpeed: Math.hypot(...(guideExit?.velocity ?? [0])),
    margin: stabilityOf(flight).guideExit.calibres,
    thrustToWeight: flight.model.burn.averageThrust / weightOf(inputs),
    top: apogee?.position[2] ?? 0,
    mach: flight.peaks().highestMach,
    clean: settings[choose(settings, inputs.limits).index]?.odds.clean ?? 0,
  };
}

function against(inputs: DecisionInputs, quick: Quick, rigid: EnsembleChunk): Against {
  const { spec, common: pitching } = quick;
  const { settings } = quick.judged;
  const count = settings.length;
  const draws = pitching.to - pitching.from;
  const judged = (chunk: EnsembleChunk, setting: number, what: number, draw: number): number =>
    chunk.judged[(draw * count + setting) * judgedSize + what] ?? Number.NaN;
  const overDraws = (of: (draw: number) => number): Mean =>
    meanOf(Array.from({ length: draws }, (_, i) => [i, of(i)] as const));
  const shiftOf = (what: number) => (_: unknown, s: number) =>
    overDraws((i) => judged(rigid, s, what, i) - judged(pitching, s, what, i));
  const shifts = outcomes.map(([, what]) => settings.map(shiftOf(what)));
  // many pitching draws, moved by what the common draws differ
  const moved = settings.map((setting, s): Setting => {
    const odds = { ...setting.odds };
    outcomes.forEach(([name], o) => {
      odds[name] += shifts[o]?.[s]?.mean ?? 0;
    });
    odds.error = Math.hypot(odds.error, 3 * (shifts[0]?.[s]?.error ?? 0));
    return { ...setting, odds };
  });
  const reached = (index: number): boolean => (moved[index]?.odds.holds ?? 0) >= inputs.limits.leastHolds;
  const byPitching = choose(settings, inputs.limits).index;
  const byRigid = choose(moved, inputs.limits).index;
  const holding = moved.map((_, i) => i).filter((i) => reached(i));
  const best = holding.reduce(
    (a, b) => ((moved[b]?.odds.clean ?? 0) > (moved[a]?.odds.clean ?? 0) ? b : a),
    reached(byPitching) ? byPitching : (holding[0] ?? byRigid),
  );
  const lostShift = overDraws(
    (i) =>
      judged(rigid, best, 0, i) -
      judged(pitching, best, 0, i) -
      judged(rigid, byPitching, 0, i) +
      judged(pitching, byPitching, 0, i),
  );
  const { samples } = spec.opening;
  const opening = (chunk: EnsembleChunk, draw: number): number => {
    const from = (draw * count + byPitching) * samples;
    let sum = 0;
    for (let j = 0; j < samples; j++) sum += chunk.samples[(from + j) * sampleSize] ?? Number.NaN;
    return sum / samples;
  };
  const column = (k: number) => (chunk: EnsembleChunk, draw: number) =>
    chunk.flights[draw * flightSize + FLEW] === 1 ? (chunk.flights[draw * flightSize + k] ?? Number.NaN) : Number.NaN;
  const differing = (of: (chunk: EnsembleChunk, draw: number) => number): Difference => {
    const both = Array.from({ length: draws }, (_, i) => ({ i, p: of(pitching, i), r: of(rigid, i) })).filter(
      ({ p, r }) => Number.isFinite(p) && Number.isFinite(r),
    );
    const shift = both.map(({ p, r }) => r - p);
    return {
      ...meanOf(both.map(({ i }, at) => [i, shift[at] ?? 0])),
      median: [...shift].sort((a, b) => a - b)[shift.length >> 1] ?? 0,
      scatter: sdOf(shift),
      pitching: { mean: averageOf(both.map(({ p }) => p)), sd: sdOf(both.map(({ p }) => p)) },
      rigid: { mean: averageOf(both.map(({ r }) => r)), sd: sdOf(both.map(({ r }) => r)) },
    };
  };
  let notFlown = 0;
  for (let i = 0; i < draws; i++) if (rigid.flights[i * flightSize + FLEW] !== 1) notFlown += 1;
  return {
    figures: {
      coast: differing(column(COAST)),
      top: differing(column(APOGEE_HEIGHT)),
      airspeedAtTop: differing(column(APOGEE_AIRSPEED)),
      openingSpeed: differing(opening),
    },
    worstClean: (shifts[0] ?? []).reduce((a, b) => (Math.abs(b.mean) > Math.abs(a.mean) ? b : a), {
      mean: 0,
      error: 0,
    }),
    atCut: shifts[0]?.[byPitching] ?? { mean: 0, error: 0 },
    toCut: { pitching: settings[byPitching]?.delay ?? 0, rigid: moved[byRigid]?.delay ?? 0 },
    lost: {
      mean: (moved[best]?.odds.clean ?? 0) - (moved[byPitching]?.odds.clean ?? 0),
      error: best === byPitching ? 0 : lostShift.error,
      tie: Math.max(moved[byPitching]?.odds.error ?? 0, moved[best]?.odds.error ?? 0),
    },
    holdsReached: { pitching: reached(byPitching), rigid: reached(byRigid) },
    notFlown,
  };
}

function averageOf(values: readonly number[]): number {
  return values.reduce((sum, v) => sum + v, 0) / values.length;
}

function sdOf(values: readonly number[]): number {
  const mean = averageOf(values);
  return Math.sqrt(values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / Math.max(1, values.length - 1));
}

function meanOf(values: readonly (readonly [draw: number, value: number])[]): Mean {
  const groups = Array.from({ length: scrambleCount }, (_, set) =>
    values.filter(([draw]) => scrambleOf(draw) === set).map(([, value]) => value),
  ).filter((group) => group.length > 0);
  return { mean: averageOf(values.map(([, v]) => v)), error: sdOf(groups.map(averageOf)) / Math.sqrt(groups.length) };
}
