import type { FieldLimits } from "@delaywright/engine";
import { defaultWeather } from "../../defaults.js";
import { given, si, siOr } from "../si.js";
import type { FieldDocument } from "./schema.js";
import { fieldZones } from "./zones.js";

/** Where the field lies: without one at sea level in the middle latitudes. */
export function placeOf(field: FieldDocument | undefined): { elevation: number; latitude: number } {
  return {
    elevation: siOr(field?.elevation, "length", defaultWeather.elevation),
    latitude: siOr(field?.latitude, "angle", defaultWeather.latitude),
  };
}

/** The field's ceiling above the pad, its outlines, and the sector towards which the guide may lean. */
export function fieldLimits(field: FieldDocument | undefined): FieldLimits {
  if (field === undefined) return {};
  const { ceiling, tiltSector } = field;
  const height = typeof ceiling === "object" ? ceiling.height : ceiling;
  const base = typeof ceiling === "object" && ceiling.above === "sea level" ? si(field.elevation, "length") : 0;
  const { boundary, keepOff, people } = fieldZones(field);
  return {
    ...given("boundary", boundary ?? undefined),
    keepOff: keepOff.map(({ points }) => ({ kind: "polygon", points })),
    ...(people.length === 0 ? {} : { people: people.map(({ points }) => points) }),
    ...given("ceiling", height === undefined ? undefined : si(height, "length") - base),
    ...given(
      "tiltSector",
      tiltSector === undefined ? undefined : { from: si(tiltSector.from, "angle"), to: si(tiltSector.to, "angle") },
    ),
  };
}
