import { type LogMapping, type LogQuantity, logQuantities } from "@delaywright/documents";
import { together, UsageError } from "./usage.js";

/** What was said of columns: `null` where no column holds it. */
export type GivenColumns = { readonly [Key in LogQuantity]?: LogMapping[Key] | null };

/**
 * What columns hold, as typed: `height=3:ft`, `pressure=Baro (hPa):hPa`, `speed=none`, `acceleration=-4:g` where forward
 * counts as negative.
 *
 * @param texts one an option
 */
export function columnsOf(texts: readonly string[]): Promise<GivenColumns> {
  const columns: Record<string, unknown> = {};
  const read = (text: string) => (): object => {
    const parts = /^\s*([a-z]+)\s*=\s*(.+?)\s*$/i.exec(text);
    const quantity = logQuantities.find((each) => each === parts?.[1]?.toLowerCase());
    if (parts?.[2] === undefined || quantity === undefined) throw wrong(text);
    if (Object.hasOwn(columns, quantity))
      throw new UsageError(`--column: ${JSON.stringify(text)} found; ${quantity} is accepted once`);
    columns[quantity] = parts[2] === "none" ? null : columnOf(quantity, parts[2], text);
    return columns;
  };
  return together(...texts.map(read));
}

function columnOf(quantity: LogQuantity, text: string, whole: string): object {
  const colon = text.lastIndexOf(":");
  const [name, unit] = colon < 0 ? [text, ""] : [text.slice(0, colon).trim(), text.slice(colon + 1).trim()];
  const number = /^(-?)(\d{1,3})$/.exec(name);
  const reversed = number?.[1] === "-";
  if (name === "" || (reversed && quantity !== "acceleration")) throw wrong(whole);
  return {
    column: number === null ? name : Number(number[2]),
    ...(unit === "" ? {} : { unit }),
    ...(reversed ? { reversed } : {}),
  };
}

function wrong(text: string): UsageError {
  return new UsageError(
    `--column: ${JSON.stringify(text)} found; what a column holds, its number or heading, and a unit are accepted, for example --column height=3:ft (one of ${logQuantities.join(", ")}; none where no column holds it)`,
  );
}
