import type { WindowEnd } from "@delaywright/engine";
import type { WindowData } from "../answer/window-data.js";
import { amountParts, type UnitSystem } from "../quantity/systems.js";
import { limitWords, wordsForCheck } from "./checks.en.js";
import { amount, decimals, delayWords, glued, holdsPercent, percent, upperFirst } from "./numbers.en.js";

const degrees = 180 / Math.PI;

/**
 * A wind up to which something is good, to half a metre a second or a whole mile an hour, never above what was found.
 *
 * @param wind [m/s]
 * @example
 * windBound(2.75); // "2.5 m/s"
 * windBound(2.75, "imperial"); // "6 mph"
 */
export function windBound(wind: number, units: UnitSystem = "metric"): string {
  return boundOf(wind, units).words;
}

/** The same as a wind [m/s]: by how much it blows more is told from what was said. */
export function windBoundSaid(wind: number, units: UnitSystem = "metric"): number {
  return boundOf(wind, units).said;
}

function boundOf(wind: number, units: UnitSystem): { readonly words: string; readonly said: number } {
  const { figure, unit } = amountParts(wind, "wind", units, 6);
  const step = units === "metric" ? 0.5 : 1;
  const down = Math.floor(Number(figure) / step + 1e-6) * step;
  return { words: glued(String(Number(down.toFixed(1))), unit), said: down === 0 ? 0 : wind * (down / Number(figure)) };
}

/** Which row of a window is today's lean of the guide. */
export function todaysTilt({ tilts, given }: Pick<WindowData, "tilts" | "given">): number {
  const apart = tilts.map((tilt) => Math.abs(tilt - given.guide.tilt));
  return apart.indexOf(Math.min(...apart));
}

/** Which column is nearest to today's wind; null where it is read at heights. */
export function todaysWind({ winds, given }: Pick<WindowData, "winds" | "given">): number | null {
  if (given.wind.kind !== "ground") return null;
  const { speed } = given.wind;
  const apart = winds.map((wind) => Math.abs(wind - speed));
  return apart.indexOf(Math.min(...apart));
}

/** Up to which wind it stays good at one lean, for a column: `5 m/s`, `12 m/s +`, `none`. */
export function edgeCell({ ends }: Pick<WindowData, "ends">, tilt: number): string {
  const end = ends[tilt];
  if (end === undefined || end.wind === null) return "none";
  return `${windBound(end.wind)}${end.beyond ? " +" : ""}`;
}

/**
 * What ends it, as it is past the edge; empty where nothing does.
 *
 * @example
 * endWords(end, limits); // "clean is below 80 %", "a check says stop: opened landings outside the field, most 50 %"
 */
export function endWords(
  { by, check }: Pick<WindowEnd, "by" | "check">,
  { leastClean, leastHolds }: Pick<WindowData["limits"], "leastClean" | "leastHolds">,
  units: UnitSystem = "metric",
): string {
  if (by === "clean") return `clean is below ${percent(leastClean)}`;
  if (by === "holds") return `holds is below ${holdsPercent(leastHolds)}`;
  if (by === "fires-first") return "the back-up charge fires first too often";
  if (check === null) return "";
  const limit = limitWords(check, units);
  return `a check says stop: ${wordsForCheck(check.code, "stop").title}${limit === "" ? "" : `, ${limit}`}`;
}

/** A lean of the guide: `upright`, `5 deg`. */
export function tiltWords(tilt: number): string {
  return tilt * degrees < 0.05 ? "upright" : glued(String(Number((tilt * degrees).toFixed(1))), "deg");
}

/** The window in one line: `At 9 s, with the guide upright: still good up to 5 m/s of wind. Past it clean is below 80 %.` */
export function windowSentence(data: WindowData): string {
  const { delay, tilts, ends, winds, given, limits } = data;
  const row = todaysTilt(data);
  const lean = tiltWords(tilts[row] ?? 0);
  const where = `At ${delayWords(delay)}, with the guide ${lean === "upright" ? lean : `leaning ${lean}`}`;
  const end = ends[row];
  if (end?.beyond) return `${where}: good in every wind that was tried, up to ${amount(winds.at(-1) ?? 0, "m/s")}.`;
  const why = end === undefined ? "" : endWords(end, limits);
  if (end === undefined || end.wind === null)
    return `${where}: not good in any wind, not even in a calm. There ${why}.`;
  const today = given.wind.kind === "ground" ? given.wind.speed : null;
  const upTo = windBound(end.wind);
  return today !== null && today > end.wind
    ? `${where}: good up to ${upTo} of wind only, and today it blows ${amount(today, "m/s", 1)}. Past it ${why}.`
    : `${where}: still good up to ${upTo} of wind. Past it ${why}.`;
}

/** Where today stands in the window. */
export function windowTodaySentence(data: WindowData): string {
  const { given, clean, holds, winds } = data;
  const [row, column] = [todaysTilt(data), todaysWind(data)];
  if (given.wind.kind !== "ground" || column === null)
    return `Today's wind is read at ${given.wind.kind === "aloft" ? given.wind.heights : 0} heights: all of them are scaled alike.`;
  const { speed, from, height } = given.wind;
  const wind =
    from === null
      ? "calm"
      : `wind ${amount(speed, "m/s", 1)} from ${amount(from * degrees, "deg")} at ${glued(String(Number(decimals(height, 1))), "m")}`;
  const odds = `${percent(clean[row]?.[column] ?? 0)} clean, holds ${holdsPercent(holds[row]?.[column] ?? 0)}`;
  return `Today: ${wind}, guide ${tiltWords(given.guide.tilt)}; nearest in the map, in brackets: ${amount(winds[column] ?? 0, "m/s")}, ${odds}.`;
}

/** Is it still good at this point, or is it past the edge of its row? */
export function isGood({ winds, ends }: Pick<WindowData, "winds" | "ends">, tilt: number, wind: number): boolean {
  const end = ends[tilt];
  return end !== undefined && (end.beyond || (end.wind !== null && (winds[wind] ?? 0) <= end.wind));
}

/** Which leans a check ends before the odds do, a line for each check: `Upright, 2.5 deg: a check says stop: …` */
export function windowStops({ ends, tilts, limits }: Pick<WindowData, "ends" | "tilts" | "limits">): string[] {
  const leans = new Map<string, string[]>();
  ends.forEach((end, i) => {
    if (end.by !== "rule") return;
    const words = endWords(end, limits);
    leans.set(words, [...(leans.get(words) ?? []), tiltWords(tilts[i] ?? 0)]);
  });
  return [...leans].map(([words, at]) => `${upperFirst(at.join(", "))}: ${words}.`);
}

/** How the map is read. */
export function windowNote({ limits, toward, tilts }: Pick<WindowData, "limits" | "toward" | "tilts">): string {
  const leaning = tilts.some((tilt) => tilt > 0) ? ` The guide leans towards ${amount(toward * degrees, "deg")}.` : "";
  return `Clean openings in percent; * past the edge, where clean is below ${percent(limits.leastClean)}, holds below ${holdsPercent(limits.leastHolds)}, or a check of wind or lean says stop. Wind at the height of the reading, growing alike at all heights.${leaning}`;
}

/** On how many flights the map rests. */
export function windowBasis({ draws, seed, model }: Pick<WindowData, "draws" | "seed" | "model">): string {
  return `${draws} draws a point, seed ${seed}, ${model} model.`;
}
