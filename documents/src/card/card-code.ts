import { memoryFiles } from "../file-source.js";
import type { Issue } from "../issue.js";
import type { PlanDocument } from "../kinds/plan/schema.js";
import { loadPlan, type PlanParts } from "../load-plan.js";
import type { Raw } from "../migrate.js";
import { accepts, thinnedNote } from "../words/card-code.en.js";
import { fromBase45, toBase45 } from "./base45.js";
import { cardDocument, withCurve, withoutNotes } from "./card-document.js";
import { squeeze, unsqueeze } from "./squeeze.js";
import { thinCurve } from "./thin-curve.js";
import { fromSigns, toSigns } from "./tokens.js";

/** What every code begins with: the name and the version of its making. */
const HEAD = "DELAYWRIGHT1:";
/** Ends the code, so that a space before it is not lost on the way. */
const TAIL = ":";

/** The largest QR version of a card: 117 dots and their border on 44 mm are 0.35 mm each, four dots of a 300 dpi printer. */
export const LARGEST_CARD_CODE = 25;
/** Most letters of a version 25 code of level M, in alphanumeric mode. @source ISO/IEC 18004, table of capacities (memory); tested */
const MOST_LETTERS = 1451;

/** Most letters that are read: what the largest of all QR codes holds. @source ISO/IEC 18004, 40-L alphanumeric (memory) */
const MOST_READ = 4296;
/** Largest text that a code is unpacked to [bytes]: own default, no source. */
const MOST_UNPACKED = 100_000;

/** A plan as a code for a card. */
export interface CardCode {
  /** Letters of a QR code's alphanumeric mode. */
  readonly text: string;
  /** Points of the thrust curve before and after it was thinned to fit; null: it is as it was given. */
  readonly thinned: { readonly from: number; readonly to: number } | null;
  /** Notes, and readings but for the first and the last depth, were left out to fit. */
  readonly notesLeftOut: boolean;
}

/**
 * A plan with its rocket, motor, tool and field as the text of one QR code, from which the same figures can be computed again.
 *
 * Everything stands in it as it was typed. Where that is too long, notes go first; then the thrust curve is thinned, its total
 * impulse, burn time and average kept, and the code and the motor in it say so.
 *
 * @param parts of a plan that was loaded without issues
 * @returns null where even that does not fit
 * @example
 * (await cardCode(parts))?.text.startsWith("DELAYWRIGHT1:"); // true
 */
export async function cardCode(parts: PlanParts): Promise<CardCode | null> {
  const whole = cardDocument(parts);
  const text = await textOf(whole);
  if (text.length <= MOST_LETTERS) return { text, thinned: null, notesLeftOut: false };
  const short = withoutNotes(whole);
  const shortText = await textOf(short);
  if (shortText.length <= MOST_LETTERS) return { text: shortText, thinned: null, notesLeftOut: true };
  return thinnedCode(short, parts.motor.thrust);
}

/** The code with as many points of the thrust curve as fit. */
async function thinnedCode(document: Raw, curve: PlanParts["motor"]["thrust"]): Promise<CardCode | null> {
  const from = curve.times.length;
  const codeOf = async (most: number): Promise<CardCode | null> => {
    const thin = thinCurve(curve, most);
    if (thin === undefined) return null;
    const to = thin.times.length;
    const text = await textOf(withCurve(document, thin, thinnedNote(from, to)));
    return text.length > MOST_LETTERS ? null : { text, thinned: { from, to }, notesLeftOut: true };
  };
  let best: CardCode | null = null;
  let [fewest, most] = [2, from - 1];
  while (fewest <= most) {
    const middle = Math.floor((fewest + most) / 2);
    const code = await codeOf(middle);
    // too few points to keep the figures count as too few, too many letters as too many
    if (code !== null) [best, fewest] = [code, middle + 1];
    else if (thinCurve(curve, middle) === undefined) fewest = middle + 1;
    else most = middle - 1;
  }
  return best;
}

async function textOf(document: Raw): Promise<string> {
  return `${HEAD}${toBase45(await squeeze(toSigns(JSON.stringify(document))))}${TAIL}`;
}

/** A plan that was read from a code, or why it was not. */
export type ReadCardCode =
  | { readonly ok: true; readonly document: PlanDocument; readonly raw: Raw; readonly parts: PlanParts }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/** What a code is called in messages. */
const CODE = "card code";

/**
 * The plan of a card's code, everything inside it.
 *
 * The text may come from anybody: it is bounded in length before and after it is unpacked, its check sum is looked at, and the
 * plan is read as strictly as a file. A code that leads to files is refused.
 *
 * @param text as a camera or a clipboard gave it; line breaks and white space around it do no harm
 * @returns the plan with its parts, or every issue
 * @example
 * const read = await readCardCode(code.text);
 * if (read.ok) planToEngine(read.parts);
 */
export async function readCardCode(text: string): Promise<ReadCardCode> {
  const letters = text
    .slice(0, 4 * MOST_READ)
    .replace(/[\r\n\t]/g, "")
    .trim()
    .toUpperCase();
  const version = /^DELAYWRIGHT(\d+):/.exec(letters)?.[1];
  if (version === undefined) return refused("no-card-code", shownText(letters), `${HEAD}…`);
  if (version !== "1") return refused("newer-card-code", `${version}`);
  if (text.length > 4 * MOST_READ || letters.length > MOST_READ) return refused("card-code-too-long", `${text.length}`);
  const bytes = letters.endsWith(TAIL) ? fromBase45(letters.slice(HEAD.length, -TAIL.length)) : undefined;
  const unpacked = bytes === undefined ? undefined : await unsqueeze(bytes, MOST_UNPACKED);
  if (unpacked === undefined) return refused("card-code-damaged", shownText(letters));
  if (unpacked === "too-large") return refused("card-code-too-large", `more than ${MOST_UNPACKED} bytes`);
  const loaded = await loadPlan(CODE, memoryFiles({ [CODE]: fromSigns(unpacked) }));
  if (loaded.parts === undefined || loaded.root === undefined) return { ok: false, issues: loaded.issues };
  return { ok: true, document: loaded.parts.plan.document, raw: loaded.root.raw, parts: loaded.parts };
}

function shownText(text: string): string {
  return text === "" ? "nothing" : JSON.stringify(text.length > 40 ? `${text.slice(0, 40)}…` : text);
}

function refused(code: keyof typeof accepts, found: string, example = ""): ReadCardCode {
  return { ok: false, issues: [{ file: CODE, path: "", code, found, accepted: accepts[code], example }] };
}
