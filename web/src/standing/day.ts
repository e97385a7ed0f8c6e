const two = (value: number): string => String(value).padStart(2, "0");

/** A day as documents write it, in the device's own time: `2026-05-02`. */
export function dayOf(date: Date): string {
  return `${date.getFullYear()}-${two(date.getMonth() + 1)}-${two(date.getDate())}`;
}

/** A time of day as documents write it: `10:40`. */
export function timeOfDay(date: Date): string {
  return `${two(date.getHours())}:${two(date.getMinutes())}`;
}

const long = new Intl.DateTimeFormat("en-GB", { weekday: "long", day: "numeric", month: "long" });
const short = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long" });
const withYear = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", year: "numeric" });

/** `Saturday 2 May`. */
export function longDay(date: Date): string {
  return long.format(date).replace(",", "");
}

/** The local midnight that a document's day begins with; null for what is no day of the calendar. */
function dateOf(day: unknown): Date | null {
  const parts = typeof day === "string" ? /^(\d{4})-(\d\d)-(\d\d)$/.exec(day) : null;
  if (parts === null) return null;
  const date = new Date(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3]));
  return dayOf(date) === day ? date : null;
}

/** A document's day with its day of the week: `Saturday 2 May`; null for what is no day of the calendar. */
export function longDayOf(day: unknown): string | null {
  const date = dateOf(day);
  return date === null ? null : longDay(date);
}

/**
 * A document's day in words: `today`, `2 May`, `2 May 2025` where it lies in another year.
 *
 * @param day as documents write it; anything else is no day
 * @returns null for what is no day
 */
export function dayWords(day: unknown, now: Date): string | null {
  const date = dateOf(day);
  if (date === null) return null;
  if (day === dayOf(now)) return "today";
  return (date.getFullYear() === now.getFullYear() ? short : withYear).format(date);
}

/**
 * A moment as documents write it, in words: `2 May 2026, 10:12`.
 *
 * @param when `2026-05-02T10:12`; anything else comes back as it is
 */
export function momentWords(when: string): string {
  const parts = /^(\d{4})-(\d\d)-(\d\d)(?:T(\d\d:\d\d))?/.exec(when);
  if (parts === null) return when;
  const date = withYear.format(new Date(Number(parts[1]), Number(parts[2]) - 1, Number(parts[3])));
  return parts[4] === undefined ? date : `${date}, ${parts[4]}`;
}
