/** What a reader does to go on from where they are. */
const moves = ["wheel", "touchmove", "pointerdown", "keydown"] as const;

/** Calls back whenever the reader moves, until the signal ends it. */
export function onReaderMoves(then: () => void, signal: AbortSignal): void {
  for (const move of moves) addEventListener(move, then, { capture: true, passive: true, signal });
}
