import type { Decision, DecisionInputs, Setting } from "@delaywright/engine";
import type { PredictedData } from "../answer/debrief-data.js";
import type { FlightDocument } from "../kinds/flight/schema.js";
import { given, si } from "../kinds/si.js";
import { formatQuantity } from "../quantity/format.js";

/** So close to a setting a delay counts as it [s]. */
const NEAR_SETTING = 0.05;

/** The setting of a decision that a delay is; undefined where it is none. */
export function settingAt({ settings }: Pick<Decision, "settings">, delay: number): Setting | undefined {
  const near = settings.filter((setting) => Math.abs(setting.delay - delay) < NEAR_SETTING);
  return near.sort((a, b) => Math.abs(a.delay - delay) - Math.abs(b.delay - delay))[0];
}

/** The same plan on a motor that has this delay and no other. */
export function atDelay(inputs: DecisionInputs, seconds: number): DecisionInputs {
  const { tool: _, cutSoFar: __, choice: ___, ...rest } = inputs;
  const { delay } = inputs.motor;
  const clock = delay.kind === "none" ? "burnout" : delay.clock;
  return { ...rest, motor: { ...inputs.motor, delay: { kind: "fixed", seconds, clock } } };
}

/** What a decision says of the flight at one of its settings. Behind electronics the odds are of a failure, so none are told. */
export function predictedBy({ apogeeHeight }: Decision, setting: Setting | undefined, backup: boolean): PredictedData {
  return {
    clean: setting === undefined || backup ? null : setting.odds.clean,
    holds: setting?.odds.holds ?? null,
    apogee: apogeeHeight,
    secondsFromApogee: setting?.secondsFromApogee ?? null,
    delaySd: setting?.delaySd ?? null,
    written: false,
  };
}

/** Odds at the delay that was set: a setting of the plan, or, where it is none, the plan on a motor with that delay. */
export async function predictedAt(
  inputs: DecisionInputs,
  planned: Decision,
  set: number | null,
  odds: (inputs: DecisionInputs) => Promise<Decision>,
): Promise<PredictedData> {
  const backup = inputs.recovery.motorCharge === "backup";
  if (set === null) return predictedBy(planned, undefined, backup);
  const setting = settingAt(planned, set);
  if (setting !== undefined) return predictedBy(planned, setting, backup);
  const alone = await odds(atDelay(inputs, set));
  return predictedBy(alone, alone.settings[0], backup);
}

/** With the odds and the band that were written down with the flight, where they were. */
export function asForetold(computed: PredictedData, forecast: FlightDocument["forecast"]): PredictedData {
  if (forecast === undefined) return computed;
  const { clean, apogee } = forecast;
  const { p50 } = computed.apogee;
  return {
    ...computed,
    clean,
    apogee:
      apogee === undefined ? computed.apogee : { p05: si(apogee.from, "length"), p50, p95: si(apogee.to, "length") },
    written: true,
  };
}

/** What was foretold, as a flight document keeps it; undefined where no odds were given. */
export function writtenForecast({ clean, apogee }: PredictedData): FlightDocument["forecast"] {
  if (clean === null) return undefined;
  const metres = (value: number): string => formatQuantity(value, "length", "m", { digits: 5 });
  const known = Number.isFinite(apogee.p05) && Number.isFinite(apogee.p95);
  return {
    clean: Number(clean.toFixed(4)),
    ...given("apogee", known ? { from: metres(apogee.p05), to: metres(apogee.p95) } : undefined),
  };
}
