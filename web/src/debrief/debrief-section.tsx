import { useCallback, useMemo, useRef, useState } from "react";
import type { Moved } from "../compute/debrief/protocol.js";
import { Fold, type FoldMark, Loaded, loadedLater } from "../parts/index.js";
import type { DebriefShown } from "./debrief-body.js";
import { type Intake, noIntake } from "./intake.js";
import { type Memory, RememberingIn } from "./remembered.js";

const debriefBody = loadedLater(async () => (await import("./debrief-body.js")).DebriefBody);

const first: DebriefShown = Object.freeze({ flight: null, unkept: null });

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
  // so must a log whose columns are being looked at, and which flight was
  const [intake, set] = useState<Intake>(noIntake);
  const latest = useRef<File | null>(null);
  const hold = useMemo(() => ({ intake, set, latest }), [intake]);
  const [shown, show] = useState<DebriefShown>(first);
  // and what was told, how far it was zoomed, and the event in hand
  const [memory] = useState<Memory>(() => new Map());
  return (
    <Fold id="debrief" title="Debrief" mark={mark} aside={aside} busy={intake.state !== "none"}>
      <RememberingIn value={memory}>
        <Loaded
          part={debriefBody}
          props={{ path, waits, moves, onMoved: move, hold, shown, onShown: show }}
          waiting={<p className="sheet-line">Opening …</p>}
        />
      </RememberingIn>
    </Fold>
  );
}
