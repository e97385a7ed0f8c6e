import type { FieldZones } from "@delaywright/documents";
import {
  type Decision,
  type DecisionInputs,
  type EnsembleRunner,
  type FlightSampleChunk,
  flightSampleSpec,
  heightFan,
  joinFlightSamples,
  oddsOverDelay,
  type PlaceColumns,
  prepareFlightSample,
  type Setting,
  shareInside,
  shareOutside,
  spreadEllipse,
  trajectoryColumns,
} from "@delaywright/engine";
import type { Ellipses, LandingShares, PictureData } from "../told.js";

/** How pictures are made without holding up anything more urgent. */
export interface PictureRunner {
  readonly run: EnsembleRunner;
  /** Awaited between short steps; rejects to call everything off. */
  readonly step: () => Promise<void>;
}

const CURVE_DRAWS = 1024;
const MOST_DELAYS = 60;
/** Delays of the curve lie this far apart [s], or further where there would be too many. */
const DELAY_STEP = 0.25;

const SAMPLE_DRAWS = 512;
const SAMPLE_RUN = 16;

const TRAJECTORY_ROWS = 160;

/** Stands for the delay of a motor without one: longer than any flight. */
const NEVER = { delay: 1e4, delaySd: 0 };

/** What the pictures show beside the answer. */
export async function picturesOf(
  inputs: DecisionInputs,
  decision: Decision,
  zones: FieldZones | null,
  { run, step }: PictureRunner,
): Promise<PictureData> {
  const { flight, seed, model } = decision;
  const setting = shownSetting(decision);
  const curve =
    setting === null ? [] : await oddsOverDelay(inputs, delaysOf(decision), { draws: CURVE_DRAWS, seed, model, run });
  const fly = prepareFlightSample(flightSampleSpec(inputs, setting ?? NEVER, { seed, flight }));
  const draws = decision.draws === 1 ? 1 : SAMPLE_DRAWS;
  const chunks: FlightSampleChunk[] = [];
  for (let from = 0; from < draws; from += SAMPLE_RUN) {
    await step();
    chunks.push(fly(from, Math.min(draws, from + SAMPLE_RUN)));
  }
  const sample = joinFlightSamples(chunks);
  const { opened, unopened } = sample;
  await step();
  const climb = heightFan(sample, "climb");
  await step();
  const descent = heightFan(sample, "descent");
  await step();
  const fallen = heightFan(sample, "unopened");
  await step();
  const way = decision.opened;
  return {
    curve,
    delay: setting?.delay ?? null,
    sample,
    fans: { climb, descent, unopened: fallen },
    ellipses: { opened: ellipsesOf(opened), unopened: ellipsesOf(unopened) },
    trajectory: trajectoryColumns(flight, way, way?.times[0] ?? null, TRAJECTORY_ROWS),
    unopenedTrajectory: trajectoryColumns(flight, null, null, TRAJECTORY_ROWS),
    shares: { opened: sharesOf(opened, zones), unopened: sharesOf(unopened, zones) },
  };
}

/** The setting that pictures show: the flyer's choice, else the delay to cut. */
function shownSetting({ settings, toCut, choice }: Decision): Setting | null {
  return choice?.setting ?? settings.find(({ delay }) => delay === toCut?.delay) ?? null;
}

/** Delays across all settings and the time to the top, with a second to spare. */
function delaysOf({ settings, coast }: Decision): number[] {
  const delays = settings.map(({ delay }) => delay);
  const first = Math.max(0, Math.floor(Math.min(coast.p05, ...delays) - 1));
  const last = Math.ceil(Math.max(coast.p95, ...delays) + 1);
  const count = Math.min(MOST_DELAYS, Math.round((last - first) / DELAY_STEP));
  return Array.from({ length: count + 1 }, (_, i) => first + (i / count) * (last - first));
}

function ellipsesOf(places: PlaceColumns): Ellipses {
  return { half: spreadEllipse(places, 0.5), most: spreadEllipse(places, 0.95) };
}

function sharesOf(places: PlaceColumns, zones: FieldZones | null): LandingShares {
  return {
    outside: zones === null || zones.boundary === null ? null : shareOutside(places, zones.boundary),
    keepOff: (zones?.keepOff ?? []).map(({ points }) => shareInside(places, { kind: "polygon", points })),
  };
}
