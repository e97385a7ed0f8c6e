import { type FieldZones, percent } from "@delaywright/documents";
import type { LandingShares, PictureData } from "../../compute/index.js";

const said = (share: number): string => (share === 0 ? "none" : percent(share));

function partsOf({ outside, keepOff }: LandingShares, zones: FieldZones): string[] {
  const inZones = zones.keepOff.map(
    ({ name }, i) => `${said(keepOff[i] ?? 0)} on ${name === "" ? "a keep-off zone" : name}`,
  );
  return [...inZones, ...(outside === null ? [] : [`${said(outside)} beyond the edge`])];
}

/**
 * What of the sampled landings comes down where nothing may: unopened first.
 *
 * @param zones null: no field, so nothing to be said
 */
export function landingSentences(
  { shares, sample, delay }: Pick<PictureData, "shares" | "sample" | "delay">,
  zones: FieldZones | null,
): readonly string[] {
  const count = sample.unopened.time.length;
  if (zones === null) return ["No field is chosen, so no edge and no keep-off zones are looked at."];
  if (zones.keepOff.length === 0 && zones.boundary === null)
    return ["The field has no edge and no keep-off zones entered, so none are looked at."];
  const line = (lead: string, of: LandingShares): string =>
    `${lead}, of ${count} flights: ${partsOf(of, zones).join(", ")}.`;
  return [line("Unopened", shares.unopened), ...(delay === null ? [] : [line("Opened", shares.opened)])];
}
