import {
  amount,
  cautions,
  decimals,
  delayColumn,
  delayWords,
  depthWords,
  fractionOfInch,
  glued,
  howCell,
  kindOfCut,
  takeOutWords,
} from "@delaywright/documents";
import type { CutPlan, ReadDelay } from "@delaywright/engine";
import type { PassedLimit, Wanted } from "./answer.js";
import { table } from "./table.js";
import { bullet, wrap } from "./wrap.js";

const heads = [
  { head: "delay s" },
  { head: "out s" },
  { head: "how", align: "left" as const },
  { head: "depth mm" },
  { head: "in", align: "left" as const },
];

const before = ["Before you cut", ...cautions.cutting.map(bullet), ...cautions.authority.map(bullet)].join("\n");

function row(setting: CutPlan, delay: string, removed: string): string[] {
  const { depth } = setting;
  const inches = depth === null ? "" : fractionOfInch(depth).replace(/ in$/, "");
  const how = howCell(setting).replaceAll("\u00a0", " ");
  return [
    delay,
    removed,
    how.length > 40 ? `${how.slice(0, 39)}…` : how,
    depth === null ? "" : decimals(1000 * depth, 1),
    inches,
  ];
}

function wantedWords({ delay, setting, longer, shorter }: Wanted): string {
  if (setting !== null) {
    return kindOfCut(setting) === "uncut"
      ? `${delayWords(delay)} is the uncut element: no cut.`
      : `Cut to ${delayWords(delay)}: ${takeOutWords(setting)}.`;
  }
  const near = [longer, shorter].filter((each) => each !== null);
  const words = near.map((each) =>
    kindOfCut(each) === "uncut"
      ? `${delayWords(each.delay)} (no cut)`
      : `${delayWords(each.delay)} (${takeOutWords(each)})`,
  );
  const nearest = words.length === 0 ? "" : ` Nearest that it makes: ${words.join(" and ")}.`;
  return `This tool does not make ${delayWords(delay)} of this element.${nearest}`;
}

/** Every setting that a tool makes of an element; the one that is wanted comes first. */
export function settingsText(tool: string, settings: readonly CutPlan[], wanted: Wanted | undefined): string {
  const delays = delayColumn(settings.map((each) => each.delay));
  const removals = delayColumn(settings.map((each) => each.removed));
  const rows = settings.map((each, i) => row(each, delays[i] ?? "", removals[i] ?? ""));
  const sections = [
    ...(wanted === undefined ? [] : [wrap(wantedWords(wanted))]),
    `${wrap(`Settings of ${tool}`)}\n${table(heads, rows)}`,
    before,
  ];
  return `${sections.join("\n\n")}\n`;
}

/** What a depth reading is held against. */
export interface HeldAgainst {
  readonly wanted?: Wanted | undefined;
  readonly passed: readonly PassedLimit[];
}

/** How far the delay that is left is from the one that was wanted; within two sigma of the readings it is the same. */
function differenceWords({ delay, delaySd }: ReadDelay, wanted: number): string {
  const difference = delay - wanted;
  const asked = `${delayWords(wanted)} was wanted`;
  if (Math.abs(difference) <= 2 * delaySd) return `${asked}: that is what it is, as far as the readings tell.`;
  const much = amount(Math.abs(difference), "s", 1);
  return difference > 0
    ? `${asked}: it is ${much} longer.`
    : `${asked}: it is ${much} shorter, and what is cut cannot be put back.`;
}

function passedWords({ limit, allowed, found }: PassedLimit): string {
  const told = `${amount(found, "s", 1)} is ${limit === "least-left" ? "left" : "taken out"}`;
  return `STOP: a limit of the motor's maker is passed: ${told}, ${limit === "least-left" ? "least" : "most"} ${delayWords(allowed)}.`;
}

/** The delay that a depth reading leaves, held against what was wanted and what the maker allows. */
export function readingText(reading: ReadDelay, { wanted, passed }: HeldAgainst): string {
  const { removedDepth, removed, delay, delaySd } = reading;
  return `${[
    ...passed.map((each) => wrap(passedWords(each))),
    wrap(
      `The delay is now ${amount(delay, "s", 1)} (${glued("±", decimals(delaySd, 1))} from the readings, one sigma): ${amount(removed, "s", 1)} taken out, ${depthWords(removedDepth)}.`,
    ),
    ...(wanted === undefined ? [] : [wrap(differenceWords(reading, wanted.delay))]),
    ...(wanted?.setting === null ? [wrap(wantedWords(wanted))] : []),
    wrap(
      "The motor's own scatter comes on top of that. Write the reading down with the motor in hand: decide then reckons with it.",
    ),
    wrap(cautions.authority.join(" ")),
  ].join("\n")}\n`;
}
