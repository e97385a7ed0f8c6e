import { loadAny, type PlacedMotor, placedMotor } from "@delaywright/documents";
import { useEffect, useState } from "react";
import { storeFiles } from "../standing/store-files.js";
import { useEntry } from "../store/index.js";

/**
 * A motor of the library with its thrust curve.
 *
 * @param path empty: none is chosen
 * @returns undefined until it is read, and where it is not right
 */
export function useMotor(path: string): PlacedMotor | undefined {
  const raw = useEntry(path)?.raw;
  const [read, setRead] = useState<{ readonly of: unknown; readonly motor: PlacedMotor | undefined } | null>(null);
  useEffect(() => {
    if (raw == null) return;
    let left = false;
    void loadAny(path, storeFiles, ["motor"]).then(({ issues, root }) => {
      if (!left) setRead({ of: raw, motor: issues.length === 0 ? placedMotor(root) : undefined });
    });
    return () => {
      left = true;
    };
  }, [path, raw]);
  return raw != null && read?.of === raw ? read.motor : undefined;
}
