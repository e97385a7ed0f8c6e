import { memo } from "react";
import { useNarrow } from "../parts/index.js";
import { useFilling } from "./sections/filling.js";
import type { SectionsProps } from "./sections/section-props.js";
import { Sections, stepsOf } from "./sections/sections.js";

/** Drawn again only where something in it changed. */
const Sheet = memo(Sections);

interface PlanSheetProps {
  /** What the sheet is drawn from as it is now; null while what stands around it is drawn. */
  readonly now: SectionsProps | null;
  /** The same as it last was at rest. */
  readonly calm: SectionsProps;
  /** What it is drawn from is about to change. */
  readonly busy: boolean;
}

/** The sheet of a plan below its answer. It fills part by part, and says while it does. */
export function PlanSheet({ now, calm, busy }: PlanSheetProps) {
  const narrow = useNarrow();
  const steps = stepsOf(narrow);
  const step = useFilling(steps, now !== null);
  return (
    <main className="plan-sheet" id="main" tabIndex={-1} aria-busy={busy || step < steps}>
      {now !== null && <Sheet now={now} calm={calm} step={step} />}
    </main>
  );
}
