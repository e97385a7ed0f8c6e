/**
 * Why nothing could be written.
 *
 * `quota`: no room; `aborted`: the browser broke the write off; `blocked`: the database is closed or held by another tab;
 * `unavailable`: the browser gives no database, so nothing is kept.
 */
export type FailedSaving = "quota" | "aborted" | "blocked" | "unavailable" | "unknown";

/** Whether everything that was changed is kept. */
export interface Saving {
  /** `upgraded-elsewhere`: a newer version of the app runs in another tab, and this one must be loaded again. */
  readonly state: "saved" | "saving" | "failed" | "upgraded-elsewhere";
  /** When something was last written [ms]; null: not since the page was loaded. */
  readonly at: number | null;
  readonly reason?: FailedSaving;
  /** Paths of what is not kept yet. */
  readonly unsaved: readonly string[];
}

/** Why a write failed. Names are those of DOMException, which the library passes on, at times one level down. */
export function reasonOf(error: unknown): FailedSaving {
  const names = new Set<string>();
  let each: unknown = error;
  for (let depth = 0; depth < 5 && typeof each === "object" && each !== null; depth += 1) {
    names.add(String((each as { name?: unknown }).name));
    each = (each as { inner?: unknown }).inner;
  }
  if (names.has("QuotaExceededError")) return "quota";
  if (names.has("DatabaseClosedError") || names.has("InvalidStateError")) return "blocked";
  if (names.has("MissingAPIError") || names.has("SecurityError")) return "unavailable";
  return names.has("AbortError") ? "aborted" : "unknown";
}
