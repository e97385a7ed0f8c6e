import type { Issue, Raw } from "@delaywright/documents";
import { startTransition, useEffect, useRef, useState } from "react";
import type { DebriefAsk, DebriefTold, Moved } from "../compute/debrief/protocol.js";
import { debriefClient } from "../compute/debrief-client.js";
import { type Entry, readRecord, useEntries, useEntriesIf } from "../store/index.js";
import { referencesOf } from "../store/references.js";
import { type FlightLog, logOf } from "./log-store.js";
import { useMemory } from "./remembered.js";
import { plotPoints } from "./use-stretch.js";

/** How far a debrief has come. */
export interface Debriefing {
  /** The last that was told, also while a newer one is under way. */
  readonly told: DebriefTold | null;
  readonly issues: readonly Issue[];
  /** `no-record`: the log's file is not on this device. */
  readonly state: "idle" | "reading" | "flying" | "settled" | "wrong" | "no-record" | "failed";
  readonly failure: string | null;
}

/** The last debrief of a flight that was told to its end, and what it was asked with. */
interface Settled {
  readonly key: string;
  readonly debriefing: Debriefing;
}

const idle: Debriefing = Object.freeze({ told: null, issues: [], state: "idle", failure: null });

/** How long documents stand still before they are looked at [ms]. */
const REST = 500;

/** The plan, all flights, and what they refer to. */
function documentsFor(plan: string, entries: readonly Entry[]): Readonly<Record<string, Raw>> {
  const byPath = new Map(entries.map((entry) => [entry.path, entry]));
  const waiting = [plan, ...entries.filter(({ kind }) => kind === "flight").map(({ path }) => path)];
  const found = new Map<string, Raw>();
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    const raw = found.has(path) ? null : (byPath.get(path)?.raw ?? null);
    if (raw === null) continue;
    found.set(path, raw);
    waiting.push(...referencesOf(raw));
  }
  return Object.fromEntries([...found].sort(([one], [other]) => (one < other ? -1 : 1)));
}

/** Has the worker open a log's file; false: it is not on this device, or not whole. */
async function opened({ source }: FlightLog): Promise<boolean> {
  if (debriefClient.opened === source) return true;
  const gzip = await readRecord(source);
  if (gzip === null) return false;
  return (await debriefClient.open(source, { bytes: gzip, gzip: true })) !== null;
}

/**
 * A flight debriefed, and again with each change of what it rests on.
 *
 * @param plan path of the plan
 * @param flight the flight's document; null: there is none
 * @param moved events that the flyer moved, on the record's clock; null: as written down with the flight
 * @param waits something else is to be answered first
 */
export function useDebrief(plan: string, flight: Entry | null, moved: Moved | null, waits: boolean): Debriefing {
  const logs = useEntries("log");
  const log = flight?.raw == null ? null : logOf(flight.raw, logs);
  const found = flight?.raw?.["findings"];
  const path = flight?.path ?? null;
  const asks = path !== null && (log !== null || found !== undefined);
  const entries = useEntriesIf(asks);
  const memory = useMemory();
  const remembered = asks ? (memory.get(`${path} debrief`) as Settled | undefined) : undefined;
  const [debriefing, tell] = useState<Debriefing>(remembered?.debriefing ?? idle);
  const before = useRef<{ readonly key: string; readonly flight: string | null }>({
    key: remembered?.key ?? "",
    flight: remembered === undefined ? null : path,
  });
  const number = flight?.raw?.["logFlight"];
  const record =
    log === null
      ? null
      : {
          file: log.name,
          mapping: log.mapping,
          ...(typeof number === "number" ? { number } : {}),
          ...(moved === null ? {} : { moved }),
        };
  const ask: DebriefAsk | null =
    path === null || !asks ? null : { documents: documentsFor(plan, entries), plan, flight: path, record };
  const key = ask === null ? "" : JSON.stringify([ask, log?.source]);
  const latest = useRef({ ask, log });
  latest.current = { ask, log };

  useEffect(() => {
    if (before.current.flight === path) return;
    tell(idle);
    before.current = { key: "", flight: path };
  }, [path]);

  useEffect(() => {
    if (waits || key === before.current.key) return;
    if (key === "") {
      before.current = { ...before.current, key };
      tell(idle);
      return;
    }
    let heard = true;
    let end = (): void => undefined;
    const say = (change: Partial<Debriefing>): void => {
      if (heard) tell((last) => ({ ...last, failure: null, issues: [], ...change }));
    };
    const fail = (reason: string): void => say({ state: "failed", failure: reason });
    const begin = async (): Promise<void> => {
      const asked = latest.current;
      if (asked.ask === null) return;
      say({ state: "reading" });
      if (asked.log !== null && !(await opened(asked.log))) {
        say({ state: "no-record", told: null });
        return;
      }
      if (!heard) return;
      before.current = { ...before.current, key };
      const stop = debriefClient.debrief(
        { ...asked.ask, points: plotPoints() },
        {
          told: (told) => {
            if (heard && told.settled)
              memory.set(`${path} debrief`, { key, debriefing: { ...idle, told, state: "settled" } } satisfies Settled);
            // drawn in steps: hands on the page come first
            startTransition(() => say({ told, state: told.settled ? "settled" : "flying" }));
          },
          wrong: (issues) => say({ state: "wrong", issues }),
          failed: fail,
        },
      );
      end = () => void stop();
    };
    const timer = setTimeout(
      () => begin().catch((error: unknown) => fail(error instanceof Error ? error.message : "unknown")),
      before.current.key === "" ? 0 : REST,
    );
    return () => {
      heard = false;
      clearTimeout(timer);
      end();
      // what was not told to its end is asked again
      before.current = { ...before.current, key: "" };
    };
  }, [key, waits, path, memory]);
  return debriefing;
}
