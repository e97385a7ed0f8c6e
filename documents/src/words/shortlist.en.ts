import type { Aim, MotorLookCode, NotChecked, Refusal, RefusalCode } from "@delaywright/engine";
import type { MotorCutData, RankedData, RefusedData, ShortlistData } from "../answer/shortlist-data.js";
import { GLUE } from "../quantity/glue.js";
import { amountIn, type UnitSystem } from "../quantity/systems.js";
import { wordsForCheck } from "./checks.en.js";
import { kindOfCut } from "./cut.en.js";
import { wordForFact } from "./facts.en.js";
import { findingFigure } from "./figures.en.js";
import { oddsWords } from "./headline.en.js";
import { delayWords, upperFirst } from "./numbers.en.js";
import { wordForReason } from "./reasons.en.js";

const aims: Readonly<Record<Aim["by"], string>> = Object.freeze({
  "nearest-height": "nearest to a height",
  highest: "highest",
  "best-odds": "best odds of a clean opening",
  gentlest: "gentlest opening",
  cheapest: "cheapest",
});

/** Every aim and its word, in the order in which they are offered. */
export const aimChoices: readonly { readonly by: Aim["by"]; readonly word: string }[] = Object.freeze(
  (Object.keys(aims) as Aim["by"][]).map((by) => ({ by, word: aims[by] })),
);

/** What motors are ordered by: `nearest to 800 m`. */
export function aimWords({ by, height }: ShortlistData["aim"], units: UnitSystem = "metric"): string {
  return height === null ? aims[by] : `nearest to ${amountIn(height, "distance", units)}`;
}

/** How an order came about where not all is known. */
export function aimNote({ aim, ranked }: ShortlistData): string | null {
  const unpriced = ranked.filter(({ price }) => price === null).length;
  if (aim.by !== "cheapest" || unpriced === 0) return null;
  return unpriced === ranked.length
    ? "No price is known: they stand by their odds."
    : `Motors without a price come last (${unpriced}).`;
}

/** Reasons that a list of motors words in its own way; the others bear the title of their rule. */
const heads: Readonly<Partial<Record<MotorLookCode, string>>> = Object.freeze({
  "too-wide-for-mount": "too wide for the mount",
  "too-long-for-mount": "too long for the mount",
  "adapter-needed": "thinner than the mount: it needs an adapter, whose mass is in no figure here",
  "certification-level": "certification level of the flyer",
  "motor-certified": "certificate of the motor",
  "no-charge": "no ejection charge, and nothing else opens the rocket",
  ceiling: "height that 95 % stay below, against the field's ceiling",
  "no-setting-holds": "no delay that can be made holds often enough",
  "below-least-clean": "no delay that can be made opens clean often enough",
  "fires-before-electronics": "no delay that can be made fires late enough behind the electronics",
  "instructions-not-confirmed": "its delay would have to be cut, and its instructions are not confirmed to allow it",
  "tool-not-named": "its delay would have to be cut, and its instructions name another tool",
  "site-size": "smallest dimension of the field",
  "personnel-distance": "distance to people",
});

/** What a reason or a look is about, as a head. */
export function wordForRefusal(code: MotorLookCode): string {
  return heads[code] ?? wordsForCheck(code).title;
}

function figure(value: number, unit: string, code: MotorLookCode, units: UnitSystem): string {
  return /mount|adapter/.test(code) ? amountIn(value, "length", units) : findingFigure(value, unit, code, units);
}

/** `least 3`; empty where no number decides. */
export function refusalLimit(
  { limit, unit, sense, code }: Pick<Refusal, "limit" | "unit" | "sense" | "code">,
  units: UnitSystem = "metric",
): string {
  return limit === null || sense === "none" ? "" : `${sense} ${figure(limit, unit, code, units)}`;
}

/** What was found: `1.4`; empty where there is no figure. */
export function refusalFound(
  { value, unit, sense, code }: Pick<Refusal, "value" | "unit" | "sense" | "code">,
  units: UnitSystem = "metric",
): string {
  return value === null || sense === "none" ? "" : figure(value, unit, code, units);
}

const reasonsOfDelay = /^(no-setting-holds|below-least-clean|fires-before-electronics)$/;

/** Why no delay is good enough, as a clause: the weightiest reason only. */
function delayReason({ code, details }: Refusal): string {
  const codes = details.filter((each) => each !== "does-not-hold");
  const reach = codes.find((each) => each === "out-of-reach-longer" || each === "out-of-reach-shorter");
  const first = reach ?? codes[0];
  return reasonsOfDelay.test(code) && first !== undefined
    ? wordForReason(first as Parameters<typeof wordForReason>[0])
    : "";
}

/** Motors refused for one reason, in words. */
export interface RefusalWords {
  readonly code: RefusalCode;
  /** `Too wide for the mount, most 38 mm`; the limit stands with each motor where they differ. */
  readonly head: string;
  /** Those of whom the same is to be said beside it stand together. */
  readonly groups: readonly {
    /** `Demo I178 54 mm`. */
    readonly motors: readonly string[];
    /** Why no delay is good enough, and what else speaks against them; empty where nothing does. */
    readonly note: string;
  }[];
}

