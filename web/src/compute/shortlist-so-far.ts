import { type ShortlistData, shortlistData } from "@delaywright/documents";
import { type Aim, type JudgedMotor, orderedBy, refusalGroups } from "@delaywright/engine";
import type { ShortlistAnswer } from "./told.js";

/**
 * What is judged by now as a shortlist: ordered by the aim, refusals by their reasons.
 *
 * @returns null while it is not known what motors there are
 */
export function shortlistSoFar({ shelf, rows }: ShortlistAnswer, aim: Aim): ShortlistData | null {
  if (shelf === null) return null;
  const of = <Outcome extends JudgedMotor["outcome"]>(outcome: Outcome) =>
    [...rows.values()].filter((row): row is Extract<JudgedMotor, { outcome: Outcome }> => row.outcome === outcome);
  const { context, limits, draws, seed, model } = shelf;
  const list = {
    aim,
    ranked: orderedBy(of("ranked"), aim),
    refused: refusalGroups(of("refused")),
    broken: of("broken").sort((a, b) => (a.id < b.id ? -1 : 1)),
    draws,
    seed,
    model,
  };
  return shortlistData(list, shelf, context, limits);
}
