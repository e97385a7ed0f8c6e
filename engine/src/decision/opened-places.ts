import type { PlaceColumns } from "../packing/landing-zone.js";
import type { Setting } from "./decision.js";
import { prepareFlightSample } from "./flight-sample.js";
import { type FlightSampleOptions, flightSampleSpec } from "./flight-sample-spec.js";
import type { DecisionInputs } from "./inputs.js";
import type { JudgedSettings } from "./odds.js";

/**
 * Draws whose way down is followed, each as dear as three that are not: a share of 5 % among them is good to some 6 % (three
 * standard errors of a random sample), and so many cost a few percent of all draws.
 */
const mostDraws = 128;

/**
 * Where draws land that the motor's charge opens at a setting; NaN where they come down unopened.
 *
 * The first of the ensemble's own draws, each at one delay of its own: see `prepareFlightSample`.
 *
 * @param most draws that are followed
 */
export function openedPlaces(
  inputs: DecisionInputs,
  setting: Setting,
  { rough, draws }: Pick<JudgedSettings, "rough" | "draws">,
  options: Pick<FlightSampleOptions, "seed" | "model">,
  most = mostDraws,
): PlaceColumns {
  const spec = flightSampleSpec(inputs, setting, { ...options, flight: rough });
  return prepareFlightSample(spec)(0, Math.min(most, draws)).opened;
}

/**
 * `openedPlaces` of one plan, not followed again for the setting they were followed for last: what is best after the first draws
 * mostly is so after all of them, and then the way down was followed while others flew.
 */
export function openedPlacesOnce(
  inputs: DecisionInputs,
  options: Pick<FlightSampleOptions, "seed" | "model">,
): (setting: Setting, judged: Pick<JudgedSettings, "rough" | "draws">) => PlaceColumns {
  let last: { readonly key: string; readonly places: PlaceColumns } | null = null;
  return (setting, judged) => {
    const key = [setting.delay, setting.delaySd, Math.min(mostDraws, judged.draws)].join(" ");
    if (last?.key !== key) last = { key, places: openedPlaces(inputs, setting, judged, options) };
    return last.places;
  };
}
