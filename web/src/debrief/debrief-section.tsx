import { lazy, Suspense, useCallback, useState } from "react";
import type { Moved } from "../compute/debrief/protocol.js";
import { Fold, type FoldMark } from "../parts/index.js";

const DebriefBody = lazy(async () => ({ default: (await import("./debrief-body.js")).DebriefBody }));

export interface DebriefSectionProps {
  /** Of the plan. */
  readonly path: string;
  readonly mark: FoldMark;
  readonly aside: string;
  /** The plan's own answer is under way, and comes first. */
  readonly waits: boolean;
}

/** The last section of a plan: what happened, and what it changes. Its code comes when it is shown. */
export function DebriefSection({ path, mark, aside, waits }: DebriefSectionProps) {
  // a phone that is turned has another sheet: what was moved and is not accepted yet must outlive that
  const [moves, keep] = useState<Readonly<Record<string, Moved>>>({});
  const move = useCallback(
    (flight: string, moved: Moved | null): void =>
      keep(({ [flight]: _, ...others }) => (moved === null ? others : { ...others, [flight]: moved })),
    [],
  );
  return (
    <Fold id="debrief" title="Debrief" mark={mark} aside={aside}>
      <Suspense fallback={<p className="sheet-line">Opening …</p>}>
        <DebriefBody path={path} waits={waits} moves={moves} onMoved={move} />
      </Suspense>
    </Fold>
  );
}
