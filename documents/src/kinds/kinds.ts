import type { z } from "zod";
import type { Fault } from "../issue.js";
import { firstVersion, type VersionChain } from "../migrate.js";
import { type FieldDocument, fieldSchema } from "./field/schema.js";
import { checkFlight } from "./flight/check.js";
import { type FlightDocument, flightSchema } from "./flight/schema.js";
import { type FlyerDocument, flyerSchema } from "./flyer/schema.js";
import { checkLibrary } from "./library/check.js";
import { type LibraryDocument, librarySchema } from "./library/schema.js";
import { checkLog } from "./log/check.js";
import { type LogDocument, logSchema } from "./log/schema.js";
import { checkMotor } from "./motor/check.js";
import { type MotorDocument, motorSchema } from "./motor/schema.js";
import { checkMotorInHand } from "./motor-in-hand/check.js";
import { type MotorInHandDocument, motorInHandSchema } from "./motor-in-hand/schema.js";
import { checkPlan } from "./plan/check.js";
import { type PlanDocument, planSchema } from "./plan/schema.js";
import type { RawView } from "./raw.js";
import { checkRocket } from "./rocket/check.js";
import { type RocketDocument, rocketSchema } from "./rocket/schema.js";
import { checkRuleSet, limitFault } from "./rule-set/check.js";
import { type RuleSetDocument, ruleSetSchema } from "./rule-set/schema.js";
import { checkTool } from "./tool/check.js";
import { type ToolDocument, toolSchema } from "./tool/schema.js";

/** The document of each kind, as it is written. */
export interface Documents {
  readonly plan: PlanDocument;
  readonly rocket: RocketDocument;
  readonly motor: MotorDocument;
  readonly "motor-in-hand": MotorInHandDocument;
  readonly tool: ToolDocument;
  readonly field: FieldDocument;
  readonly flyer: FlyerDocument;
  readonly "rule-set": RuleSetDocument;
  readonly log: LogDocument;
  readonly flight: FlightDocument;
  readonly library: LibraryDocument;
}

export type Kind = keyof Documents;
/** A document of any kind, or of the kinds named. */
export type Document<K extends Kind = Kind> = Documents[K];

/** What a kind of document is made of. */
export interface KindOfDocument {
  /** Gives its schema, which is made when it is first asked for. */
  readonly schema: () => z.ZodType;
  readonly versions: VersionChain;
  /** What its fields must be to each other. */
  readonly check: (document: RawView) => void;
  /** What one field must be beyond its schema, by where it stands. */
  readonly checkOne?: (steps: readonly PropertyKey[], value: unknown) => Fault | undefined;
  /** Fields that take a document of one of these kinds, inline or by path. */
  readonly references: Readonly<Record<string, readonly Kind[]>>;
  /** Words that such a field takes beside paths. */
  readonly words: Readonly<Record<string, readonly string[]>>;
}

const nothingMore = () => {};

function kind(
  schema: () => z.ZodType,
  check: (document: RawView) => void = nothingMore,
  references: KindOfDocument["references"] = {},
  words: KindOfDocument["words"] = {},
): KindOfDocument {
  return { schema, versions: firstVersion, check, references, words };
}

/** Every kind of document there is. */
export const kinds: Readonly<Record<Kind, KindOfDocument>> = Object.freeze({
  plan: kind(
    planSchema,
    checkPlan,
    {
      rocket: ["rocket"],
      motor: ["motor", "motor-in-hand"],
      tool: ["tool"],
      field: ["field"],
      flyer: ["flyer"],
      ruleSet: ["rule-set"],
    },
    { ruleSet: ["association", "none"] },
  ),
  rocket: kind(rocketSchema, checkRocket, { readyWith: ["motor"] }),
  motor: kind(motorSchema, checkMotor),
  "motor-in-hand": kind(motorInHandSchema, checkMotorInHand, { type: ["motor"] }),
  tool: kind(toolSchema, checkTool),
  field: kind(fieldSchema),
  flyer: kind(flyerSchema),
  "rule-set": { ...kind(ruleSetSchema, checkRuleSet), checkOne: limitFault },
  log: kind(logSchema, checkLog),
  flight: kind(flightSchema, checkFlight, { plan: ["plan"], motorInHand: ["motor-in-hand"], log: ["log"] }),
  library: kind(librarySchema, checkLibrary),
});

export const kindNames = Object.freeze(Object.keys(kinds) as Kind[]);

/**
 * The path of a file that a document names in a field; undefined where a document stands there itself, or a word.
 *
 * @example
 * pathIn("plan", "ruleSet", "association"); // undefined
 */
export function pathIn(kind: Kind, field: string, value: unknown): string | undefined {
  if (typeof value !== "string" || value.trim() === "") return undefined;
  const text = value.trim();
  return kinds[kind].words[field]?.includes(text) ? undefined : text;
}

/** Whether a text names a kind of document. */
export function isKind(text: unknown): text is Kind {
  return typeof text === "string" && Object.hasOwn(kinds, text);
}
