import { normalGravity } from "@delaywright/engine";
import { defaultWeather } from "./defaults.js";
import type { Issue } from "./issue.js";
import { rocketToEngine } from "./kinds/rocket/to-engine.js";
import { si } from "./kinds/si.js";
import type { Loaded } from "./load.js";
import { partsOf, placed, placedMotor } from "./load-plan.js";
import { placeOfIssue, rocketConflicts } from "./plan-conflicts.js";
import { type Doubt, nodeDoubts } from "./plausible.js";
import { planToEngine } from "./to-engine.js";

/** What there is to say about a file and all that it refers to. */
export interface Checked {
  readonly issues: readonly Issue[];
  readonly warnings: readonly Doubt[];
}

/**
 * Whether documents are right: their own issues, what they say against each other, and what is unlikely about them.
 *
 * @param loaded a file of any kind, as `loadAny` gave it
 * @example
 * checkLoaded(await loadAny("demo.rocket.json", files)).issues; // [] where all is right
 */
export function checkLoaded(loaded: Loaded): Checked {
  const { root, issues, entries } = loaded;
  if (loaded.kind === "library") {
    const each = entries.map(checkLoaded);
    const own = issues.filter((issue) => !entries.some((entry) => entry.issues.includes(issue)));
    return {
      issues: [...own, ...each.flatMap((entry) => entry.issues)],
      warnings: each.flatMap((entry) => entry.warnings),
    };
  }
  const doubts = root === undefined ? [] : nodeDoubts(root);
  if (root === undefined || issues.length > 0) return { issues, warnings: doubts };
  const parts = root.kind === "plan" ? partsOf(root) : undefined;
  if (parts !== undefined) {
    const made = planToEngine(parts);
    return made.ok ? { issues: [], warnings: made.warnings } : { issues: made.issues, warnings: doubts };
  }
  const rocket = placed(root, "rocket");
  if (rocket === undefined) return { issues, warnings: doubts };
  const readyWith = placedMotor(root.children["readyWith"])?.document;
  const { massReady } = rocket.document;
  if (massReady !== undefined && readyWith !== undefined && si(massReady, "mass") <= si(readyWith.loadedMass, "mass")) {
    const accepted = `more than the motor it was weighed with (${readyWith.loadedMass})`;
    return {
      issues: [placeOfIssue(rocket, "massReady", "mass-not-above-motor", massReady, accepted)],
      warnings: doubts,
    };
  }
  const gravity = normalGravity(defaultWeather.latitude, defaultWeather.elevation);
  return { issues: rocketConflicts(rocket, rocketToEngine(rocket.document, { readyWith, gravity })), warnings: doubts };
}
