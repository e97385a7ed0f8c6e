import { dirname, join, normalize } from "node:path";
import { loadAny, type PlanParts, recoveryToEngine, rocketToEngine } from "@delaywright/documents";
import { normalGravity, type OtherRocket } from "@delaywright/engine";
import type { Files } from "../io/io.js";

/** Every other rocket in the plan's folder that is right; what is not a rocket, or not right, is passed over. */
export async function otherRockets(
  parts: PlanParts,
  air: { readonly latitude: number; readonly elevation: number },
  files: Files,
): Promise<OtherRocket[]> {
  const folder = dirname(parts.plan.file);
  const gravity = normalGravity(air.latitude, air.elevation);
  const own = parts.rocket.document.name;
  const found: OtherRocket[] = [];
  for (const name of await files.list(folder)) {
    const path = join(folder, name);
    if (!name.endsWith(".json") || normalize(path) === normalize(parts.rocket.file)) continue;
    const { state, root } = await loadAny(path, files, ["rocket"]);
    if (state !== "ready" || root?.document?.kind !== "rocket" || root.document.name === own) continue;
    const ready = root.children["readyWith"]?.document;
    const readyWith = ready?.kind === "motor" ? ready : undefined;
    found.push({
      name: root.document.name,
      rocket: rocketToEngine(root.document, { readyWith, gravity }),
      recovery: recoveryToEngine(root.document),
    });
  }
  return found;
}
