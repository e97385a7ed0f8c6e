/** What a check says. */
export type VerdictWord = "within" | "look" | "stop" | "not checked";

const classes: Readonly<Record<VerdictWord, string>> = Object.freeze({
  within: "within",
  look: "look",
  stop: "stop",
  "not checked": "not",
});

/** A verdict: a word with a weight, never a colour. */
export function Verdict({ word }: { readonly word: VerdictWord }) {
  return <span className={`verdict ${classes[word]}`}>{word}</span>;
}
