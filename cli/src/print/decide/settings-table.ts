import {
  cleanAndHoldsSentence,
  type DecisionData,
  decimals,
  delayColumn,
  holdsCell,
  howCell,
  openingColumnsNote,
  percentCell,
  type SettingData,
} from "@delaywright/documents";
import { type Column, table } from "../table.js";
import { wrap } from "../wrap.js";

/** More settings than this are too many to read. */
const MOST_SHOWN = 12;
/** So many on either side of the best are shown then. */
const AROUND = 5;
const HOW_WIDTH = 19;

const columns: readonly Column[] = [
  { head: "", align: "left" },
  { head: "delay\ns" },
  { head: "out\ns" },
  { head: "how", align: "left" },
  { head: "clean\n%" },
  { head: "early\nfast" },
  { head: "late\nfast" },
  { head: "lean\nfast" },
  { head: "too\nlow" },
  { head: "on the\nground" },
  { head: "holds\n%" },
  { head: "open below\nm/s" },
  { head: "above\nm" },
];

function nameLines(text: string): string {
  const lines: string[] = [""];
  for (const word of text.replaceAll("\u00a0", " ").split(" ")) {
    const last = lines.at(-1) ?? "";
    if (last !== "" && last.length + 1 + word.length > HOW_WIDTH) lines.push(cutShort(word));
    else lines[lines.length - 1] = cutShort(last === "" ? word : `${last} ${word}`);
  }
  return lines.join("\n");
}

function cutShort(text: string): string {
  return text.length > HOW_WIDTH ? `${text.slice(0, HOW_WIDTH - 1)}…` : text;
}

function row(
  setting: SettingData,
  mark: string,
  delay: string,
  removed: string,
  removedDepth: number | null,
): string[] {
  const { odds, openingSpeed, openingHeight } = setting;
  const outcomes = [odds.clean, odds.earlyFast, odds.lateFast, odds.leanFast, odds.low, odds.grounded];
  return [
    mark,
    delay,
    removed,
    nameLines(howCell(setting, removedDepth)),
    ...outcomes.map(percentCell),
    holdsCell(odds.holds),
    openingSpeed.p50 === null || openingSpeed.p90 === null
      ? "-"
      : `${decimals(openingSpeed.p50, 0)} / ${String(Math.ceil(openingSpeed.p90)).padStart(2)}`,
    openingHeight.p10 === null ? "-" : decimals(Math.floor(openingHeight.p10), 0),
  ];
}

/** Which settings are shown: all, or those around the best and the flyer's own. */
function shownOf(settings: readonly SettingData[], best: number, own: number): readonly number[] {
  const all = settings.map((_, i) => i);
  if (all.length <= MOST_SHOWN) return all;
  return all.filter((i) => Math.abs(i - best) <= AROUND || i === own);
}

/** Every setting with its odds; of very many, those around the best. */
export function settingsTable(data: DecisionData): string | null {
  const { settings, toCut, choice, given } = data;
  if (settings.length === 0) return null;
  const at = (delay: number | undefined): number =>
    settings.findIndex((s) => delay !== undefined && Math.abs(s.delay - delay) < 1e-6);
  const [best, own] = [at(toCut?.delay), at(choice?.setting.delay)];
  const shown = shownOf(settings, best, own);
  const listed = shown.map((i) => settings[i] as SettingData);
  const delays = delayColumn(listed.map((setting) => setting.delay));
  const removals = delayColumn(listed.map((setting) => setting.removed));
  const mark = (i: number): string => (i === best ? ">" : i === own ? "*" : "");
  const rows = listed.map((setting, k) =>
    row(setting, mark(shown[k] ?? -1), delays[k] ?? "", removals[k] ?? "", given.removedDepth),
  );
  const notes = [
    wrap(openingColumnsNote, "  "),
    wrap(cleanAndHoldsSentence(data), "  "),
    ...(own >= 0 && own !== best ? [wrap("> the delay to cut, * your own choice", "  ")] : []),
    ...(shown.length < settings.length
      ? [wrap(`${settings.length - shown.length} more settings are left out here; --json has them all.`, "  ")]
      : []),
  ];
  return ["Odds of every delay that can be made, in percent", table(columns, rows, ""), ...notes].join("\n");
}
