import { useEffect, useMemo, useState } from "react";

/**
 * The device's clock, looked at now and then.
 *
 * @param every time between looks [ms]; null: not now
 * @param against what is held against the clock: with each change of it the clock is looked at anew, so that what was written just
 * now never lies ahead of it
 */
export function useNow(every: number | null, against?: unknown): Date {
  const [look, setLook] = useState(0);
  useEffect(() => {
    if (every === null) return;
    setLook((last) => last + 1);
    const timer = setInterval(() => setLook((last) => last + 1), every);
    return () => clearInterval(timer);
  }, [every]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the clock is looked at whenever one of them changes
  return useMemo(() => new Date(), [look, against]);
}
