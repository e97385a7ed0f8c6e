import { judgeMotor } from "../src/decision/shortlist/judge-motor.js";
import { shortlist } from "../src/decision/shortlist/shortlist.js";
import { prepareEnsemble } from "../src/spread/ensemble.js";
import { joinChunks } from "../src/spread/ensemble-chunk.js";
import { candidate, openPlan } from "../test/shortlist.js";

const draws = 500;

/** Motors of the whole library; a quarter of them tells whether the time grows as their number does. */
const whole = 200;

export interface ShortlistFigures {
  /** Processor time for the whole library, every motor flown 500 times, shared by two cores [s]. */
  readonly seconds: number;
  /** The same until ten motors are told [s]. */
  readonly firstTen: number;
  /** Processor time a motor, of the whole library over a quarter of it. */
  readonly growth: number;
  /** Share of the time in which draws are flown: the rest is the nominal flight and the tables of each motor. */
  readonly flying: number;
}

function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1e6;
}

const plan = {
  ...openPlan,
  rocket: { ...openPlan.rocket, drag: { from: "build-up", scale: 1 } as const },
  limits: { ...openPlan.limits, leastClean: 0, leastHolds: 0 },
};

interface Run {
  readonly all: number;
  readonly ten: number;
  readonly flying: number;
}

/** Judges motors that are all flown, no two of them alike. */
async function run(count: number): Promise<Run> {
  const motors = Array.from({ length: count }, (_, i) => candidate(`m${i}`, 0.9 + (0.2 * i) / count));
  const start = processorTime();
  let ten = 0;
  let flying = 0;
  const { ranked } = await shortlist(motors, plan, {
    draws,
    run: (spec, motor) =>
      judgeMotor(spec, motor, async (ensemble, from, to) => {
        const fly = prepareEnsemble(ensemble);
        const before = processorTime();
        const chunk = fly(from, to);
        flying += processorTime() - before;
        return joinChunks([chunk]);
      }),
    onRow: (_, done) => {
      if (done === 10) ten = processorTime() - start;
    },
  });
  if (ranked.length !== count) throw new Error(`${count - ranked.length} motors of the bench were not flown`);
  return { all: processorTime() - start, ten, flying };
}

/** Measures a library of 200 motors in this thread; motors are judged whole, so two cores take half of the time each. */
export async function measureShortlist(): Promise<ShortlistFigures> {
  await run(10);
  const quarter = await run(whole / 4);
  const { all, ten, flying } = await run(whole);
  return { seconds: all / 2, firstTen: ten / 2, growth: all / 4 / quarter.all, flying: flying / all };
}