function refusedWords({ name, refusals }: RefusedData, withLimit: boolean, units: UnitSystem): string {
  const [first] = refusals as [Refusal, ...Refusal[]];
  const figures = [refusalFound(first, units), withLimit ? refusalLimit(first, units) : ""]
    .filter((each) => each !== "")
    .join(", ");
  return [name, figures]
    .filter((each) => each !== "")
    .join(" ")
    .replaceAll(" ", GLUE);
}

function refusedNote({ refusals }: RefusedData): string {
  const [first, ...others] = refusals as [Refusal, ...Refusal[]];
  // a delay that does not hold is not clean either: the one says the other
  const told = others.filter(({ code }) => !(reasonsOfDelay.test(first.code) && reasonsOfDelay.test(code)));
  const also = told.map(({ code }) => wordForRefusal(code)).join(", ");
  return [delayReason(first), also === "" ? "" : `also: ${also}`].filter((each) => each !== "").join("; ");
}

/**
 * Refused motors by their reasons, with value and limit.
 *
 * @example
 * refusalWords(data)[0]?.head; // "Too wide for the mount, most 38 mm"
 */
export function refusalWords(
  { refused }: Pick<ShortlistData, "refused">,
  units: UnitSystem = "metric",
): RefusalWords[] {
  return refused.map(({ code, motors }) => {
    const limits = new Set(motors.map(({ refusals }) => refusalLimit(refusals[0]!, units)));
    const [only] = limits;
    const same = limits.size === 1;
    const groups = new Map<string, string[]>();
    for (const motor of motors) {
      const note = refusedNote(motor);
      groups.set(note, [...(groups.get(note) ?? []), refusedWords(motor, !same, units)]);
    }
    return {
      code,
      head: [upperFirst(wordForRefusal(code)), ...(same && only ? [only] : [])].join(", "),
      groups: [...groups].map(([note, names]) => ({ motors: names, note })),
    };
  });
}

/** What asks for a look, and what could not be checked, a clause each. */
export function rowNotes(
  { looks, notChecked }: Pick<RankedData, "looks" | "notChecked">,
  units: UnitSystem = "metric",
): string[] {
  return [
    ...looks.map((look) => {
      const figures = [refusalFound(look as Refusal, units), refusalLimit(look as Refusal, units)].filter(
        (each) => each !== "",
      );
      return ["look:", wordForRefusal(look.code), figures.join(", ")].filter((each) => each !== "").join(" ");
    }),
    ...notChecked.map(notCheckedWords),
  ];
}

function notCheckedWords({ code, missing }: NotChecked): string {
  const why = missing.length === 0 ? "" : `, since ${missing.map(wordForFact).join(" and ")} is not known`;
  return `not checked: ${wordForRefusal(code)}${why}`;
}

/** What to do with a motor's delay: `cut to 9 s`. How it is cut is told where the cautions of cutting are: by `decide`. */
export function motorCutWords(toCut: MotorCutData | null): string {
  if (toCut === null) return "no delay to cut";
  const kind = kindOfCut(toCut);
  const delay = delayWords(toCut.delay);
  if (kind === "cut") return `cut to ${delay}`;
  return kind === "uncut" ? `leave it at ${delay}, no cut` : `${delay}, no cut is shown`;
}

/** The first lines of a shortlist: how many are left, and the first of them with its cut and odds. */
export function shortlistHead(data: ShortlistData, units: UnitSystem = "metric"): string {
  const { ranked, refused, unjudged, context, aim, draws } = data;
  const asked = ranked.length + refused.reduce((sum, { motors }) => sum + motors.length, 0) + unjudged.length;
  const [first] = ranked;
  if (asked === 0) return "No motor was found there.";
  if (first === undefined) return `None of ${asked} motors is left for ${context.rocket} here today.`;
  const odds = first.toCut === null ? "" : `; ${oddsWords(first.toCut, draws)}`;
  const top = first.height === null ? "" : `; top ${amountIn(first.height.p50, "distance", units)}`;
  return `${ranked.length} of ${asked} motors ${ranked.length === 1 ? "is" : "are"} left for ${context.rocket} here today, ${aimWords(aim, units)} first. ${first.name}: ${motorCutWords(first.toCut)}${odds}${top}.`;
}

/** How the columns are read. */
export const shortlistColumnsNote =
  "Height: median / 95 % stay below, AGL. Opens below: 9 in 10 of the openings. Clean and holds as decide says them.";

/** On how many flights the rows rest, and that the one that is flown is to be decided anew. */
export function shortlistBasis({ draws, seed, model }: Pick<ShortlistData, "draws" | "seed" | "model">): string {
  return `${draws} draws a motor, seed ${seed}, ${model} model: enough to tell motors apart. Ask decide of the one that you take: it tells how the delay is cut, and holds it against all rules, landing energy and those of flyer, field and day among them.`;
}
