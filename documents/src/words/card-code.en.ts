/** What is accepted where the code of a card was not read. */
export const accepts = Object.freeze({
  "no-card-code": "the whole text of a flight card's code, from its first letter on",
  "newer-card-code": "a code of version 1: a newer delaywright made this one",
  "card-code-too-long": "no more letters than a QR code holds",
  "card-code-damaged": "the whole text as it was read: some of it is missing or changed; read the code again",
  "card-code-too-large": "a code that holds one plan",
});

/** Stands in a motor whose thrust curve was thinned to fit into a code. */
export function thinnedNote(from: number, to: number): string {
  return `Thrust curve thinned from ${from} to ${to} points for the card's code: impulse, burn time and average as given, the rest nearly so.`;
}
