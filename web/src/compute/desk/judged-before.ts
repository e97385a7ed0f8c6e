import type { Candidate, JudgedMotor, MotorRunner, ShortlistSpec } from "@delaywright/engine";

/** Motors that were judged against the last plan: they are not judged again while plan and motor say the same. */
export class JudgedBefore {
  private spec = "";
  private rows = new Map<string, JudgedMotor>();

  /** A shortlist begins: what was judged against another plan is forgotten. */
  begin(spec: ShortlistSpec): void {
    const asked = JSON.stringify(spec);
    if (asked === this.spec) return;
    this.spec = asked;
    this.rows = new Map();
  }

  /** Those that are known come first: they can be told at once. */
  knownFirst(candidates: readonly Candidate[]): Candidate[] {
    const known = new Set(candidates.filter((candidate) => this.rows.has(JSON.stringify(candidate))));
    return [...known, ...candidates.filter((candidate) => !known.has(candidate))];
  }

  /** A runner for the shortlist that began, which looks here first. */
  over(run: MotorRunner): MotorRunner {
    const { rows } = this;
    return async (spec, candidate) => {
      const key = JSON.stringify(candidate);
      const judged = rows.get(key) ?? (await run(spec, candidate));
      rows.set(key, judged);
      return judged;
    };
  }
}
