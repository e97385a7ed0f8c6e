import { createContext, useCallback, useContext, useState } from "react";

/** What a debrief shows beyond its documents, by name: it outlives a phone that is turned, which has another sheet. */
export type Memory = Map<string, unknown>;

const Remembering = createContext<Memory>(new Map());

/** Where a debrief remembers; one a plan. */
export const RememberingIn = Remembering.Provider;

export function useMemory(): Memory {
  return useContext(Remembering);
}

/**
 * As `useState`, remembered where the same is drawn anew.
 *
 * @param name of what is remembered, with the flight that it belongs to
 */
export function useRemembered<Value>(name: string, first: Value): readonly [Value, (value: Value) => void] {
  const memory = useMemory();
  const [value, setValue] = useState(() => (memory.has(name) ? (memory.get(name) as Value) : first));
  const set = useCallback(
    (next: Value): void => {
      memory.set(name, next);
      setValue(next);
    },
    [memory, name],
  );
  return [value, set];
}
