import type { MotorShelf, OpenedPlan } from "@delaywright/documents";
import type { ShortlistShelf } from "../told.js";

/** What the page is told of a shortlist before its rows. */
export function shelfOf(
  { candidates, names, unread }: MotorShelf,
  { context, plan }: Extract<OpenedPlan, { ok: true }>,
  asked: Pick<ShortlistShelf, "draws" | "seed" | "model">,
): ShortlistShelf {
  const ceiling = plan.fieldLimits.ceiling ?? null;
  return { context, limits: plan.limits, ceiling, names, unread, motors: candidates.map(({ id }) => id), ...asked };
}
