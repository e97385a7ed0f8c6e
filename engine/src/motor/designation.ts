/** What a motor's label says. */
export interface Designation {
  /** Class of the total impulse: `1/8A` … `Z`. */
  readonly letter: string;
  /** [N] */
  readonly averageThrust: number;
  /** From burnout to the ejection charge [s]; `plugged`: no charge; null: not printed. */
  readonly delay: number | "plugged" | null;
}

const FORM = /^(1\/[248]A|[A-Z])(\d+(?:\.\d+)?)[A-Z]*(?:-(?:(P)|(\d+(?:\.\d+)?)[A-Z]?))?$/;

/**
 * Reads a motor's designation: class letter, average thrust, delay.
 *
 * Letters after the thrust, which name a propellant, and one letter after the delay are passed over; small letters and
 * blanks around are taken. `P` in place of the delay says plugged.
 *
 * @param text as printed on the label
 * @returns its parts, or null where the text has another form
 * @source NFPA 1125 (2012/2017), designation of motors
 * @example
 * parseDesignation("H150-14"); // { letter: "H", averageThrust: 150, delay: 14 }
 */
export function parseDesignation(text: string): Designation | null {
  const match = FORM.exec(text.trim().toUpperCase());
  if (!match) return null;
  const [, letter, averageThrust, plugged, delay] = match;
  return {
    letter: letter!,
    averageThrust: Number(averageThrust),
    delay: plugged ? "plugged" : delay === undefined ? null : Number(delay),
  };
}
