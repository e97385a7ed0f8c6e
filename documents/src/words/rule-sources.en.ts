import type { Basis } from "@delaywright/engine";

/** Sources that are none: the number is a habit, or our own. */
const without: readonly string[] = ["common practice", "own default"];

/**
 * Where a rule is from, with its edition and how far its number can be trusted.
 *
 * @example
 * sourceWords({ source: "common practice", edition: "", status: "common practice, no source" }); // "common practice, no source"
 */
export function sourceWords({ source, edition, status }: Basis): string {
  const trust = status === "memory" ? "from memory, not read again" : without.includes(source) ? "no source" : "";
  return [source, edition, trust].filter((part) => part !== "").join(", ");
}
