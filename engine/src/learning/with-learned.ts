import { withScales } from "../flight/with-scales.js";
import { varies } from "../spread/drawn-values.js";
import type { Spread } from "../spread/spread.js";
import type { TaughtPlan } from "./applied-learning.js";
import type { Learned } from "./learned.js";

/**
 * A plan that reckons with what flights taught: drag and thrust moved, their spread narrowed and correlated, the learned delay
 * in place of the prior's. The only way in; what was learned before is replaced.
 *
 * Where the plan has no spread at all only the middles move.
 *
 * @example
 * await decide(withLearned(inputs, learn(flights, of, inputs.spread)));
 */
export function withLearned<Plan extends TaughtPlan>(inputs: Plan, learned: Learned): Plan {
  const plain = withoutLearned(inputs);
  const { rocket, motor, spread } = plain;
  return {
    ...withScales(plain, learned.drag.mean, learned.impulse.mean),
    spread: varies(spread)
      ? {
          ...spread,
          dragScale: learned.drag.sd,
          totalImpulse: learned.impulse.sd,
          dragWithImpulse: learned.correlation,
        }
      : spread,
    learned: { ...figuresOf(learned), before: { rocket, motor, spread } },
  };
}

/** The plan as it was before anything was learned, to the bit. */
export function withoutLearned<Plan extends TaughtPlan>(inputs: Plan): Plan {
  const { learned, ...plain } = inputs;
  return learned === undefined ? inputs : ({ ...plain, ...learned.before } as Plan);
}

/** Without what stood before, where it comes from a plan that already reckons with it. */
function figuresOf({ drag, impulse, correlation, delay, flights }: Learned): Learned {
  return { drag, impulse, correlation, ...(delay === undefined ? {} : { delay }), flights };
}

/** Learned of the rocket alone: for it on another motor type. */
export function ofRocketAlone(learned: Learned, spread: Spread): Learned {
  const { rocket } = learned.flights;
  return {
    drag: learned.drag,
    impulse: { mean: 0, sd: spread.totalImpulse },
    correlation: 0,
    flights: { rocket, motor: 0, both: 0 },
  };
}

/** Learned of the motor type alone: for it in another rocket. */
export function ofMotorAlone(learned: Learned, spread: Spread): Learned {
  const { motor } = learned.flights;
  return {
    ...learned,
    drag: { mean: 0, sd: spread.dragScale },
    correlation: 0,
    flights: { rocket: 0, motor, both: 0 },
  };
}
