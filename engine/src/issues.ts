/** One thing wrong with the inputs: a stable code, where it is, what was found and what is accepted. The words for people are made elsewhere. */
export interface Issue {
  /** Stable identifier in kebab case, for example `time-not-rising`. */
  readonly code: string;
  /** Where: a dotted path into the inputs, for example `motor.thrust.time[6]`. */
  readonly path: string;
  /** What was found, as a number or a short text. */
  readonly found: number | string;
  /** What is accepted, in SI units, for example `> 0.35 s`. */
  readonly accepted: string;
}

/** The caller gave inputs that no flight can be computed from. Carries every issue found, never only the first. */
export class InputError extends Error {
  readonly issues: readonly Issue[];
  constructor(issues: readonly Issue[]) {
    super(issues.map((i) => `${i.path}: ${i.found} found; ${i.accepted} accepted (${i.code})`).join("\n"));
    this.name = "InputError";
    this.issues = issues;
  }
}
