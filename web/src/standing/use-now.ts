import { useEffect, useState } from "react";

/**
 * The device's clock, looked at now and then.
 *
 * @param every time between looks [ms]
 */
export function useNow(every: number): Date {
  const [now, setNow] = useState(() => new Date());
  useEffect(() => {
    const timer = setInterval(() => setNow(new Date()), every);
    return () => clearInterval(timer);
  }, [every]);
  return now;
}
