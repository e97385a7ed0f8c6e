/** A value as JSON for machines: SI numbers, and null for what is no number. */
export function jsonText(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
