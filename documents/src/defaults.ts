/**
 * One sigma of every uncertain input where the plan names none.
 *
 * - `dragScale` 0.15: a drag build-up is good to some 15 % before the first logged flight (own default, no source).
 * - `totalImpulse` 0.03: well inside the 6.7 % of the mean that NFPA 1125 allows (memory); 3 % is an own default, no source.
 * - `burnTime` 0.03: as total impulse (own default, no source).
 * - `mass` 0.01: a kitchen scale and what is forgotten on the bench (own default, no source).
 * - `balance` 5 mm: found on a finger or a string (own default, no source).
 * - `guideTilt` 1 deg: a rail set by eye (own default, no source).
 * - `windSpeed` 0.2, `windFrom` 15 deg: between the reading and the flight (own default, no source).
 * - `windExponent` 0.05: between the terrains of the table (own default, no source).
 * - `windFloor` 0.7 m/s: a calm has gusts too (own default, no source).
 * - `temperature` 2 K: a thermometer in the shade of a car (own default, no source).
 * - `delay` 0.75 s or 10 %: half of the batch tolerance of NFPA 1125, ±1.5 s or ±20 % (memory, clause not seen), read as two sigma.
 */
export const defaultSpread = Object.freeze({
  dragScale: 0.15,
  totalImpulse: 0.03,
  burnTime: 0.03,
  mass: 0.01,
  balance: 0.005,
  guideTilt: Math.PI / 180,
  windSpeed: 0.2,
  windFrom: (15 * Math.PI) / 180,
  windExponent: 0.05,
  windFloor: 0.7,
  temperature: 2,
  delay: Object.freeze({ seconds: 0.75, fraction: 0.1 }),
});

/** One sigma of the transverse inertia by how it is known: measured, or guessed from mass and length. Own defaults, no source. */
export const defaultInertiaSpread = Object.freeze({ given: 0.05, swing: 0.05, estimated: 0.25 });

/** Limits of a clean opening and the least odds: own defaults, no source, said openly. */
export const defaultLimits = Object.freeze({ openingSpeed: 20, openingHeight: 100, leastClean: 0.8, leastHolds: 0.99 });

/**
 * Weather and field where none is given.
 *
 * - `measuredAt` 2 m: a hand-held reading; meteorological stations read at 10 m (common practice, no source).
 * - `gradientHeight` 300 m: where a power law stops growing (own default, no source).
 * - `latitude` 45 deg: the middle latitude of WGS 84 gravity.
 */
export const defaultWeather = Object.freeze({
  wind: 0,
  windFrom: 0,
  measuredAt: 2,
  terrain: "open",
  gradientHeight: 300,
  elevation: 0,
  latitude: Math.PI / 4,
} as const);

/** What a rocket has where nothing is said: a painted surface of 20 µm, half a second to line stretch. Own defaults, no source. */
export const defaultRocket = Object.freeze({ roughness: 20e-6, lineStretch: 0.5 });

/** One sigma of a cut's depth with a hand tool, and of one depth reading with a caliper [m]. Own defaults, no source. */
export const defaultDepthError = Object.freeze({ cut: 0.2e-3, reading: 0.1e-3 });
