import {
  type FieldAir,
  type InertiaSource,
  type Limits,
  noSpread,
  type Spread,
  standardAirAt,
  terrainExponents,
  type WeatherRange,
  type WindProfile,
  windVelocity,
} from "@delaywright/engine";
import { defaultInertiaSpread, defaultLimits, defaultSpread, defaultWeather } from "../../defaults.js";
import { given, si, siOr } from "../si.js";
import type { PlanDocument } from "./schema.js";

/** Pressure of the standard atmosphere at sea level [Pa]. */
const SEA_LEVEL = 101_325;

/** The air as it was read; pressure at sea level is reduced to the pad as in the standard atmosphere. */
export function airToEngine(
  weather: PlanDocument["weather"],
  place: { elevation: number; latitude: number },
): FieldAir {
  const atSeaLevel = siOr(weather?.seaLevelPressure, "pressure", undefined);
  const reduced =
    atSeaLevel === undefined ? undefined : (atSeaLevel * standardAirAt(place.elevation).pressure) / SEA_LEVEL;
  return {
    ...place,
    ...given("temperature", siOr(weather?.temperature, "temperature", undefined)),
    ...given("pressure", siOr(weather?.pressure, "pressure", reduced)),
    ...given("humidity", weather?.humidity),
  };
}

/** The wind over height, where the air goes. */
export function windToEngine(weather: PlanDocument["weather"]): WindProfile {
  const rows = weather?.aloft?.map(({ height, wind, from }) => {
    const [east, north] = windVelocity(si(wind, "speed"), si(from, "angle"));
    return { height: si(height, "length"), east: east + 0, north: north + 0 };
  });
  if (rows !== undefined) {
    return {
      kind: "aloft",
      heights: rows.map((row) => row.height),
      east: rows.map((row) => row.east),
      north: rows.map((row) => row.north),
    };
  }
  const speed = siOr(weather?.wind, "speed", defaultWeather.wind);
  const [east, north] = windVelocity(speed, siOr(weather?.windFrom, "angle", defaultWeather.windFrom));
  const { gradientHeight } = weather ?? {};
  return {
    kind: "power",
    east: east + 0,
    north: north + 0,
    referenceHeight: siOr(weather?.measuredAt, "length", defaultWeather.measuredAt),
    exponent: terrainExponents[weather?.terrain ?? defaultWeather.terrain],
    gradientHeight:
      gradientHeight === "none"
        ? Number.POSITIVE_INFINITY
        : siOr(gradientHeight, "length", defaultWeather.gradientHeight),
  };
}

/** Limits of a clean opening and the least odds. */
export function limitsToEngine(limits: PlanDocument["limits"]): Limits {
  return {
    openingSpeed: siOr(limits?.openingSpeed, "speed", defaultLimits.openingSpeed),
    openingHeight: siOr(limits?.openingHeight, "length", defaultLimits.openingHeight),
    leastClean: limits?.leastClean ?? defaultLimits.leastClean,
    leastHolds: limits?.leastHolds ?? defaultLimits.leastHolds,
  };
}

/** One sigma of every uncertain input; `"none"` makes all of them zero. */
export function spreadToEngine(spread: PlanDocument["spread"], inertiaSource: InertiaSource): Spread {
  if (spread === "none") return noSpread;
  const typed = spread ?? {};
  return {
    dragScale: typed.dragScale ?? defaultSpread.dragScale,
    totalImpulse: typed.totalImpulse ?? defaultSpread.totalImpulse,
    burnTime: typed.burnTime ?? defaultSpread.burnTime,
    mass: typed.mass ?? defaultSpread.mass,
    inertia: typed.inertia ?? defaultInertiaSpread[inertiaSource],
    balance: siOr(typed.balance, "length", defaultSpread.balance),
    guideTilt: siOr(typed.guideTilt, "angle", defaultSpread.guideTilt),
    windSpeed: typed.windSpeed ?? defaultSpread.windSpeed,
    windFrom: siOr(typed.windFrom, "angle", defaultSpread.windFrom),
    windExponent: typed.windExponent ?? defaultSpread.windExponent,
    windFloor: siOr(typed.windFloor, "speed", defaultSpread.windFloor),
    temperature: siOr(typed.temperature, "temperatureDifference", defaultSpread.temperature),
    delay: {
      seconds: siOr(typed.delay?.seconds, "time", defaultSpread.delay.seconds),
      fraction: typed.delay?.fraction ?? defaultSpread.delay.fraction,
    },
    ...given("cutDepth", siOr(typed.cutDepth, "length", undefined)),
  };
}

/** The range of weather that a cut at home must leave room for; what is left out stays as the plan's weather has it. */
export function weatherRangeToEngine(
  range: PlanDocument["weatherRange"],
  today: { readonly wind: number; readonly temperature: number },
): WeatherRange | undefined {
  if (range === undefined) return undefined;
  const { wind, temperature } = range;
  return {
    wind: wind === undefined ? [today.wind, today.wind] : [si(wind[0], "speed"), si(wind[1], "speed")],
    temperature:
      temperature === undefined
        ? [today.temperature, today.temperature]
        : [si(temperature[0], "temperature"), si(temperature[1], "temperature")],
  };
}
