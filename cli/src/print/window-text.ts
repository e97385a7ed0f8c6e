import {
  cautions,
  edgeCell,
  isGood,
  percentCell,
  tiltWords,
  todaysTilt,
  todaysWind,
  type WindowData,
  windowBasis,
  windowNote,
  windowSentence,
  windowStops,
  windowTodaySentence,
} from "@delaywright/documents";
import { styleFor } from "./style.js";
import { type Column, table } from "./table.js";
import { wrap } from "./wrap.js";

function cellOf(data: WindowData, tilt: number, wind: number): string {
  const cell = `${percentCell(data.clean[tilt]?.[wind] ?? 0)}${isGood(data, tilt, wind) ? " " : "*"}`;
  return tilt === todaysTilt(data) && wind === todaysWind(data) ? `[${cell.trim()}]` : cell;
}

/** A weather window for a person: one line, where today stands, then the map. */
export function windowText(data: WindowData, colour: boolean): string {
  const style = styleFor(colour);
  const { winds, tilts } = data;
  const columns: Column[] = [
    { head: "  guide, and\n  wind in m/s", align: "left" },
    ...winds.map((wind) => ({ head: String(wind) })),
    { head: "good\nup to" },
  ];
  const rows = tilts.map((tilt, i) => [
    `${i === todaysTilt(data) ? "> " : "  "}${tiltWords(tilt).replaceAll("\u00a0", " ")}`,
    ...winds.map((_, k) => cellOf(data, i, k)),
    edgeCell(data, i).replaceAll("\u00a0", " "),
  ]);
  const map = [
    style.strong("Odds over wind and lean of the guide"),
    table(columns, rows),
    wrap(windowNote(data), "  "),
    ...windowStops(data).map((line) => wrap(line, "  ")),
  ];
  const sections = [
    `${style.strong(wrap(windowSentence(data)))}\n${wrap(windowTodaySentence(data))}`,
    map.join("\n"),
    wrap(windowBasis(data)),
    cautions.authority.map((line) => wrap(line)).join("\n"),
  ];
  return `${sections.join("\n\n")}\n`;
}
