import { dirname, join, normalize } from "node:path";
import { loadAny, type PlanParts, recoveryToEngine, rocketToEngine } from "@delaywright/documents";
import { normalGravity, type OtherRocket } from "@delaywright/engine";
import type { Files } from "../io/io.js";

/** Every other rocket beside the plan, or beside its rocket, that is right; what is not a rocket, or not right, is passed over. */
export async function otherRockets(
  parts: PlanParts,
  air: { readonly latitude: number; readonly elevation: number },
  files: Files,
): Promise<OtherRocket[]> {
  const folders = new Set([parts.plan.file, parts.rocket.file].map(dirname));
  const gravity = normalGravity(air.latitude, air.elevation);
  const own = parts.rocket.document.name;
  const found: OtherRocket[] = [];
  for (const path of await documentsIn(folders, files)) {
    if (normalize(path) === normalize(parts.rocket.file)) continue;
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

async function documentsIn(folders: ReadonlySet<string>, files: Files): Promise<string[]> {
  const paths: string[] = [];
  for (const folder of folders) {
    const names = await files.list(folder);
    paths.push(...names.filter((name) => name.endsWith(".json")).map((name) => join(folder, name)));
  }
  return paths;
}
