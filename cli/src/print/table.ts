import Table from "cli-table3";
import { shown } from "./shown.js";

const noLines = Object.freeze({
  top: "",
  "top-mid": "",
  "top-left": "",
  "top-right": "",
  bottom: "",
  "bottom-mid": "",
  "bottom-left": "",
  "bottom-right": "",
  left: "",
  "left-mid": "",
  mid: "",
  "mid-mid": "",
  right: "",
  "right-mid": "",
  middle: "  ",
});

/** One column: its head, and whether its cells stand left or right. */
export interface Column {
  readonly head: string;
  readonly align?: "left" | "right";
}

/** A table without lines: figures to the right under their heads. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[], indent = "  "): string {
  const made = new Table({
    chars: noLines,
    style: { head: [], border: [], "padding-left": 0, "padding-right": 0 },
    colAligns: columns.map((column) => column.align ?? "right"),
  });
  made.push(columns.map((column) => ({ content: column.head, vAlign: "bottom" as const })));
  for (const row of rows) made.push(row.map((cell) => cell.split("\n").map(shown).join("\n")));
  return made
    .toString()
    .split("\n")
    .map((line) => `${indent}${line}`.trimEnd())
    .join("\n");
}
