/** A place east and north of the pad [m]. */
export interface MapPlace {
  readonly east: number;
  readonly north: number;
}

/** An ellipse: its middle, half axes [m], and the azimuth of the longer one [rad]. */
export interface MapEllipse extends MapPlace {
  readonly major: number;
  readonly minor: number;
  readonly azimuth: number;
}

/** Where places of the field come to lie in a picture: north up, one scale both ways. */
export interface MapView {
  readonly width: number;
  readonly height: number;
  /** [px/m] */
  readonly pixels: number;
  readonly x: (east: number) => number;
  readonly y: (north: number) => number;
}

/** Room kept free at the picture's edges [px]. */
export interface Margins {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Nothing is drawn larger than this about the pad [m], however little there is to see. */
const LEAST_REACH = 20;

const finite = ({ east, north }: MapPlace): boolean => Number.isFinite(east) && Number.isFinite(north);

/**
 * A view that holds all places, as large as the margins allow.
 *
 * @param places what must be seen; ones that are not finite are left out
 * @param width of the picture [px]
 * @param height of the picture [px]
 * @example
 * mapView([{ east: -400, north: -400 }, { east: 400, north: 400 }], 400, 400, none).pixels; // 0.5
 */
export function mapView(places: readonly MapPlace[], width: number, height: number, margins: Margins): MapView {
  const seen = places.filter(finite);
  const span = (values: readonly number[]): { middle: number; half: number } => {
    let [least, most] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
    for (const value of values) [least, most] = [Math.min(least, value), Math.max(most, value)];
    if (least > most) return { middle: 0, half: LEAST_REACH };
    return { middle: (least + most) / 2, half: Math.max(LEAST_REACH, (most - least) / 2) };
  };
  const across = span(seen.map((place) => place.east));
  const along = span(seen.map((place) => place.north));
  const roomX = Math.max(1, width - margins.left - margins.right);
  const roomY = Math.max(1, height - margins.top - margins.bottom);
  const pixels = Math.min(roomX / (2 * across.half), roomY / (2 * along.half));
  const middleX = margins.left + roomX / 2;
  const middleY = margins.top + roomY / 2;
  return {
    width,
    height,
    pixels,
    x: (east) => middleX + (east - across.middle) * pixels,
    y: (north) => middleY - (north - along.middle) * pixels,
  };
}

/**
 * Points along an ellipse, clockwise from the end of its longer axis.
 *
 * @example
 * ellipsePoints({ east: 0, north: 0, major: 2, minor: 1, azimuth: 0 })[0]; // { east: 0, north: 2 }
 */
export function ellipsePoints({ east, north, major, minor, azimuth }: MapEllipse, count = 64): readonly MapPlace[] {
  const [sine, cosine] = [Math.sin(azimuth), Math.cos(azimuth)];
  return Array.from({ length: count }, (_, i) => {
    const turn = (2 * Math.PI * i) / count;
    const [along, across] = [major * Math.cos(turn), minor * Math.sin(turn)];
    return { east: east + along * sine + across * cosine, north: north + along * cosine - across * sine };
  });
}

/** An ellipse that can be drawn: finite, and not a point. */
export function drawable(ellipse: MapEllipse | null | undefined): ellipse is MapEllipse {
  return (
    ellipse !== null &&
    ellipse !== undefined &&
    finite(ellipse) &&
    Number.isFinite(ellipse.azimuth) &&
    Number.isFinite(ellipse.major) &&
    ellipse.major > 0 &&
    ellipse.minor >= 0
  );
}

/** The corners of the square around a circle. */
export function aroundCircle(middle: MapPlace, radius: number): readonly MapPlace[] {
  return [
    { east: middle.east - radius, north: middle.north - radius },
    { east: middle.east + radius, north: middle.north + radius },
  ];
}

/**
 * The largest 1, 2 or 5 times a power of ten that is not above a value.
 *
 * @param value > 0
 * @example
 * niceBelow(379); // 200
 */
export function niceBelow(value: number): number {
  if (!(value > 0) || !Number.isFinite(value)) return 1;
  const power = 10 ** Math.floor(Math.log10(value) + 1e-9);
  const lead = value / power;
  return (lead >= 5 - 1e-9 ? 5 : lead >= 2 - 1e-9 ? 2 : 1) * power;
}

/**
 * Length of the scale bar.
 *
 * @param pixels scale [px/m]
 * @param room most that the bar may take [px]
 * @param unit length of the unit it is written in [m]: 1 or 0.3048
 * @returns number of units, and the bar's length [px]
 * @example
 * scaleBar(0.625, 80, 1); // { units: 100, length: 62.5 }
 */
export function scaleBar(
  pixels: number,
  room: number,
  unit: number,
): { readonly units: number; readonly length: number } {
  const units = niceBelow(room / (pixels * unit));
  return { units, length: units * unit * pixels };
}

/** Points as the data of a path. */
export function pathOf(view: MapView, places: readonly MapPlace[], closed: boolean): string {
  const path = places
    .filter(finite)
    .map(({ east, north }, i) => `${i === 0 ? "M" : "L"}${view.x(east).toFixed(1)} ${view.y(north).toFixed(1)}`)
    .join("");
  return closed && path !== "" ? `${path}Z` : path;
}

/** The middle of an outline: the mean of its corners. */
export function middleOf(places: readonly MapPlace[]): MapPlace {
  const count = Math.max(1, places.length);
  return {
    east: places.reduce((sum, place) => sum + place.east, 0) / count,
    north: places.reduce((sum, place) => sum + place.north, 0) / count,
  };
}

const shortPoints = ["N", "NE", "E", "SE", "S", "SW", "W", "NW"] as const;
const longPoints = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"] as const;

/** Which of the eight points of the compass a place lies towards. */
function pointOf({ east, north }: MapPlace): number {
  return ((Math.round((Math.atan2(east, north) * 4) / Math.PI) % 8) + 8) % 8;
}

/** Short for a label: `NW`. */
export function towards(place: MapPlace): string {
  return shortPoints[pointOf(place)] ?? "";
}

/** Long for a sentence: `north-west`. */
export function towardsInWords(place: MapPlace): string {
  return longPoints[pointOf(place)] ?? "";
}

/** Is the pad, at the origin, inside an ellipse? */
export function holdsPad({ east, north, major, minor, azimuth }: MapEllipse): boolean {
  const along = -(east * Math.sin(azimuth) + north * Math.cos(azimuth));
  const across = -(east * Math.cos(azimuth) - north * Math.sin(azimuth));
  if (minor <= 0 || major <= 0) return false;
  return (along / major) ** 2 + (across / minor) ** 2 <= 1;
}
