/** What a part of the sheet was last drawn from, and what was at rest then. */
export interface Followed<Value> {
  readonly shown: Value;
  readonly calm: Value;
}

/**
 * What a part of the sheet is drawn from next: in view what is now, else what came to rest since. A part that leaves the view
 * keeps what it showed: it never goes back in time.
 *
 * @param now as it is, `calm` as it last was at rest
 */
export function followed<Value>(
  last: Followed<Value>,
  { near, now, calm }: { readonly near: boolean; readonly now: Value; readonly calm: Value },
): Followed<Value> {
  const shown = near ? now : calm === last.calm ? last.shown : calm;
  return shown === last.shown && calm === last.calm ? last : { shown, calm };
}
