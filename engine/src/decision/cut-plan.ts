/** A delay and how the tool makes it. */
export interface CutPlan {
  /** Delay that is left [s]. */
  readonly delay: number;
  /** Seconds taken out of the whole element [s]. */
  readonly removed: number;
  /** The tool's end; null when uncut, or with a depth stop, or where no cut may be shown. */
  readonly end: string | null;
  /** Spacers put on, one name a piece. */
  readonly spacers: readonly string[];
  /** Depth of the cut from the grain's first face [m]; null where no cut may be shown, or no depth per second is known. */
  readonly depth: number | null;
}
