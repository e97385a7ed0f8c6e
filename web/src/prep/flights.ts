import { newFlight, type Raw } from "@delaywright/documents";
import { addDocument, changeDocuments, type Entry, entryNow } from "../store/index.js";

/** A flight that is being signed for. */
export interface OpenFlight {
  readonly path: string;
  readonly name: string;
  readonly raw: Raw;
}

/** The flights of a plan: those that name it, the newest first, then those that were debriefed and hold it as it was flown. */
export function flightsOf(plan: string, entries: readonly Entry[]): readonly OpenFlight[] {
  return entries
    .filter(({ kind, raw }) => kind === "flight" && (raw?.["plan"] === plan || raw?.["planFile"] === plan))
    .toSorted(
      (one, other) =>
        Number(isDebriefed(one)) - Number(isDebriefed(other)) ||
        other.savedAt - one.savedAt ||
        (one.path < other.path ? 1 : -1),
    )
    .flatMap(({ path, name, raw }) => (raw === null ? [] : [{ path, name, raw }]));
}

/** What was found of it is kept, with the plan as it was flown: changing that later does not make it the flight in hand. */
function isDebriefed({ raw }: Entry): boolean {
  return raw?.["planFile"] !== undefined;
}

/**
 * Begins a flight of a plan: a document of its own, empty until it is signed for. Returns its path.
 *
 * @param path of the plan
 */
export function beginFlight(path: string): string {
  const plan = entryNow(path);
  const motor = plan?.raw?.["motor"];
  const inHand = typeof motor === "string" && entryNow(motor)?.kind === "motor-in-hand" ? motor : undefined;
  return addDocument("flight", newFlight(plan?.name ?? path, path, inHand));
}

/** Keeps what was signed. Undo passes it over: a signature is taken back on the sheet, with its reason. */
export function keepSigned(path: string, flight: Raw): void {
  changeDocuments("sign-off", [{ path, raw: flight }], { signed: true });
}
