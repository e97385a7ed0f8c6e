import type { HelpCode, OutcomeOdds, ReasonCode, ToCut } from "@delaywright/engine";

const reasons: Readonly<Record<ReasonCode, string> & Record<string, string>> = Object.freeze({
  "too-fast-early": "it opens too fast, before the top",
  "too-fast-late": "it opens too fast, after the top",
  lean: "it leans so much that it is fast even at the top, which no delay can cure",
  "too-low": "it opens too low",
  grounded: "it lands before it opens",
  "does-not-hold": "it opens harder than the weakest rated part bears",
  "fires-before-electronics": "the charge often fires before the electronics has opened the rocket",
  "out-of-reach-longer": "it wants a longer delay than this element has",
  "out-of-reach-shorter": "it wants a shorter delay than this element and this tool can make",
});

const helps: Readonly<Record<HelpCode, string> & Record<string, string>> = Object.freeze({
  "another-motor": "another motor",
  ballast: "ballast, fixed mechanically",
  "less-wind": "less wind",
  "longer-guide": "a longer guide",
  "motor-with-longer-delay": "a motor with a longer delay",
  "motor-with-shorter-delay": "a motor with a shorter delay",
  "stronger-recovery": "a stronger recovery",
  "log-a-flight": "a logged flight, which would narrow the spread",
});

const whys: Readonly<Record<ToCut["why"], string> & Record<string, string>> = Object.freeze({
  "only-setting": "it is the only setting there is",
  "best-odds": "it has the best odds of a clean opening",
  "tie-fewer-low": "its odds tie with others, and fewer of its flights open low or not at all",
  "tie-shorter": "its odds tie with others, and it is the shorter delay",
  "after-electronics": "it fires after the electronics, and has the best odds if that fails",
  "none-holds": "no setting holds often enough; of all it holds most often",
});

const outcomes: Readonly<Record<keyof OutcomeOdds, string>> = Object.freeze({
  clean: "clean opening",
  earlyFast: "too fast, before the top",
  lateFast: "too fast, after the top",
  leanFast: "too fast at any delay: lean",
  low: "opens too low",
  grounded: "lands before it opens",
});

/** Why no setting is good enough, as a clause. */
export function wordForReason(code: ReasonCode): string {
  return reasons[code];
}

/** What would help, as a noun. */
export function wordForHelp(code: HelpCode): string {
  return helps[code];
}

/** Why the delay to cut is this one, as a clause. */
export function wordForWhy(code: ToCut["why"]): string {
  return whys[code];
}

/** An outcome of an opening, as the head of a column. */
export function wordForOutcome(outcome: keyof OutcomeOdds): string {
  return outcomes[outcome];
}
