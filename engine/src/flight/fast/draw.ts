import { airframeWithBallast } from "../../rocket/mass.js";
import { lowestShear } from "../bounds.js";
import * as at from "./slots.js";
import type { FastWork } from "./work.js";

/**
 * What one draw changes: factors are 1 and additions 0 for the nominal flight. A class for the same reason as `FastWork`.
 */
export class DrawnValues {
  dragScale = 1;
  totalImpulse = 1;
  burnTime = 1;
  mass = 1;
  inertia = 1;
  /** [m] */
  balance = 0;
  /** Lean of the guide towards east and towards north [rad], added to the plan's. */
  tiltEast = 0;
  tiltNorth = 0;
  windSpeed = 1;
  /** Turn of the direction that the wind blows from [rad]. */
  windFrom = 0;
  windExponent = 0;
  /** Added to the wind at its reference height [m/s]. */
  windEast = 0;
  windNorth = 0;
  /** [K] */
  temperature = 0;
}

/** Fills the hot loop's memory for one draw: its constants, its air and its wind. */
export function setDraw(w: FastWork, drawn: DrawnValues): void {
  const c = w.slots;
  const { model } = w.tables;
  const { rocket, ballast, guide } = model.inputs;
  c[at.HALF_DRAG_AREA] = 0.5 * model.area * drawn.dragScale;
  const frame = airframeWithBallast(
    {
      mass: rocket.mass * drawn.mass,
      balance: rocket.balance + drawn.balance,
      inertia: rocket.inertia * drawn.inertia,
    },
    ballast,
  );
  c[at.FRAME_MASS] = frame.mass;
  c[at.FRAME_BALANCE] = frame.balance;
  c[at.FRAME_INERTIA] = frame.inertia;
  // the guide's direction: the plan's, then turned by small angles about two horizontal axes
  const east = Math.sin(guide.tilt) * Math.sin(guide.toward) + Math.sin(drawn.tiltEast);
  const north = Math.sin(guide.tilt) * Math.cos(guide.toward) + Math.sin(drawn.tiltNorth);
  const flat = east * east + north * north;
  const shrink = flat > 0.99 ? Math.sqrt(0.99 / flat) : 1;
  c[at.GUIDE_EAST] = east * shrink;
  c[at.GUIDE_NORTH] = north * shrink;
  c[at.GUIDE_UP] = Math.sqrt(1 - flat * shrink * shrink);
  fillAir(w, drawn.temperature);
  fillWind(w, drawn);
  setLowShear(w);
}

function fillAir(w: FastWork, change: number): void {
  const { air } = w;
  const { density, soundSpeed, densityPerKelvin, densityPerKelvin2, soundSpeedPerKelvin, soundSpeedPerKelvin2, count } =
    w.tables.air;
  for (let i = 0; i < count; i++) {
    air[2 * i] = density[i]! * (1 + change * (densityPerKelvin[i]! + change * densityPerKelvin2[i]!));
    air[2 * i + 1] =
      1 / (soundSpeed[i]! * (1 + change * (soundSpeedPerKelvin[i]! + change * soundSpeedPerKelvin2[i]!)));
  }
}

/** Shear at the lowest height at which it is taken. */
function setLowShear(w: FastWork): void {
  const { slots: c, wind } = w;
  const place = Math.sqrt(Math.sqrt(lowestShear)) * c[at.WIND_SCALE]!;
  const cell = Math.min(place | 0, w.lastWindCell);
  const perHeight = lowestShear < c[at.WIND_TOP]! ? place / (4 * lowestShear) : 0;
  c[at.LOW_SHEAR_EAST] = (wind[2 * cell + 2]! - wind[2 * cell]!) * perHeight;
  c[at.LOW_SHEAR_NORTH] = (wind[2 * cell + 3]! - wind[2 * cell + 1]!) * perHeight;
}

function fillWind(w: FastWork, drawn: DrawnValues): void {
  const { wind, tables } = w;
  const base = tables.wind;
  // a wind that blows from further clockwise also goes further clockwise
  const cosine = drawn.windSpeed * Math.cos(drawn.windFrom);
  const sine = drawn.windSpeed * Math.sin(drawn.windFrom);
  if (base.kind === "power") {
    const east = base.east * cosine + base.north * sine + drawn.windEast;
    const north = base.north * cosine - base.east * sine + drawn.windNorth;
    const exponent = Math.max(0, base.exponent + drawn.windExponent);
    wind[0] = 0;
    wind[1] = 0;
    for (let i = 1; i <= tables.windCount; i++) {
      const grown = Math.exp(exponent * base.logRatios[i]!);
      wind[2 * i] = east * grown;
      wind[2 * i + 1] = north * grown;
    }
    return;
  }
  for (let i = 0; i <= tables.windCount; i++) {
    wind[2 * i] = base.east[i]! * cosine + base.north[i]! * sine + drawn.windEast;
    wind[2 * i + 1] = base.north[i]! * cosine - base.east[i]! * sine + drawn.windNorth;
  }
}
