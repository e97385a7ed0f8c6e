import { Button } from "react-aria-components";
import { dayOf } from "../standing/day.js";
import { useSettings } from "../store/index.js";
import { exportBench } from "./export-bench.js";

interface ExportActProps {
  /** It is the one thing to do next. */
  readonly isNext?: boolean;
  readonly onDone?: () => void;
}

/** Exports the whole bench, and remembers when. */
export function ExportAct({ isNext = false, onDone }: ExportActProps) {
  const [, change] = useSettings();
  const run = () => {
    const now = new Date();
    void exportBench(dayOf(now));
    change({ lastExport: now.getTime() });
    onDone?.();
  };
  return (
    <Button className={isNext ? "next-act" : "act"} onPress={run}>
      Export everything
    </Button>
  );
}
