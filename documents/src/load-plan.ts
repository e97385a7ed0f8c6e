import type { FileSource } from "./file-source.js";
import type { Issue } from "./issue.js";
import type { Document, Kind } from "./kinds/kinds.js";
import { type Loaded, type LoadedNode, loadAny } from "./load.js";
import type { Raw } from "./migrate.js";
import { motorTooLarge } from "./mount-fit.js";
import { parseQuantity } from "./quantity/parse.js";

/** A document and where it stands. */
export interface Placed<K extends Kind> {
  readonly document: Document<K>;
  readonly file: string;
  /** Empty but for a document inside another. */
  readonly path: string;
}

/** A motor type with its thrust curve, wherever that stood. */
export interface PlacedMotor extends Placed<"motor"> {
  readonly thrust: { readonly times: readonly number[]; readonly thrusts: readonly number[] };
}

/** Every document of a plan. */
export interface PlanParts {
  readonly plan: Placed<"plan">;
  readonly rocket: Placed<"rocket">;
  readonly readyWith?: PlacedMotor;
  readonly motor: PlacedMotor;
  readonly motorInHand?: Placed<"motor-in-hand">;
  readonly tool?: Placed<"tool">;
  readonly field?: Placed<"field">;
  readonly flyer?: Placed<"flyer">;
  /** A club's rules. */
  readonly ruleSet?: Placed<"rule-set">;
}

/** A plan with all that it refers to; `parts` is there where nothing has an issue. */
export interface LoadedPlan extends Loaded {
  readonly parts?: PlanParts;
}

/**
 * Loads a plan with its rocket, motor, tool and field, and collects the issues of all files at once.
 *
 * @param path the plan's file
 * @param files where files come from
 * @example
 * const loaded = await loadPlan("plan.json", files);
 * if (loaded.parts) planToEngine(loaded.parts);
 */
export async function loadPlan(path: string, files: FileSource): Promise<LoadedPlan> {
  const loaded = await loadAny(path, files, ["plan"]);
  if (loaded.root === undefined) return loaded;
  if (loaded.issues.length > 0) return { ...loaded, issues: [...loaded.issues, ...mountConflict(loaded.root)] };
  const parts = partsOf(loaded.root);
  return parts === undefined ? loaded : { ...loaded, parts };
}

/**
 * The parts of a plan that was loaded as part of something else, such as a library or a flight.
 *
 * @param root the plan with what it refers to
 * @returns undefined where a part is missing or has issues
 */
export function partsOf(root: LoadedNode): PlanParts | undefined {
  const plan = placed(root, "plan");
  const rocketNode = root.children["rocket"];
  const rocket = placed(rocketNode, "rocket");
  const inHand = placed(root.children["motor"], "motor-in-hand");
  const motor = placedMotor(inHand === undefined ? root.children["motor"] : root.children["motor"]?.children["type"]);
  if (plan === undefined || rocket === undefined || motor === undefined) return undefined;
  const readyWith = placedMotor(rocketNode?.children["readyWith"]);
  const tool = placed(root.children["tool"], "tool");
  const field = placed(root.children["field"], "field");
  const flyer = placed(root.children["flyer"], "flyer");
  const ruleSet = placed(root.children["ruleSet"], "rule-set");
  return {
    plan,
    rocket,
    motor,
    ...(readyWith === undefined ? {} : { readyWith }),
    ...(inHand === undefined ? {} : { motorInHand: inHand }),
    ...(tool === undefined ? {} : { tool }),
    ...(field === undefined ? {} : { field }),
    ...(flyer === undefined ? {} : { flyer }),
    ...(ruleSet === undefined ? {} : { ruleSet }),
  };
}

/**
 * A motor too large for the mount, told beside the issues of a plan that could not be read: what is wrong elsewhere must not
 * hide it.
 */
function mountConflict(root: LoadedNode): Issue[] {
  const named = root.children["motor"];
  const motor = named?.kind === "motor-in-hand" ? named.children["type"] : named;
  const rocket = root.children["rocket"];
  const mount = (rocket?.raw["mount"] as Raw | undefined)?.["diameter"];
  const diameter = motor?.raw["diameter"];
  if (motor === undefined || typeof mount !== "string" || typeof diameter !== "string") return [];
  const [inner, outer] = [parseQuantity(mount, "length"), parseQuantity(diameter, "length")];
  return inner.ok && outer.ok
    ? motorTooLarge({ ...motor, diameter, outer: outer.value }, { mount, inner: inner.value })
    : [];
}

/** A node as a document of one kind, or undefined. */
export function placed<K extends Kind>(node: LoadedNode | undefined, kind: K): Placed<K> | undefined {
  if (node?.document === undefined || node.kind !== kind) return undefined;
  return { document: node.document as Document<K>, file: node.file, path: node.path };
}

/** A node as a motor with its thrust curve, or undefined. */
export function placedMotor(node: LoadedNode | undefined): PlacedMotor | undefined {
  const motor = placed(node, "motor");
  if (motor === undefined) return undefined;
  const { thrust } = motor.document;
  if (typeof thrust !== "string") return { ...motor, thrust: { times: thrust.time, thrusts: thrust.newtons } };
  return node?.thrust === undefined ? undefined : { ...motor, thrust: node.thrust };
}
