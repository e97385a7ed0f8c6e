import {
  type DecisionData,
  delayShareSentence,
  driversSentence,
  percentCell,
  rankedDrivers,
  wordForInput,
} from "@delaywright/documents";
import type { Share } from "@delaywright/engine";
import { table } from "../table.js";
import { wrap } from "../wrap.js";

const SHOWN = 4;
const BAR = 24;

function cell(share: Share | null): string {
  return share === null ? "-" : percentCell(Math.max(0, share.total));
}

/** Which uncertain inputs cause the spread: which measurement is worth repeating. */
export function driversText(data: DecisionData): string | null {
  const sentence = driversSentence(data);
  if (sentence === null) return null;
  const rows = rankedDrivers(data)
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
  const rest = delayShareSentence(data);
  return [
    "What drives the spread",
    wrap(sentence, "  "),
    table(heads, rows),
    ...(rest === null ? [] : [wrap(rest, "  ")]),
  ].join("\n");
}
