import { wordForCheck } from "@delaywright/documents";
import type { Setting, ToCut } from "@delaywright/engine";
import type { Answer } from "../answer.js";
import { kindOfCut, takeOutWords } from "../cut-words.js";
import { decimals, delayWords, glued, holdsPercent, percent } from "../numbers.js";
import type { Style } from "../style.js";
import { upperFirst, WIDTH, wrap } from "../wrap.js";

/** The setting that the delay to cut stands for. */
export function suggested({ decision }: Answer): Setting | undefined {
  const { toCut, settings } = decision;
  return toCut === null ? undefined : settings.find((setting) => Math.abs(setting.delay - toCut.delay) < 1e-6);
}

/** `91 % clean (± 0.6), holds 99.6 %`. */
export function oddsWords({ odds, firesFirst }: Setting, draws: number): string {
  if (draws === 1)
    return `One flight without spread: ${odds.clean > 0.5 ? "clean" : "not clean"}, ${odds.holds > 0.5 ? "holds" : "does not hold"}`;
  const points = odds.error < 0.0005 ? glued("under", "0.1") : decimals(100 * odds.error, 1);
  const error = odds.error > 0 ? ` (${glued("±", points)})` : "";
  const fires = firesFirst === null ? "" : `fires before the electronics in ${percent(firesFirst)}; if that fails, `;
  return `${fires}${percent(odds.clean)} clean${error}, ${glued("holds", holdsPercent(odds.holds))}`;
}

/** What must not fly, said before everything else. */
function stops({ decision, inputs }: Answer, style: Style): string[] {
  const lines = decision.checks
    .filter((check) => check.verdict === "stop")
    .map((check) => wrap(`STOP: ${wordForCheck(check)}.`, "", "      "));
  if (decision.overCut?.doNotFly && inputs.cutSoFar !== undefined)
    lines.unshift(wrap("STOP: do not fly this motor as it is cut: see below.", "", "      "));
  return lines.map(style.stop);
}

function verdict(answer: Answer, toCut: ToCut): string {
  const { inputs } = answer;
  const delay = delayWords(toCut.delay);
  const good = toCut.reachesLeast && toCut.reachesHolds;
  const kind = kindOfCut(toCut, inputs.cutSoFar?.removedDepth);
  if (inputs.motor.delay.kind === "fixed") return `Its delay is ${delay} and cannot be set.`;
  if (!toCut.reachesHolds) return `At best ${delay}, and that does not hold.`;
  const start = good ? "" : `At best ${delay}: `;
  if (kind === "uncut") return good ? `Leave it at ${delay}: no cut.` : `${start}no cut.`;
  if (kind === "as-it-is") return good ? `Leave it at ${delay}, as it is now cut.` : `${start}as it is now cut.`;
  if (kind === "not-shown") return good ? `${delay} has the best odds; no cut is shown.` : `${start}no cut is shown.`;
  const take = `${takeOutWords(toCut, inputs.cutSoFar?.removedDepth)}.`;
  return good ? `Cut to ${delay}: ${take}` : `${start}${take}`;
}

/** The first lines: what stops the flight, then what to cut and how good its odds are. */
export function headline(answer: Answer, style: Style): string {
  const { toCut, choice } = answer.decision;
  const setting = suggested(answer);
  const lines = stops(answer, style);
  if (toCut === null || setting === undefined) lines.push(style.strong("No delay to cut: this motor has none."));
  else {
    const [cut, odds] = [verdict(answer, toCut), upperFirst(`${oddsWords(setting, answer.decision.draws)}.`)];
    const fits = cut.length + odds.length + 2 <= WIDTH;
    lines.push(style.strong(fits ? wrap(`${cut}\u00a0 ${odds}`) : `${wrap(cut)}\n${wrap(odds)}`));
  }
  if (choice !== null) {
    const reason = choice.reason === null ? "" : ` (${choice.reason})`;
    lines.push(
      wrap(
        `Your own choice is ${delayWords(choice.setting.delay)}${reason}: ${oddsWords(choice.setting, answer.decision.draws)}.`,
      ),
    );
  }
  return lines.join("\n");
}
