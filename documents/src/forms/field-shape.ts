import type { QuantityLimits } from "../kinds/fields.js";
import type { Dimension } from "../quantity/units.js";

/** What a field holds; a `reference` is the path of a file, or what that file would hold. */
export type Holds = "quantity" | "number" | "text" | "choice" | "yes-no" | "list" | "object" | "reference";

/** What a form needs to know of one field. */
export interface FieldShape {
  /** What it holds; the first where it may hold several, for example a quantity or an object. */
  readonly holds: Holds;
  /** What is accepted, in words. */
  readonly accepted: string;
  /** A value that would be right, as it would be typed; empty where there is none. */
  readonly example: string;
  /** What the field is. */
  readonly description: string;
  /** Whether its object is wrong without it. */
  readonly required: boolean;
  /** Fixed values that may stand here: all there are for a choice, and some beside others, as `none` beside a height. */
  readonly choices?: readonly (string | number | boolean)[];
  /** Of a quantity: what it measures; the first where it may measure one of several. */
  readonly dimension?: Dimension;
  readonly dimensions?: readonly Dimension[];
  /** Range of a quantity, as one would type it. */
  readonly limits?: QuantityLimits;
  /** Range of a pure number. */
  readonly range?: { readonly least: number; readonly most: number; readonly whole: boolean };
  /** Of an object: the keys that it may have. */
  readonly keys?: readonly string[];
}
