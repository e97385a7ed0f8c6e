import { prepRefusalWords, type SignedFlight, type SigningInputs } from "@delaywright/documents";
import { useState } from "react";
import { isSettling } from "../compute/index.js";
import { entryNow } from "../store/index.js";
import { keepSigned } from "./flights.js";
import { type Prep, planChanged } from "./use-prep.js";

/** Signs on a flight of a plan. */
export interface Signing {
  /** Why the last signature was refused, in words; null: it was not. */
  readonly refusal: string | null;
  readonly sign: (how: (inputs: SigningInputs & { readonly reason: string }) => SignedFlight, reason?: string) => void;
}

/**
 * How to sign a plan's prep sheet, with the device's clock.
 *
 * @param prep the sheet as it stands
 * @param initials of who signs
 */
export function useSigning({ flight, data }: Prep, initials: string): Signing {
  const [refusal, setRefusal] = useState<string | null>(null);
  const sign: Signing["sign"] = (how, reason = "") => {
    const raw = flight === null ? null : (entryNow(flight.path)?.raw ?? null);
    if (flight === null || raw === null) return;
    // the sheet on the page may lag behind the plan by a moment
    if (typeof raw["plan"] === "string" && isSettling(raw["plan"])) return setRefusal(planChanged);
    const signed = how({ flight: raw, facts: data.facts, by: initials, when: new Date().toISOString(), reason });
    setRefusal(signed.ok ? null : prepRefusalWords(signed.refusal));
    if (signed.ok) keepSigned(flight.path, signed.flight);
  };
  return { refusal, sign };
}
