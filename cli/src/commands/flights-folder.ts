import { join } from "node:path";
import { type Issue, type Loaded, loadAny, type PastFlight, pastFlightOf } from "@delaywright/documents";
import { UsageError } from "../args/usage.js";
import type { Io } from "../io/io.js";

/** A flight document of a folder. */
export interface FolderFlight {
  readonly path: string;
  readonly loaded: Loaded;
  readonly past: PastFlight;
}

/** The flights of a folder, and what is wrong with files that were meant to be some. */
export interface FlightsFolder {
  readonly flights: readonly FolderFlight[];
  readonly issues: readonly Issue[];
}

/** Every flight document of a folder; a broken one stops no other, and is told. */
export async function flightsFolder(folder: string, io: Io): Promise<FlightsFolder> {
  const names = (await io.files.list(folder)).filter((name) => name.endsWith(".json"));
  const flights: FolderFlight[] = [];
  const issues: Issue[] = [];
  for (const name of names) {
    const path = join(folder, name);
    const loaded = await loadAny(path, io.files);
    if (loaded.kind !== "flight" && loaded.root !== undefined) continue;
    issues.push(...loaded.issues);
    const past = pastFlightOf(loaded);
    if (past !== undefined) flights.push({ path, loaded, past });
  }
  if (flights.length === 0 && issues.length === 0)
    throw new UsageError(
      `--flights: no flight found in ${JSON.stringify(folder)}; a folder with flights' documents is accepted, for example --flights flights`,
    );
  return { flights, issues };
}
