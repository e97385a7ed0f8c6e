import type { WindowData } from "../answer/window-data.js";
import { amount, decimals, delayWords, glued, holdsPercent, percent } from "./numbers.en.js";

const degrees = 180 / Math.PI;

/** Bounds are said to half a metre a second, never above what was found. */
function bound(wind: number): string {
  const down = Math.floor(2 * wind + 1e-6) / 2;
  return glued(String(Number(down.toFixed(1))), "m/s");
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

/** Up to which wind the odds stay good at one lean, for a column: `5 m/s`, `12 m/s +`, `none`. */
export function edgeCell({ edges, beyond }: Pick<WindowData, "edges" | "beyond">, tilt: number): string {
  const edge = edges[tilt] ?? null;
  if (edge === null) return "none";
  return `${bound(edge)}${beyond[tilt] ? " +" : ""}`;
}

/** A lean of the guide: `upright`, `5 deg`. */
export function tiltWords(tilt: number): string {
  return tilt * degrees < 0.05 ? "upright" : glued(String(Number((tilt * degrees).toFixed(1))), "deg");
}

/** The window in one line: `At 9 s, with the guide upright, still good up to 5 m/s of wind.` */
export function windowSentence(data: WindowData): string {
  const { delay, tilts, edges, beyond, winds, given } = data;
  const row = todaysTilt(data);
  const lean = tiltWords(tilts[row] ?? 0);
  const where = `At ${delayWords(delay)}, with the guide ${lean === "upright" ? lean : `leaning ${lean}`}`;
  const edge = edges[row] ?? null;
  if (edge === null) return `${where}: not good in any wind, not even in a calm.`;
  if (beyond[row]) return `${where}: good in every wind that was tried, up to ${amount(winds.at(-1) ?? 0, "m/s")}.`;
  const today = given.wind.kind === "ground" ? given.wind.speed : null;
  return today !== null && today > edge
    ? `${where}: good up to ${bound(edge)} of wind only, and today it blows ${amount(today, "m/s", 1)}.`
    : `${where}: still good up to ${bound(edge)} of wind.`;
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

/** Do the odds still reach their least at this point, or is it past the edge of its row? */
export function isGood(
  { winds, edges, beyond }: Pick<WindowData, "winds" | "edges" | "beyond">,
  tilt: number,
  wind: number,
): boolean {
  const edge = edges[tilt] ?? null;
  return beyond[tilt] === true || (edge !== null && (winds[wind] ?? 0) <= edge);
}

/** How the map is read. */
export function windowNote({ limits, toward, tilts }: Pick<WindowData, "limits" | "toward" | "tilts">): string {
  const leaning = tilts.some((tilt) => tilt > 0) ? ` The guide leans towards ${amount(toward * degrees, "deg")}.` : "";
  return `Clean openings in percent; * past the edge, where clean is below ${percent(limits.leastClean)} or holds below ${holdsPercent(limits.leastHolds)}. Wind at the height of the reading, growing alike at all heights.${leaning}`;
}

/** On how many flights the map rests. */
export function windowBasis({ draws, seed, model }: Pick<WindowData, "draws" | "seed" | "model">): string {
  return `${draws} draws a point, seed ${seed}, ${model} model.`;
}
