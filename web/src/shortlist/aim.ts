import { aimChoices, parseQuantity, upperFirst } from "@delaywright/documents";
import type { Aim } from "@delaywright/engine";

/** What the flyer is after, as it was chosen and typed. */
export interface TypedAim {
  readonly by: Aim["by"];
  /** Height to reach, above the pad. */
  readonly height: string;
}

export const firstAim: TypedAim = Object.freeze({ by: "best-odds", height: "" });

/** Aims to choose from. Whatever breaks the ceiling is refused, so that the highest lies under it. */
export function aimItems(hasCeiling: boolean): { readonly id: Aim["by"]; readonly label: string }[] {
  return aimChoices.map(({ by, word }) => ({
    id: by,
    label: upperFirst(by === "highest" && hasCeiling ? "highest under the ceiling" : word),
  }));
}

/** The height that was typed [m]; null: it is none. */
export function heightOf({ height }: Pick<TypedAim, "height">): number | null {
  const read = parseQuantity(height, "length");
  return read.ok && read.value > 0 ? read.value : null;
}

/** What is wrong with the height that was typed; null: nothing, or nothing was typed yet. */
export function heightProblem(typed: TypedAim): string | null {
  if (typed.height.trim() === "" || heightOf(typed) !== null) return null;
  return `“${typed.height.trim()}” is no height. Write 700 m or 2300 ft.`;
}

/** What motors are ordered by: until there is a height to be near, by their odds. */
export function aimOf(typed: TypedAim): Aim {
  if (typed.by !== "nearest-height") return { by: typed.by };
  const height = heightOf(typed);
  return height === null ? { by: "best-odds" } : { by: "nearest-height", height };
}
