import type { Candidate, StatedOfMotor } from "@delaywright/engine";
import type { Issue } from "../issue.js";
import { motorToEngine } from "../kinds/motor/to-engine.js";
import { given } from "../kinds/si.js";
import type { Loaded } from "../load.js";
import { type PlanParts, placedMotor } from "../load-plan.js";
import { planConflicts } from "../plan-conflicts.js";
import { statedFacts } from "../stated-facts.js";
import { withoutOwnMotor } from "./open-plan.js";

/** What a motor is called. */
export interface MotorName {
  readonly name: string;
  readonly maker: string | null;
  readonly designation: string | null;
}

/** A motor document that cannot be judged. */
export interface UnreadMotor extends MotorName {
  readonly file: string;
  readonly issues: readonly Issue[];
}

/** The motors of a folder, for a shortlist. */
export interface MotorShelf {
  /** Their identifiers are their files. */
  readonly candidates: readonly Candidate[];
  readonly names: ReadonlyMap<string, MotorName>;
  /** By their files. */
  readonly unread: readonly UnreadMotor[];
}

/** Is this file a motor's, right or wrong? Documents of other kinds are passed over. */
function isMotor(file: string, { kind, state }: Loaded): boolean {
  return kind === "motor" || (kind === undefined && (state === "unreadable" || file.endsWith(".motor.json")));
}

function nameOf(file: string, motor: { readonly [field: string]: unknown } | undefined): MotorName {
  const text = (field: string): string | null => (typeof motor?.[field] === "string" ? motor[field] : null);
  return { name: text("name") ?? file, maker: text("maker"), designation: text("designation") };
}

/** What a motor's document states for the rules; the rest of the facts are the plan's. */
function statedOf(parts: PlanParts): StatedOfMotor {
  const { motorCertified, metalSponge, makerMostLiftOffMass } = statedFacts(parts);
  return {
    ...given("motorCertified", motorCertified),
    ...given("metalSponge", metalSponge),
    ...given("makerMostLiftOffMass", makerMostLiftOffMass),
  };
}

/**
 * The motors among loaded documents, in SI units; each that is wrong, or that the plan's tool cannot cut, with its issues.
 *
 * @param parts of the plan that they are asked about
 * @param loaded every document by its file, as `loadAny` gave it
 * @example
 * const { candidates, unread } = motorShelf(parts, [["demo-h150.motor.json", await loadAny("demo-h150.motor.json", files)]]);
 */
export function motorShelf(parts: PlanParts, loaded: readonly (readonly [file: string, loaded: Loaded])[]): MotorShelf {
  const own = withoutOwnMotor(parts);
  const candidates: Candidate[] = [];
  const unread: UnreadMotor[] = [];
  const names = new Map<string, MotorName>();
  for (const [file, each] of loaded.filter(([path, one]) => isMotor(path, one))) {
    const name = nameOf(file, each.root?.raw);
    const motor = each.issues.length > 0 ? undefined : placedMotor(each.root);
    const issues = motor === undefined ? each.issues : planConflicts({ ...own, motor });
    if (motor === undefined || issues.length > 0) {
      unread.push({ file, ...name, issues });
      continue;
    }
    names.set(file, name);
    const { price } = motor.document;
    candidates.push({
      id: file,
      motor: motorToEngine(motor),
      ...given("price", price),
      stated: statedOf({ ...own, motor }),
    });
  }
  return { candidates, names, unread };
}
