import { newFlight, type Raw } from "@delaywright/documents";
import { addDocument, changeDocuments, type Entry, entryNow } from "../store/index.js";

/** A flight that is being signed for. */
export interface OpenFlight {
  readonly path: string;
  readonly name: string;
  readonly raw: Raw;
}

/** The flights of a plan, the newest first. */
export function flightsOf(plan: string, entries: readonly Entry[]): readonly OpenFlight[] {
  return entries
    .filter(({ kind, raw }) => kind === "flight" && raw?.["plan"] === plan)
    .toSorted((one, other) => other.savedAt - one.savedAt || (one.path < other.path ? 1 : -1))
    .flatMap(({ path, name, raw }) => (raw === null ? [] : [{ path, name, raw }]));
}

/** Begins a flight of a plan: a document of its own, empty until it is signed for. */
export function beginFlight(plan: Entry): void {
  const motor = plan.raw?.["motor"];
  const inHand = typeof motor === "string" && entryNow(motor)?.kind === "motor-in-hand" ? motor : undefined;
  addDocument("flight", newFlight(plan.name, plan.path, inHand));
}

/** Keeps what was signed. Undo passes it over: a signature is taken back on the sheet, with its reason. */
export function keepSigned(path: string, flight: Raw): void {
  changeDocuments("sign-off", [{ path, raw: flight }], { signed: true });
}
