import type { Raw } from "@delaywright/documents";
import { useEffect, useMemo, useState } from "react";
import type { FlightLibrary } from "../compute/debrief/protocol.js";
import { debriefClient } from "../compute/debrief-client.js";
import { useEntries } from "../store/index.js";
import { referencesOf } from "../store/references.js";

/** All flights as the worker reads them, kept up to date; null until they are, or where that failed. */
export function useLibrary(): { readonly library: FlightLibrary | null; readonly failure: string | null } {
  const entries = useEntries();
  const [library, set] = useState<FlightLibrary | null>(null);
  const [failure, fail] = useState<string | null>(null);
  const documents = useMemo(() => {
    const byPath = new Map(entries.map((entry) => [entry.path, entry]));
    const found = new Map<string, Raw>();
    const waiting = entries.filter(({ kind }) => kind === "flight").map(({ path }) => path);
    for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
      const raw = found.has(path) ? null : (byPath.get(path)?.raw ?? null);
      if (raw === null) continue;
      found.set(path, raw);
      waiting.push(...referencesOf(raw));
    }
    return Object.fromEntries(found);
  }, [entries]);
  useEffect(() => {
    let waits = true;
    debriefClient.library(documents).then(
      (answer) => {
        if (!waits) return;
        set(answer);
        fail(null);
      },
      (error: unknown) => waits && fail(error instanceof Error ? error.message.slice(0, 200) : "unknown"),
    );
    return () => {
      waits = false;
    };
  }, [documents]);
  return { library, failure };
}
