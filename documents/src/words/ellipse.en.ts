import type { UnitSystem } from "../quantity/systems.js";
import { decimals, figureWords, glued, placeWords } from "./numbers.en.js";

/** An ellipse on the ground: its middle east and north of the pad [m], half its length and width [m], azimuth of its length [rad]. */
interface Ellipse {
  readonly east: number;
  readonly north: number;
  readonly major: number;
  readonly minor: number;
  readonly azimuth: number;
}

/** `an ellipse 120 m long and 60 m wide, its length along 60 deg, its middle 40 m east and 20 m north of the pad`. */
export function ellipseWords({ east, north, major, minor, azimuth }: Ellipse, units: UnitSystem = "metric"): string {
  const along = ((((azimuth * 180) / Math.PI) % 180) + 180) % 180;
  const size = `${figureWords(2 * major, "distance", units)} long and ${figureWords(2 * minor, "distance", units)} wide`;
  return `an ellipse ${size}, its length along ${glued(decimals(along, 0), "deg")}, its middle ${placeWords(east, north, units)}`;
}
