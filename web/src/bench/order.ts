import type { Entry } from "../store/index.js";

/** A plan, as far as its place on the bench goes. */
export interface Placed {
  readonly path: string;
  /** Day of the flight as documents write it; null where it has none. */
  readonly day: string | null;
  /** When it was last changed [ms]. */
  readonly changed: number;
}

/** A plan's document as far as its place goes. */
export function placed({ path, raw, savedAt }: Entry): Placed {
  const day = raw?.["date"];
  return { path, day: typeof day === "string" ? day : null, changed: savedAt };
}

const groups = (plan: Placed, today: string): number => {
  if (plan.day === today) return 0;
  if (plan.day === null) return 1;
  return plan.day > today ? 2 : 3;
};

function newestFirst(a: Placed, b: Placed): number {
  return b.changed - a.changed || a.path.localeCompare(b.path);
}

/**
 * The order of plans: today's, those without a day, those to come with the next first, those that are past with the last first.
 * Within a day the one that was changed last stands first.
 *
 * @param today as documents write it
 */
export function inOrder<Plan extends Placed>(plans: readonly Plan[], today: string): Plan[] {
  return [...plans].sort((a, b) => {
    const [one, other] = [groups(a, today), groups(b, today)];
    if (one !== other) return one - other;
    const days = (a.day ?? "").localeCompare(b.day ?? "");
    if (days !== 0) return one === 3 ? -days : days;
    return newestFirst(a, b);
  });
}

/** The one plan whose next step stands out: of today's the one changed last, else the one changed last at all. */
export function foremost(plans: readonly Placed[], today: string): string | null {
  const todays = plans.filter(({ day }) => day === today);
  const [first] = [...(todays.length > 0 ? todays : plans)].sort(newestFirst);
  return first?.path ?? null;
}
