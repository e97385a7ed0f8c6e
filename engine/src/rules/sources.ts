import type { Basis, RuleSetName, RuleStatus } from "./rule.js";

/** In every rule set: physics, common practice and own defaults. */
export const everySet: readonly RuleSetName[] = ["association", "none"];

/** Codes and law. */
export const association: readonly RuleSetName[] = ["association"];

export const commonPractice: Basis = {
  source: "common practice",
  edition: "",
  status: "common practice, no source",
};

export const ownDefault: Basis = { source: "own default", edition: "", status: "own default, no source" };

/** What the facts themselves carry (the field, the plan, the motor's maker), judged in a way of our own. */
export function statedBy(source: string): Basis {
  return { ...ownDefault, source };
}

export function highPowerCode(status: RuleStatus): Basis {
  return { source: "High Power Rocket Safety Code, National Association of Rocketry", edition: "August 2012", status };
}

export function modelCode(status: RuleStatus): Basis {
  return { source: "Model Rocket Safety Code, National Association of Rocketry", edition: "August 2012", status };
}

/** A section of the aviation rule; all of those used were read in the regulation. */
export function aviationRule(section: string, status: RuleStatus = "verified"): Basis {
  return { source: `14 CFR ${section}`, edition: "73 FR 73781 (4 Dec 2008), 74 FR 31843 (6 Jul 2009)", status };
}

export const motorInstructions = statedBy("the motor's printed instructions; High Power Rocket Safety Code, item 3");
