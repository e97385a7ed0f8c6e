import { normalGravity, type OtherRocket } from "@delaywright/engine";
import type { FileSource } from "./file-source.js";
import { recoveryToEngine, rocketToEngine } from "./kinds/rocket/to-engine.js";
import { loadAny } from "./load.js";

/**
 * Another rocket, which an element that was cut too far may suit.
 *
 * @param path of its document
 * @param plan name of the plan's own rocket, and where it flies: latitude [rad], elevation [m]
 * @returns the rocket where its document is one, is right, and is not the plan's own, and the files that were looked at
 * @example
 * (await otherRocket("demo-54.rocket.json", files, { rocket: "Demo rocket 76", latitude: 0.9, elevation: 210 })).rocket?.name; // Demo rocket 54
 */
export async function otherRocket(
  path: string,
  files: FileSource,
  plan: { readonly rocket: string; readonly latitude: number; readonly elevation: number },
): Promise<{ readonly rocket?: OtherRocket; readonly files: readonly string[] }> {
  const { state, root, files: looked } = await loadAny(path, files, ["rocket"]);
  const document = root?.document;
  if (state !== "ready" || document?.kind !== "rocket" || document.name === plan.rocket) return { files: looked };
  const ready = root?.children["readyWith"]?.document;
  const readyWith = ready?.kind === "motor" ? ready : undefined;
  const gravity = normalGravity(plan.latitude, plan.elevation);
  const rocket = {
    name: document.name,
    rocket: rocketToEngine(document, { readyWith, gravity }),
    recovery: recoveryToEngine(document),
  };
  return { rocket, files: looked };
}
