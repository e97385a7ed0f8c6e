import { useSyncExternalStore } from "react";

const QUERY = "(max-width: 600px)";

function subscribe(changed: () => void): () => void {
  const query = matchMedia(QUERY);
  query.addEventListener("change", changed);
  return () => query.removeEventListener("change", changed);
}

/** Whether the page is as narrow as a phone. */
export function useNarrow(): boolean {
  return useSyncExternalStore(
    subscribe,
    () => matchMedia(QUERY).matches,
    () => false,
  );
}
