import type { Warning, WarningCode } from "@delaywright/engine";
import type { UnitSystem } from "../quantity/systems.js";
import { findingFigure } from "./figures.en.js";
import { own } from "./own.js";

const warnings: Readonly<Record<WarningCode, string> & Record<string, string>> = Object.freeze({
  "mach-through-bridge":
    "it flies near or through the speed of sound, where the models only join what is known on both sides",
  "mach-above-validated": "it flies faster than the models were held against",
  "angle-of-attack-above-validated": "it meets the air at a larger angle than the models were held against",
  "fineness-below-validated": "it is stubbier than the models were held against",
  "fineness-above-validated": "it is more slender than the models were held against",
  "reynolds-above-validated": "it flies at a higher Reynolds number than the models were held against",
  "surface-wind-carried-up": "the wind aloft is a guess from a reading near the ground: winds aloft would tell",
  "inertia-estimated": "the transverse inertia is a guess from mass and length: a swing on two strings would tell",
  "drag-not-learned": "the drag is computed: no flight of this rocket is logged yet",
  "descents-not-followed":
    "some opened flights could not be followed to the ground: where opened ones land is not checked",
  "never-handed-over": "the swing had not settled by the top: the flight was reckoned with pitching all the way",
  "no-tool": "no tool is given: no cut is planned",
});

/** Units of a warning's figures; pure numbers where none is named. */
const warningUnits: Readonly<Record<string, string>> = Object.freeze({
  "angle-of-attack-above-validated": "rad",
  "surface-wind-carried-up": "m",
});

/** A warning whose code may be newer than these words. */
type ToldWarning = Omit<Warning, "code"> & { readonly code: string };

/** One warning as a line; a code that is not known speaks for itself. */
export function wordForWarning({ code, value, limit }: ToldWarning, units: UnitSystem = "metric"): string {
  const words = own(warnings, code) ?? code.replaceAll("-", " ");
  if (value === null) return words;
  const unit = own(warningUnits, code) ?? "";
  return limit === null
    ? `${words} (${findingFigure(value, unit, code, units)})`
    : `${words} (${findingFigure(value, unit, code, units)}, limit ${findingFigure(limit, unit, code, units)})`;
}
