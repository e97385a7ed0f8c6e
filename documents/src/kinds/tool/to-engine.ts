import type { CuttingTool, Removal } from "@delaywright/engine";
import { defaultDepthError } from "../../defaults.js";
import { parseQuantity } from "../../quantity/parse.js";
import { given, si, siOr } from "../si.js";
import type { ToolDocument } from "./schema.js";

/** A cutting tool in SI units. */
export function toolToEngine(tool: ToolDocument): CuttingTool {
  const depthError = siOr(tool.depthError, "length", defaultDepthError.cut);
  const depthPerSecond = siOr(tool.depthPerSecond, "length", undefined);
  if (tool.stop !== undefined) {
    return {
      kind: "stop",
      name: tool.name,
      from: si(tool.stop.from, "length"),
      to: si(tool.stop.to, "length"),
      step: si(tool.stop.step, "length"),
      ...given("depthPerSecond", depthPerSecond),
      depthError,
    };
  }
  return {
    kind: "ends",
    name: tool.name,
    ends: (tool.ends ?? []).map((end) => ({ name: end.name, removes: removal(end.removes) })),
    spacers: (tool.spacers ?? []).map((spacer) => ({
      name: spacer.name,
      keepsBack: removal(spacer.keepsBack),
      count: spacer.count ?? 1,
    })),
    depthPerSecond: depthPerSecond ?? 0,
    depthError,
  };
}

function removal(text: string): Removal {
  const seconds = parseQuantity(text, "time");
  return seconds.ok ? { seconds: seconds.value } : { depth: si(text, "length") };
}

/** Whether any amount of the tool is given in seconds of its own grain. */
export function countsSeconds(tool: CuttingTool): boolean {
  if (tool.kind === "stop") return false;
  return [...tool.ends.map((end) => end.removes), ...tool.spacers.map((spacer) => spacer.keepsBack)].some(
    (each) => "seconds" in each,
  );
}
