import { useEffect, useState } from "react";

/**
 * The device's clock, looked at now and then.
 *
 * @param every time between looks [ms]; null: not now
 */
export function useNow(every: number | null): Date {
  const [now, setNow] = useState(() => new Date());
  useEffect(() => {
    if (every === null) return;
    setNow(new Date());
    const timer = setInterval(() => setNow(new Date()), every);
    return () => clearInterval(timer);
  }, [every]);
  return now;
}
