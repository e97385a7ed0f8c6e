import type { PlaceColumns } from "../packing/landing-zone.js";
import type { Setting } from "./decision.js";
import { joinFlightSamples, prepareFlightSample } from "./flight-sample.js";
import { type FlightSampleOptions, flightSampleSpec } from "./flight-sample-spec.js";
import type { DecisionInputs } from "./inputs.js";
import type { JudgedSettings } from "./odds.js";

/**
 * Draws whose way down is followed, each as dear as three that are not: a share of 5 % among them is good to some 6 % (three
 * standard errors of a random sample), and so many cost a few percent of all draws.
 */
const mostDraws = 128;

/** Draws between two pauses. */
const run = 16;

/** Awaited between pieces of work that are done here, some milliseconds each; it rejects to call everything off. */
export type Pause = () => Promise<void>;

/** Where opened draws land. */
export interface OpenedPlaces extends PlaceColumns {
  /** Draws that opened, but whose way down could not be followed to the ground. */
  readonly notFollowed: number;
}

/** How opened draws are followed; by the model of the flight that they are draws of. */
export interface OpenedOptions extends Pick<FlightSampleOptions, "seed"> {
  readonly pause?: Pause | undefined;
}

/**
 * Where draws land that the motor's charge opens at a setting; NaN where they come down unopened, or could not be followed.
 *
 * The first of the ensemble's own draws, each at one delay of its own: see `prepareFlightSample`.
 *
 * @param most draws that are followed
 * @throws what the pause rejects with
 */
export async function openedPlaces(
  inputs: DecisionInputs,
  setting: Setting,
  { rough, draws }: Pick<JudgedSettings, "rough" | "draws">,
  { pause, seed }: OpenedOptions,
  most = mostDraws,
): Promise<OpenedPlaces> {
  const fly = prepareFlightSample(
    flightSampleSpec(inputs, setting, { ...(seed === undefined ? {} : { seed }), flight: rough }),
  );
  const count = Math.min(most, draws);
  const flown = [];
  let to = 0;
  do {
    const from = to;
    to = Math.min(count, from + run);
    flown.push(fly(from, to));
    await pause?.();
  } while (to < count);
  const { opening, opened } = joinFlightSamples(flown);
  const lost = opened.time.filter((landing, i) => Number.isNaN(landing) && !Number.isNaN(opening.time[i]!));
  return { east: opened.east, north: opened.north, notFollowed: lost.length };
}

/**
 * `openedPlaces` of one plan, not followed again for the setting they were followed for last: what is best after the first draws
 * mostly is so after all of them, and then the way down was followed while others flew.
 */
export function openedPlacesOnce(
  inputs: DecisionInputs,
  options: OpenedOptions,
): (setting: Setting, judged: Pick<JudgedSettings, "rough" | "draws">) => Promise<OpenedPlaces> {
  let last: { readonly key: string; readonly places: Promise<OpenedPlaces> } | null = null;
  return (setting, judged) => {
    const key = [setting.delay, setting.delaySd, Math.min(mostDraws, judged.draws)].join(" ");
    if (last?.key !== key) last = { key, places: openedPlaces(inputs, setting, judged, options) };
    return last.places;
  };
}
