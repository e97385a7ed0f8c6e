import type { Issue } from "../../issues.js";
import type { Candidate } from "./candidate.js";
import { type Findings, inOrder } from "./findings.js";
import type { CandidateFigures, DrawnFigures, JudgedMotor, LaunchFigures, RefusedMotor } from "./judged-motor.js";

/** A motor is judged as far as it goes: what is known of it when it is refused. */
export interface Known {
  readonly candidate: Candidate;
  readonly figures: CandidateFigures;
  readonly launch: LaunchFigures | null;
  readonly drawn: DrawnFigures | null;
}

/** Findings of several looks at one motor. */
export function together(...all: readonly Findings[]): Findings {
  return {
    refusals: all.flatMap((each) => each.refusals),
    looks: all.flatMap((each) => each.looks),
    notChecked: all.flatMap((each) => each.notChecked),
  };
}

/** A motor refused for what was found, or null where nothing refuses it. */
export function refusedFor({ candidate, figures, launch, drawn }: Known, { refusals }: Findings): RefusedMotor | null {
  const [first, ...others] = inOrder(refusals);
  if (first === undefined) return null;
  const { id, price } = candidate;
  return { outcome: "refused", id, price: price ?? null, figures, launch, drawn, refusals: [first, ...others] };
}

/** A motor that no flight can be computed from. */
export function broken({ id, price }: Candidate, issues: readonly Issue[]): JudgedMotor {
  return { outcome: "broken", id, price: price ?? null, issues };
}
