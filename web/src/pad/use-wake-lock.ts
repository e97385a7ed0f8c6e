import { useEffect, useState } from "react";

/** Keeps the screen on while the page is looked at; returns whether the device holds it. */
export function useWakeLock(): boolean {
  const [held, setHeld] = useState(false);
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    let over = false;
    let asking = false;
    const ask = async (): Promise<void> => {
      if (over || asking || document.visibilityState !== "visible" || (lock !== null && !lock.released)) return;
      asking = true;
      try {
        const got = await navigator.wakeLock.request("screen");
        if (over) {
          await got.release();
          return;
        }
        lock = got;
        got.addEventListener("release", () => setHeld(false));
        setHeld(true);
      } catch {
        setHeld(false);
      } finally {
        asking = false;
      }
    };
    const onVisible = (): void => void ask();
    if ("wakeLock" in navigator) {
      void ask();
      document.addEventListener("visibilitychange", onVisible);
    }
    return () => {
      over = true;
      document.removeEventListener("visibilitychange", onVisible);
      void lock?.release();
    };
  }, []);
  return held;
}
