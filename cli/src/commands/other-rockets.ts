import { dirname, join, normalize } from "node:path";
import { otherRocket, type PlanParts } from "@delaywright/documents";
import type { OtherRocket } from "@delaywright/engine";
import type { Files } from "../io/io.js";

/** Every other rocket beside the plan, or beside its rocket, that is right; what is not a rocket, or not right, is passed over. */
export async function otherRockets(
  parts: PlanParts,
  air: { readonly latitude: number; readonly elevation: number },
  files: Files,
): Promise<OtherRocket[]> {
  const folders = new Set([parts.plan.file, parts.rocket.file].map(dirname));
  const plan = { rocket: parts.rocket.document.name, ...air };
  const found: OtherRocket[] = [];
  for (const path of await documentsIn(folders, files)) {
    if (normalize(path) === normalize(parts.rocket.file)) continue;
    const { rocket } = await otherRocket(path, files, plan);
    if (rocket !== undefined) found.push(rocket);
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
