import { useRef } from "react";

/**
 * The same object for as long as it says the same, so that nothing is drawn again for it.
 *
 * @param value plain data
 */
export function useSame<Value>(value: Value): Value {
  const last = useRef(value);
  if (last.current !== value && JSON.stringify(last.current) !== JSON.stringify(value)) last.current = value;
  return last.current;
}
