import type { FieldZones, UnitSystem } from "@delaywright/documents";
import { amount, percent } from "./figures.js";
import {
  drawable,
  ellipsePoints,
  holdsPad,
  type MapEllipse,
  type MapPlace,
  towards,
  towardsInWords,
} from "./map-view.js";

/** Landings of the sampled flights, east and north of the pad [m]; columns of one length. */
export interface MapLandings {
  readonly east: ArrayLike<number>;
  readonly north: ArrayLike<number>;
  /** Null without spread. */
  readonly ellipse50: MapEllipse | null;
  readonly ellipse95: MapEllipse | null;
  /** Share of the landings, 0…1, outside the boundary; null without one. */
  readonly outside?: number | null;
  /** Share inside each keep-off zone, in the order of the field's zones. */
  readonly keepOff?: ArrayLike<number>;
}

/** Landings as far as they can be drawn. */
export interface MapCloud {
  readonly points: readonly MapPlace[];
  readonly inner: MapEllipse | null;
  readonly outer: MapEllipse | null;
  /** Where most come down; null where nothing does. */
  readonly middle: MapPlace | null;
}

/** What can be drawn of landings: finite points, ellipses that are no points. */
export function cloudOf(landings: MapLandings | null): MapCloud {
  if (landings === null) return { points: [], inner: null, outer: null, middle: null };
  const points = Array.from(landings.east)
    .map((east, i) => ({ east, north: landings.north[i] ?? Number.NaN }))
    .filter(({ east, north }) => Number.isFinite(east) && Number.isFinite(north));
  const inner = drawable(landings.ellipse50) ? landings.ellipse50 : null;
  const outer = drawable(landings.ellipse95) ? landings.ellipse95 : null;
  const count = points.length;
  const mean =
    count === 0
      ? null
      : points.reduce((sum, { east, north }) => ({ east: sum.east + east / count, north: sum.north + north / count }), {
          east: 0,
          north: 0,
        });
  return { points, inner, outer, middle: outer ?? inner ?? mean };
}

const distance = ({ east, north }: MapPlace): number => Math.hypot(east, north);

/** How far most of a cloud reaches from the pad [m], and whether it lies on one side of it. */
export function reachOf({
  outer,
  points,
  middle,
}: MapCloud): { readonly far: number; readonly oneSide: boolean } | null {
  if (middle === null) return null;
  const edge = outer === null ? points : ellipsePoints(outer);
  const far = Math.max(0, ...edge.map(distance));
  return { far, oneSide: outer !== null && !holdsPad(outer) && far > 1 };
}

/** A distance as flyers say it: to ten metres or feet from a hundred on. */
export function roundly(metres: number, units: UnitSystem): string {
  const unit = units === "metric" ? 1 : 0.3048;
  const count = metres / unit;
  const step = count >= 1000 ? 50 : count >= 100 ? 10 : 1;
  return amount(Math.round(count / step) * step * unit, "distance", units);
}

/** The label of the cloud of unopened landings: it says how far they reach. */
export function unopenedWords(cloud: MapCloud, units: UnitSystem): string {
  const reach = reachOf(cloud);
  if (reach === null) return "";
  if (cloud.outer === null) return middleWords(cloud, units);
  const far = roundly(reach.far, units);
  return reach.oneSide && cloud.middle !== null ? `within ${far} ${towards(cloud.middle)}` : `within ${far} all round`;
}

/** The label of a cloud by its middle: `180 m SE`. */
export function middleWords({ middle }: MapCloud, units: UnitSystem): string {
  if (middle === null) return "";
  const far = distance(middle);
  return far < 5 ? "at the pad" : `${roundly(far, units)} ${towards(middle)}`;
}

