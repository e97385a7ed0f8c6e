import type { RawView } from "../raw.js";

/** What is unlikely about a tool, though it may be so. */
export function doubtTool(tool: RawView): void {
  if (tool.at("depthError").si("length") === 0)
    tool.at("depthError").report("depth-error-none", "more than 0: no hand cuts exactly");
  const depth = tool.at("depthPerSecond").si("length");
  if (depth !== undefined && (depth < 0.2e-3 || depth > 3e-3))
    tool.at("depthPerSecond").report("depth-unlikely", "0.2 mm to 3 mm for one second");
}
