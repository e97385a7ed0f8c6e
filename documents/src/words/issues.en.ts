import type { Issue } from "../issue.js";
import type { Doubt } from "../plausible.js";

/**
 * One issue as a sentence, without its file: where, found, accepted, example.
 *
 * @example
 * issueSentence(issue); // 'rocket.fins[0].root: "180" found; a length with its unit is accepted, for example "180 mm"'
 */
export function issueSentence(issue: Omit<Issue, "file">): string {
  const where = issue.path === "" ? "" : `${issue.path}: `;
  return `${where}${foundWords(issue)}; ${acceptedWords(issue)}`;
}

/** One issue as a line, with its file before it. */
export function issueLine(issue: Issue): string {
  return issue.file === "" ? issueSentence(issue) : `${issue.file}: ${issueSentence(issue)}`;
}

/** One warning as a line, with its file before it. */
export function doubtLine(doubt: Doubt): string {
  const place = [doubt.file, doubt.path].filter((part) => part !== "").join(": ");
  return `${place}: ${leads[doubt.code] ?? ""}${doubt.found} found; ${doubt.expected} expected`;
}

/** What is wrong: `the unit is missing: "180" found`. */
export function foundWords({ code, found }: Pick<Issue, "code" | "found">): string {
  const lead = leads[code] ?? "";
  if (code === "unknown-field") return `${lead}no such field`;
  if (code === "file-missing") return `${lead}${found}`;
  return code === "not-covered" ? `${lead}not covered` : `${lead}${found} found`;
}

/** What would be right: `a length with its unit is accepted, for example "180 mm"`. */
export function acceptedWords({ code, accepted, example }: Pick<Issue, "code" | "accepted" | "example">): string {
  if (code === "unknown-field") return accepted;
  if (code === "not-covered") return accepted.replace(": ", " is accepted: ");
  return `${accepted} is accepted${example === "" ? "" : `, for example ${example}`}`;
}

/** What is said first where found and accepted alone would leave one guessing. */
const leads: Readonly<Record<string, string>> = Object.freeze({
  "json-syntax": "this is not JSON: ",
  "too-deep": "nested too deeply: ",
  "duplicate-key": "this key stands twice: ",
  "key-refused": "this key is refused: ",
  encoding: "the encoding is not understood: ",
  "newer-version": "made by a newer version of this program: ",
  "unit-missing": "the unit is missing: ",
  "unit-unknown": "this unit is not known: ",
  "wrong-dimension": "this unit measures something else: ",
  "ambiguous-comma": "this comma may be read in two ways: ",
  "back-up-broken": "this back-up breaks off here, and none of its documents came in: ",
  "comma-parts-columns": "a comma parts columns here: ",
  "blank-parts-columns": "a blank parts columns here: ",
  "file-missing": "there is no such file: ",
  "file-too-large": "the file is too large: ",
  "reference-cycle": "this file leads back to itself: ",
  "motor-too-large-for-mount": "the motor is too large for the mount: ",
  "never-lifts": "this motor never lifts the rocket: ",
  "propellant-above-loaded": "the propellant outweighs the motor: ",
  "cut-shallower": "a cut never becomes shallower: ",
  "tool-for-another-grain": "motor and tool disagree about the grain: ",
  "time-not-rising": "times must rise: ",
  "behind-tail": "this lies behind the tail: ",
  "ahead-of-nose-base": "this lies within the nose: ",
  "label-class": "the thrust curve is of another class than its label: ",
  "label-average-thrust": "the thrust curve's average is off its label: ",
  "label-delay": "the delay is not the label's: ",
  "label-unreadable": "the designation cannot be read: ",
  "pressure-unlikely": "this pressure is unlikely at this elevation: ",
  "descent-slow": "this canopy is very large for the rocket: ",
  "elevation-in-feet": "this elevation does not fit the pressure: ",
});
