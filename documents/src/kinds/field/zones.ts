import { si } from "../si.js";
import type { FieldDocument } from "./schema.js";

/** A place on the field, east and north of the pad [m]. */
export interface Place {
  readonly east: number;
  readonly north: number;
}

/** The field's edge. */
export type Boundary =
  | { readonly kind: "circle"; readonly east: number; readonly north: number; readonly radius: number }
  | { readonly kind: "polygon"; readonly points: readonly Place[] };

/** What is drawn of a field: everything east and north of the pad [m]. */
export interface FieldZones {
  /** Where the field's own origin lies. */
  readonly origin: Place;
  readonly boundary: Boundary | null;
  /** Where nothing may come down. */
  readonly keepOff: readonly { readonly name: string; readonly points: readonly Place[] }[];
  /** Lines along which people stand. */
  readonly people: readonly { readonly name: string; readonly points: readonly Place[] }[];
}

/**
 * The outlines of a field, relative to its pad.
 *
 * @param field as its schema accepted it
 * @returns places east and north of the pad [m]
 * @example
 * fieldZones({ ...field, pad: { east: "10 m", north: "0 m" } }).origin; // { east: -10, north: 0 }
 */
export function fieldZones(field: FieldDocument): FieldZones {
  const pad = { east: si(field.pad?.east ?? "0 m", "length"), north: si(field.pad?.north ?? "0 m", "length") };
  const place = ([east, north]: readonly [string, string]): Place => {
    return { east: si(east, "length") - pad.east, north: si(north, "length") - pad.north };
  };
  const origin = place(["0 m", "0 m"]);
  const zones = (list: readonly { name?: string | undefined; points: [string, string][] }[] | undefined) =>
    (list ?? []).map(({ name, points }) => ({ name: name ?? "", points: points.map(place) }));
  return {
    origin,
    boundary: boundaryOf(field, origin, place),
    keepOff: zones(field.keepOff),
    people: zones(field.people),
  };
}

function boundaryOf(
  { boundary }: FieldDocument,
  origin: Place,
  place: (point: readonly [string, string]) => Place,
): Boundary | null {
  if (boundary === undefined) return null;
  return boundary.shape === "circle"
    ? { kind: "circle", ...origin, radius: si(boundary.radius, "length") }
    : { kind: "polygon", points: boundary.points.map(place) };
}
