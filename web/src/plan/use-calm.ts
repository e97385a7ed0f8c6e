import { useEffect, useState } from "react";

interface Calm {
  readonly moves: boolean;
  readonly atOnce: boolean;
}

/**
 * A value once it has not changed for a while; the last such value until then.
 *
 * @param value changes its identity when it changes
 * @param wait for so long it must not have changed [ms]
 * @param moves it is about to change, however long that takes
 * @param atOnce takes the value as it comes
 */
export function useCalm<Value>(value: Value, wait: number, { moves, atOnce }: Calm): Value {
  const [calm, setCalm] = useState(value);
  useEffect(() => {
    if (moves && !atOnce) return;
    const timer = setTimeout(() => setCalm(value), atOnce ? 0 : wait);
    return () => clearTimeout(timer);
  }, [value, wait, moves, atOnce]);
  return atOnce ? value : calm;
}
