import { registerSW } from "virtual:pwa-register";
import { useSyncExternalStore } from "react";

/** Whether a newer version of the app waits to be taken, and whether this one works without a network. */
export interface UpdateState {
  readonly waiting: boolean;
  /** Another tab took it: this page is still the older version, until it is loaded again. */
  readonly takenElsewhere: boolean;
  readonly offlineReady: boolean;
}

let state: UpdateState = { waiting: false, takenElsewhere: false, offlineReady: false };
const listeners = new Set<() => void>();

function tell(patch: Partial<UpdateState>): void {
  state = { ...state, ...patch };
  for (const listener of listeners) listener();
}

let take: (reload?: boolean) => Promise<void> = () => Promise.resolve();

/** How often a page that stays open asks for a newer version [ms]. */
const ASK_EVERY = 3_600_000;

/** Keeps the app for use without a network. A newer version is offered, and never taken by itself. */
export function keepOffline(): void {
  if (!("serviceWorker" in navigator)) return;
  take = registerSW({
    immediate: true,
    onNeedRefresh: () => tell({ waiting: true }),
    // in the tab that took it the page is being loaded again by then
    onNeedReload: () => tell({ waiting: false, takenElsewhere: true }),
    onOfflineReady: () => tell({ offlineReady: true }),
    onRegisteredSW(_address, registration) {
      if (registration?.active) tell({ offlineReady: true });
      setInterval(() => {
        if (navigator.onLine) registration?.update().catch(() => {});
      }, ASK_EVERY);
    },
  });
}

/** Takes the newer version: the page loads again once it is in charge. */
export function takeUpdate(): void {
  navigator.serviceWorker.addEventListener("controllerchange", () => location.reload(), { once: true });
  void take(true);
}

/** The state of the app's own version. */
export function useUpdate(): UpdateState {
  return useSyncExternalStore(
    (changed) => {
      listeners.add(changed);
      return () => listeners.delete(changed);
    },
    () => state,
  );
}
