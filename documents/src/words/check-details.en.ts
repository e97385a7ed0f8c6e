import type { DetailCode } from "@delaywright/engine";
import { own } from "./own.js";

const details: Readonly<Record<DetailCode, string> & Record<string, string>> = Object.freeze({
  "mach-through-bridge":
    "it flies near or through the speed of sound, where they only join what is known on both sides",
  "mach-above-validated": "it flies faster than they were held against",
  "angle-of-attack-above-validated": "it meets the air at a larger angle than they were held against",
  "fineness-below-validated": "it is stubbier than they were held against",
  "fineness-above-validated": "it is more slender than they were held against",
  "reynolds-above-validated": "it flies at a higher Reynolds number than they were held against",
  "class-1": "class 1, a model rocket",
  "class-2": "class 2, a high-power rocket",
  "class-3": "class 3, an advanced high-power rocket: the aviation authority wants to know more of it, 45 days before",
  "not-amateur": "more than an amateur rocket",
  authorised: "you say that it is authorised: see what the authorisation asks for",
  "not-told": "it was not told",
  "told-too-late": "it was told too late",
  "told-too-early": "it was told too early",
  "beyond-table": "beyond the table",
  "metal-sponge": "widened for metal in the propellant",
  complex: "for more than one motor",
  "retained-by-friction": "by friction: test that the charge does not push the motor out",
  "not-retained": "nothing keeps it in: the charge pushes the motor out instead of the recovery",
  "too-short": "shorter than any that can be made: no element and tool at hand make it",
  "too-long": "longer than any that can be made: no element and tool at hand make it",
  "shorter-than-fixed": "shorter than the delay that it has",
  "longer-than-fixed": "longer than the delay that it has",
  "rule-unknown": "there is no rule of this name",
  "rule-is-fixed": "no club can change this rule",
  "rule-has-no-limit": "no number decides this rule",
  "limit-not-a-number": "this limit is no number",
  "distances-not-rising": "the table of distances does not rise",
});

/** What a finding has to say beside its figures; a code that may be newer than these words speaks for itself. */
export function wordForDetail(code: string): string {
  return own(details, code) ?? code.replaceAll("-", " ");
}
