const FIRST_ODDS = "first-odds";

let waiting = false;

/** The newest mark of a name stands alone: a long day leaves no more than one of each. */
function mark(name: string): void {
  performance.clearMarks(name);
  performance.mark(name);
}

/** A document of the plan that is looked at changed. */
export function markChange(): void {
  waiting = true;
  mark("change");
}

/** The first odds after a change have come. */
export function markFirstOdds(): void {
  if (!waiting) return;
  waiting = false;
  mark(FIRST_ODDS);
}

/** All draws have come. */
export function markSettled(): void {
  mark("settled");
}
