import type { StatedFacts } from "@delaywright/engine";
import type { FieldDocument } from "./kinds/field/schema.js";
import { given, siOr } from "./kinds/si.js";
import type { PlanParts } from "./load-plan.js";

/** A quantity, or null for `none`; undefined where nothing is said. */
function orNone(text: string | undefined, dimension: "length" | "mass" | "time"): number | null | undefined {
  return text === "none" ? null : siOr(text, dimension, undefined);
}

/**
 * What the documents of a plan say for the rules: what is left out is not known, `none` is known to be none.
 *
 * @returns in SI units
 */
export function statedFacts(parts: PlanParts): StatedFacts {
  const { plan, flyer, motor, rocket } = parts;
  const { site, weather } = plan.document;
  const field = parts.field?.document;
  const { materials } = rocket.document;
  return {
    ...given("windRead", weather?.wind === undefined && weather?.aloft === undefined ? false : undefined),
    ...given("certification", flyer?.document.certification),
    ...given("age", flyer?.document.age),
    ...given("motorCertified", motor.document.certified === undefined ? undefined : true),
    ...given("metalSponge", motor.document.metalSponge),
    ...given("makerMostLiftOffMass", orNone(motor.document.mostLiftOffMass, "mass")),
    ...given("lightMaterials", materials === undefined ? undefined : materials === "light"),
    ...given("adultInCharge", site?.adultInCharge),
    ...given("fireMeans", site?.fireMeans),
    ...given("daylight", site?.daylight),
    ...given("cloudCover", site?.cloudCover),
    ...given("cloudBase", orNone(site?.cloudBase, "length")),
    ...given("visibility", siOr(site?.visibility, "length", undefined)),
    ...given("peopleDistance", siOr(site?.people, "length", undefined)),
    ...given("controlledAirspace", site?.controlledAirspace ?? field?.controlledAirspace),
    ...given("authorised", site?.authorised),
    ...given("noticeBefore", orNone(site?.noticeGiven, "time")),
    ...given("timeOfDay", clockOf(site?.launchAt)),
    ...given("weatherAge", weatherAge(plan.document.date, weather?.taken, site?.launchAt)),
    ...(field === undefined ? {} : factsOfField(field)),
  };
}

/** A field of which no ceiling, sector or hours are told has none. */
function factsOfField(field: FieldDocument): StatedFacts {
  const { distances, hours } = field;
  return {
    ...(field.ceiling === undefined ? { ceiling: null } : {}),
    ...(field.tiltSector === undefined ? { tiltSector: null } : {}),
    ...given("fieldHours", hours === undefined ? null : hoursOf(hours)),
    ...given("siteSmallest", siOr(field.smallest, "length", undefined)),
    ...given("clearedDiameter", siOr(field.clearedDiameter, "length", undefined)),
    ...given("buildingDistance", orNone(distances?.building, "length")),
    ...given("roadDistance", orNone(distances?.road, "length")),
    ...given("airportDistance", orNone(distances?.airport, "length")),
    ...given("uninvolvedDistance", orNone(distances?.uninvolved, "length")),
  };
}

const DAY = 86_400;
const CLOCK = /^(?:(\d{4}-\d\d-\d\d)[T ]+)?([01]?\d|2[0-3])[:.]([0-5]\d)/;

/** Seconds after midnight of a time of day, with or without its day before it; undefined where the text is none. */
function clockOf(text: string | undefined): number | undefined {
  const match = text === undefined ? null : CLOCK.exec(text.trim());
  return match === null ? undefined : 3600 * Number(match[2]) + 60 * Number(match[3]);
}

/** Age of the weather at the launch [s]; undefined where it cannot be told, or would be read after it. */
function weatherAge(
  day: string | undefined,
  taken: string | undefined,
  launch: string | undefined,
): number | undefined {
  const [from, to] = [clockOf(taken), clockOf(launch)];
  if (from === undefined || to === undefined) return undefined;
  const takenOn = CLOCK.exec(taken?.trim() ?? "")?.[1];
  const days =
    takenOn === undefined ? 0 : day === undefined ? Number.NaN : (Date.parse(day) - Date.parse(takenOn)) / 1000;
  const age = days + to - from;
  return age >= 0 ? age : undefined;
}

const HOURS = /^(\d{1,2})(?:[:.](\d\d))?\s*(?:-|–|to|until|till)\s*(\d{1,2})(?:[:.](\d\d))?$/i;

/** Hours such as `9:00 to 18:00`; undefined where they are said in other words. */
function hoursOf(text: string): { readonly from: number; readonly to: number } | undefined {
  const match = HOURS.exec(text.trim());
  if (match === null) return undefined;
  const [from, to] = [
    3600 * Number(match[1]) + 60 * Number(match[2] ?? 0),
    3600 * Number(match[3]) + 60 * Number(match[4] ?? 0),
  ];
  return from <= DAY && to <= DAY ? { from, to } : undefined;
}
