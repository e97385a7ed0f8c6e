import type { Raw } from "@delaywright/documents";
import type { Shelf } from "../app/router.js";

function isKeyed(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

function typed(value: unknown): string | null {
  if (typeof value === "number") return String(value);
  return typeof value === "string" && value.trim() !== "" ? value.trim() : null;
}

function words(...parts: readonly (string | null)[]): string {
  return parts.filter((part) => part !== null).join(", ");
}

function delayOf(delay: unknown): string | null {
  if (!isKeyed(delay)) return null;
  if (delay["kind"] === "none") return "no delay";
  const seconds = typed(delay["kind"] === "fixed" ? delay["seconds"] : delay["longest"]);
  if (seconds === null) return null;
  return delay["kind"] === "fixed" ? `delay ${seconds}, fixed` : `delay ${seconds}, to be shortened`;
}

function piecesOf(tool: Raw): string | null {
  const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
  const ends = list(tool["ends"]).map((end) => (isKeyed(end) ? words(typed(end["name"]), typed(end["removes"])) : ""));
  if (ends.length > 0) {
    const spacers = list(tool["spacers"]).length;
    const rings = spacers === 0 ? null : spacers === 1 ? "1 spacer" : `${spacers} spacers`;
    return words(`ends ${ends.map((end) => end.replace(", ", " takes ")).join(" and ")}`, rings);
  }
  return isKeyed(tool["stop"])
    ? words("depth stop", typed(tool["stop"]["to"]) && `to ${typed(tool["stop"]["to"])}`)
    : null;
}

function cutOf({ readings }: Raw): string {
  const all = Array.isArray(readings) ? readings.filter(isKeyed) : [];
  const cut = all.filter((reading) => reading["after"] !== undefined);
  if (cut.length > 0) return cut.length === 1 ? "cut, 1 reading" : `cut, ${cut.length} readings`;
  return all.length > 0 ? "measured, not cut" : "not cut";
}

function ceilingOf(ceiling: unknown): string | null {
  const height = isKeyed(ceiling) ? typed(ceiling["height"]) : typed(ceiling);
  if (height === null) return null;
  const above = isKeyed(ceiling) && ceiling["above"] === "sea level" ? " above the sea" : "";
  return `ceiling ${height}${above}`;
}

/**
 * What tells a document from the others of its library, as it was typed; empty where nothing of it is there.
 *
 * @param nameOf the name of the document at a path; null where it is not there
 * @example
 * factsOf("rockets", { kind: "rocket", version: 1, diameter: "76 mm", length: "1.52 m" }, nameOf); // "76 mm by 1.52 m"
 */
export function factsOf(shelf: Shelf, raw: Raw, nameOf: (path: string) => string | null): string {
  switch (shelf) {
    case "rockets": {
      const [diameter, length] = [typed(raw["diameter"]), typed(raw["length"])];
      const size = diameter !== null && length !== null ? `${diameter} by ${length}` : (diameter ?? length);
      const mass = typed(raw["massWithoutMotor"]);
      return words(size, mass && `${mass} without motor`);
    }
    case "motors":
      return words(typed(raw["designation"]), typed(raw["diameter"]), delayOf(raw["delay"]));
    case "hands": {
      const { type } = raw;
      const name = isKeyed(type) ? typed(type["name"]) : typeof type === "string" ? (nameOf(type) ?? type) : null;
      const lot = typed(raw["lot"]);
      return words(name, lot && `lot ${lot}`, cutOf(raw));
    }
    case "tools":
      return words(piecesOf(raw));
    case "fields": {
      const elevation = typed(raw["elevation"]);
      return words(elevation && `${elevation} above the sea`, ceilingOf(raw["ceiling"]));
    }
    case "flyers": {
      const [level, age] = [typed(raw["certification"]), typed(raw["age"])];
      return words(level && `level ${level}`, typed(raw["association"]), age && `${age} years`);
    }
    case "rules": {
      const count = isKeyed(raw["limits"]) ? Object.keys(raw["limits"]).length : 0;
      const set = count === 0 ? null : count === 1 ? "1 rule set" : `${count} rules set`;
      return words(typed(raw["source"]), typed(raw["edition"]), set);
    }
    case "flights":
    case "others":
      return words(typed(raw["kind"]));
  }
}
