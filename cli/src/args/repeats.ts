import type { Command } from "commander";
import { shown } from "../print/shown.js";
import { UsageError } from "./usage.js";

/** Has a command refuse options that are given again, since one of both would be passed over; those that add up are left. */
export function refuseRepeats(command: Command): void {
  const found = new Map<string, string[]>();
  for (const option of command.options) {
    if (option.parseArg !== undefined) continue;
    const name = option.long ?? option.flags;
    command.on(`option:${option.name()}`, (value: string | null) => {
      found.set(name, [...(found.get(name) ?? []), ...(option.isBoolean() ? [""] : [shown(String(value))])]);
    });
  }
  command.hook("preAction", () => {
    const repeats = [...found].filter(([, values]) => values.length > 1);
    if (repeats.length > 0) throw new UsageError(repeats.map(repeatWords).join("\n"));
  });
}

function repeatWords([name, values]: readonly [string, readonly string[]]): string {
  const told = values.filter((value) => value !== "").map((value) => JSON.stringify(value));
  const which = told.length === 0 ? "" : ` (${told.join(", ")})`;
  return `${name}: given ${values.length} times${which}; it is accepted once`;
}
