import {
  guideExitAngleSentence,
  stabilityCells,
  stabilityColumnsNote,
  stabilityData,
  stabilityHeads,
  stabilityVerdictSentences,
} from "@delaywright/documents";
import type { FlightResult } from "@delaywright/engine";
import { table } from "./table.js";
import { wrap } from "./wrap.js";

/** Stability over one flight for a person: where it matters, and what passes the usual limits. */
export function stabilityText(flight: FlightResult, least: number | null): string {
  const data = stabilityData(flight, { least });
  const angle = guideExitAngleSentence(data);
  const heads = stabilityHeads().map((head, i) => ({ head, align: i === 0 ? ("left" as const) : ("right" as const) }));
  return [
    "Stability",
    ...(data.moments.length === 0
      ? []
      : [
          table(
            heads,
            data.moments.map((moment) => [...stabilityCells(moment)]),
          ),
        ]),
    ...(angle === null ? [] : [wrap(angle, "  ")]),
    ...stabilityVerdictSentences(data).map((sentence) => wrap(sentence, "  ")),
    ...(data.moments.length === 0 ? [] : [wrap(stabilityColumnsNote, "  ")]),
  ].join("\n");
}
