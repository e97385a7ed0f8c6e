import { useEffect, useState } from "react";

interface Calm<Value> {
  readonly moves: boolean;
  readonly isFirst: (calm: Value) => boolean;
}

/**
 * A value once it has not changed for a while; the last such value until then.
 *
 * @param value changes its identity when it changes
 * @param wait for so long it must not have changed [ms]
 * @param moves it is about to change, however long that takes
 * @param isFirst the value at rest is not worth keeping: the new one is taken as it comes
 */
export function useCalm<Value>(value: Value, wait: number, { moves, isFirst }: Calm<Value>): Value {
  const [calm, setCalm] = useState(value);
  const atOnce = isFirst(calm);
  useEffect(() => {
    if (moves && !atOnce) return;
    const timer = setTimeout(() => setCalm(value), atOnce ? 0 : wait);
    return () => clearTimeout(timer);
  }, [value, wait, moves, atOnce]);
  return atOnce ? value : calm;
}
