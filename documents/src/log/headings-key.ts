/** Longer keys end in a check sum of the whole. */
const LONGEST = 900;

/**
 * A text by which a mapping is remembered: equal for equal headings, whatever their capitals and blanks.
 *
 * @param headings of all columns, in their order
 * @returns empty where no column has a heading: then nothing tells one file's layout from another's
 * @example
 * headingsKey(["Time (s)", "Height (m)"]); // "time (s) | height (m)"
 */
export function headingsKey(headings: readonly string[]): string {
  const plain = headings.map((each) => each.normalize("NFC").toLowerCase().replace(/\s+/g, " ").trim());
  if (plain.every((each) => each === "")) return "";
  const key = plain.join(" | ");
  return key.length <= LONGEST ? key : `${key.slice(0, LONGEST)}… ${checkSum(key)}`;
}

/** FNV-1a, 32 bit (memory). */
function checkSum(text: string): string {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  return (sum >>> 0).toString(16).padStart(8, "0");
}