/** What of the landings comes down where nothing may: for a short line. Empty where nothing is known. */
export function keepOffWords(landings: MapLandings | null, zones: FieldZones | null): string {
  if (landings?.keepOff === undefined || zones === null || zones.keepOff.length === 0) return "";
  const hit = zones.keepOff
    .map(({ name }, i) => ({ name, share: landings.keepOff?.[i] ?? 0 }))
    .filter(({ share }) => share > 0);
  if (hit.length === 0) return `none on ${zones.keepOff.map(({ name }) => name).join(", ")}`;
  return hit.map(({ name, share }) => `${percent(share)} on ${name}`).join(", ");
}

function cloudSentence(
  which: string,
  landings: MapLandings | null,
  zones: FieldZones | null,
  units: UnitSystem,
): string {
  const cloud = cloudOf(landings);
  const { inner, outer, middle } = cloud;
  if (middle === null) return `${which}: no landing is known.`;
  const far = distance(middle);
  const where = far < 5 ? "at the pad" : `${roundly(far, units)} ${towardsInWords(middle)} of the pad`;
  const parts: string[] = [];
  if (outer === null) parts.push(`${which}, it comes down ${where}.`);
  else {
    const size = (e: MapEllipse): string => `${roundly(2 * e.major, units)} by ${roundly(2 * e.minor, units)}`;
    const half = inner === null ? "" : `half land within an ellipse of ${size(inner)} and `;
    const all = `${which}, ${half}19 in 20 within one of ${size(outer)}, its middle ${where}`;
    parts.push(`${all}; the farthest edge is ${roundly(reachOf(cloud)?.far ?? 0, units)} from the pad.`);
  }
  const kept = keepOffWords(landings, zones);
  if (kept !== "") parts.push(`Of these, ${kept}.`);
  const outside = landings?.outside ?? null;
  if (outside !== null)
    parts.push(outside > 0 ? `${percent(outside)} come down outside the field.` : "None comes down outside the field.");
  return parts.join(" ");
}

function fieldSentence(zones: FieldZones | null, units: UnitSystem): string {
  if (zones === null) return "No field is given: rings show the distance from the pad.";
  const parts: string[] = [];
  if (zones.boundary?.kind === "circle")
    parts.push(`The field is a circle of ${roundly(zones.boundary.radius, units)} about its middle.`);
  else if (zones.boundary !== null) parts.push(`The field's edge has ${zones.boundary.points.length} corners.`);
  const lies = (list: FieldZones["keepOff"], verb: string, unnamed: string): void => {
    for (const { name, points } of list) {
      const count = Math.max(1, points.length);
      const middle = points.reduce(
        (sum, p) => ({ east: sum.east + p.east / count, north: sum.north + p.north / count }),
        { east: 0, north: 0 },
      );
      parts.push(
        `${name === "" ? unnamed : name}: ${verb} ${roundly(distance(middle), units)} ${towardsInWords(middle)} of the pad.`,
      );
    }
  };
  lies(zones.keepOff, "nothing may come down there,", "A zone");
  lies(zones.people, "people stand", "People");
  return parts.join(" ");
}

/** Where the wind blows from, for a sentence and for a label. */
export function windWords(
  wind: { readonly speed: number; readonly from: number | null },
  units: UnitSystem,
): readonly [string, string] {
  const from = wind.from === null ? "calm" : `from ${amount(wind.from, "angle", units)}`;
  return [`wind ${amount(wind.speed, "wind", units)}`, from];
}

/** The whole map in sentences. */
export function mapSentences(
  opened: MapLandings | null,
  unopened: MapLandings | null,
  zones: FieldZones | null,
  wind: { readonly speed: number; readonly from: number | null } | null,
  units: UnitSystem,
): string {
  const blows = wind === null ? "" : `${windWords(wind, units).join(", ").replace("wind ", "Wind ")}.`;
  return [
    "North is up.",
    blows,
    cloudSentence("Unopened", unopened, zones, units),
    cloudSentence("Opened", opened, zones, units),
    fieldSentence(zones, units),
  ]
    .filter((part) => part !== "")
    .join(" ");
}
