import type { SteadinessData, SwingData } from "@delaywright/documents";

/** Rows of an invented climb: from the guide's end at 0.3 s to the top at 12 s. */
const times = Array.from({ length: 400 }, (_, i) => 0.3 + 11.7 * (i / 399) ** 2);

/** A swing that dies out, in radians. */
const swing = (most: number): readonly number[] =>
  times.map((time) => Math.abs(most * Math.exp(-1.5 * (time - 0.3)) * Math.cos(9 * (time - 0.3))));

function flown(model: SwingData["model"], most: number): SwingData {
  const until = model === "pitching" ? 4 : 12;
  const count = times.filter((time) => time <= until).length;
  return {
    model,
    ended: "landed",
    coast: 9.9,
    top: { time: 12, height: 700, airspeed: 9 },
    handOver: model === "pitching" ? 4 : null,
    time: times.slice(0, count),
    angleOfAttack: swing(most).slice(0, count),
    afterExit: { from: 0.3, to: 2.3, time: 0.3, angle: most, left: most / 20 },
    aroundBurnout: { from: 1.1, to: 3.1, time: 1.1, angle: most / 3, left: most / 60 },
  };
}

const mach = times.map((time) => (time < 2.1 ? 0.24 * time : Math.max(0.03, 0.5 - 0.05 * (time - 2.1))));
const margin = times.map((time) => Math.min(2.9, 2.1 + 0.4 * time));
const moment = { mass: 2.2, frequency: 9, dampingRatio: 0.12, angleOfAttack: 0.01 };

/** Three invented flights, for tests. */
export function inventedSteadiness(more: Partial<SteadinessData> = {}): SteadinessData {
  return {
    quick: flown("pitching", 0.1),
    rigid: flown("rigid", 0.11),
    rough: flown("rigid", 0.14),
    seed: 1,
    calm: false,
    stability: {
      moments: [
        { ...moment, which: "guide-exit", time: 0.3, mach: 0.06, margin: 2.2 },
        { ...moment, which: "burnout", time: 2.1, mach: 0.5, margin: 2.9 },
        { ...moment, which: "top", time: 12, mach: 0.03, margin: 2.9 },
      ],
      guideExitAngle: { mean: 0.09, highest: 0.15, gust: 1.2 },
      findings: [],
      limits: { leastMargin: 1, mostMargin: 3, leastDamping: 0.05 },
      columns: {
        time: times,
        mach,
        mass: times.map(() => 2.2),
        balance: times.map(() => 0.9),
        cp: times.map(() => 1.1),
        margin,
        frequency: times.map(() => 9),
        dampingRatio: times.map(() => 0.12),
        angleOfAttack: swing(0.11),
      },
    },
    overMach: { mach: [0, 0.25, 0.5], loaded: [2.1, 2.1, 2.2], empty: [2.9, 2.9, 3] },
    ...more,
  };
}
