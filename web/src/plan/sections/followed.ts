/** What a part of the sheet may be drawn from: the higher its order, the newer it is. */
interface Ordered {
  readonly order: number;
}

/**
 * What a part of the sheet is drawn from next: in view what is now, else what came to rest. It never goes back in time: what came
 * to rest may be older than what a part showed before it left the view, and another display would then come and go again.
 *
 * @param shown what it was last drawn from
 * @param now as it is, `calm` as it last was at rest
 */
export function followed<Value extends Ordered>(
  shown: Value,
  { near, now, calm }: { readonly near: boolean; readonly now: Value; readonly calm: Value },
): Value {
  const next = near ? now : calm;
  return next.order > shown.order ? next : shown;
}
