import type { DecisionData, SettingData } from "@delaywright/documents";
import { flownSetting } from "@delaywright/documents";

/** The setting that is to be cut and flown: the flyer's own choice, else the delay to cut; null for a motor without delay. */
export function targetOf(data: DecisionData): SettingData | null {
  return flownSetting(data) ?? null;
}
