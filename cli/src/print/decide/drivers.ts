import { wordForInput } from "@delaywright/documents";
import type { Share } from "@delaywright/engine";
import type { Answer } from "../answer.js";
import { percent, percentCell, shareWords } from "../numbers.js";
import { table } from "../table.js";
import { upperFirst, wrap } from "../wrap.js";

const SHOWN = 4;
const BAR = 24;

function cell(share: Share | null): string {
  return share === null ? "-" : percentCell(Math.max(0, share.total));
}

/** Which uncertain inputs cause the spread: which measurement is worth repeating. */
export function driversText({ decision }: Answer): string | null {
  const ranked = [...decision.drivers]
    .filter((driver) => driver.timing.total > 0.005)
    .sort((a, b) => b.timing.total - a.timing.total);
  const [first] = ranked;
  if (first === undefined || decision.toCut === null) return null;
  const share = shareWords(first.timing.total);
  const narrowed = first.input === "dragScale" ? ": one logged flight would narrow it" : "";
  const sentence = `${upperFirst(share)} of the spread in opening time is ${wordForInput(first.input)}${narrowed}.`;
  const rows = ranked
    .slice(0, SHOWN)
    .map(({ input, timing, coast, odds }) => [
      wordForInput(input),
      "#".repeat(Math.max(1, Math.round(BAR * Math.min(1, timing.total)))).padEnd(BAR, "."),
      cell(timing),
      cell(coast),
      cell(odds),
    ]);
  const heads = [
    { head: "", align: "left" as const },
    { head: "", align: "left" as const },
    { head: "opening\ntime %" },
    { head: "coast\n%" },
    { head: "odds\n%" },
  ];
  const rest = decision.delayShareOfOdds;
  return [
    "What drives the spread",
    wrap(sentence, "  "),
    table(heads, rows),
    ...(rest === null
      ? []
      : [
          wrap(
            `${percent(rest)} of clean or not stays open even if the flight were known exactly: the delay's own scatter.`,
            "  ",
          ),
        ]),
  ].join("\n");
}
