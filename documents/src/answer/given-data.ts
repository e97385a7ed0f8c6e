import type { DecisionInputs } from "@delaywright/engine";

/** The wind that the decision reckoned with. */
export type WindData =
  | {
      readonly kind: "ground";
      /** At `height` above the ground [m/s], [m]. */
      readonly speed: number;
      readonly height: number;
      /** Where it blows from [rad], 0…2π; null in a calm. */
      readonly from: number | null;
    }
  | { readonly kind: "aloft"; readonly heights: number };

/** What the decision was reckoned with, as far as its words name it: SI units. */
export interface GivenData {
  /** Of the pad above mean sea level [m]. */
  readonly elevation: number;
  /** [K], [Pa]; null: the standard's at the elevation. */
  readonly temperature: number | null;
  readonly pressure: number | null;
  readonly wind: WindData;
  /** Travel until the rocket is free [m], lean from the vertical and azimuth it leans to [rad]. */
  readonly guide: { readonly travel: number; readonly tilt: number; readonly toward: number };
  readonly delayKind: DecisionInputs["motor"]["delay"]["kind"];
  /** One sigma of the delay: the greater of seconds [s] and a fraction of the delay. */
  readonly delayScatter: { readonly seconds: number; readonly fraction: number };
  /** Depth that has been cut out of the motor in hand [m]; null without a reading. */
  readonly removedDepth: number | null;
}

/** Slower than this it is called calm [m/s]. */
const CALM = 0.05;

/** What a decision was reckoned with, as plain data. */
export function givenData({ air, wind, guide, motor, spread, cutSoFar }: DecisionInputs): GivenData {
  return {
    elevation: air.elevation,
    temperature: air.temperature ?? null,
    pressure: air.pressure ?? null,
    wind: windData(wind),
    guide: { travel: guide.travel, tilt: guide.tilt, toward: guide.toward },
    delayKind: motor.delay.kind,
    delayScatter: { seconds: spread.delay.seconds, fraction: spread.delay.fraction },
    removedDepth: cutSoFar?.removedDepth ?? null,
  };
}

function windData(wind: DecisionInputs["wind"]): WindData {
  if (wind.kind === "aloft") return { kind: "aloft", heights: wind.heights.length };
  const speed = Math.hypot(wind.east, wind.north);
  const from = (Math.atan2(-wind.east, -wind.north) + 2 * Math.PI) % (2 * Math.PI);
  return { kind: "ground", speed, height: wind.referenceHeight, from: speed < CALM ? null : from };
}
