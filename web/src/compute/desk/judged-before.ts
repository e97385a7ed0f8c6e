import type { JudgedMotor, MotorRunner } from "@delaywright/engine";

/** Motors that were judged against the last plan: they are not judged again while plan and motor say the same. */
export class JudgedBefore {
  private spec = "";
  private rows = new Map<string, JudgedMotor>();

  /** A runner that looks here first. */
  over(run: MotorRunner): MotorRunner {
    return async (spec, candidate) => {
      const asked = JSON.stringify(spec);
      if (asked !== this.spec) {
        this.spec = asked;
        this.rows = new Map();
      }
      const { rows } = this;
      const key = JSON.stringify(candidate);
      const judged = rows.get(key) ?? (await run(spec, candidate));
      rows.set(key, judged);
      return judged;
    };
  }
}
