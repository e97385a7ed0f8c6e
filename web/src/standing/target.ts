import type { DecisionData, SettingData } from "@delaywright/documents";
import { suggestedSetting } from "@delaywright/documents";

/** The setting that is to be cut: the flyer's own choice, else the delay to cut; null for a motor without delay. */
export function targetOf(data: DecisionData): SettingData | null {
  return data.choice?.setting ?? suggestedSetting(data) ?? null;
}
