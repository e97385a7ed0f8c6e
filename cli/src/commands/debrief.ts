import { dirname, isAbsolute, relative, resolve } from "node:path";
import {
  debriefedFlight,
  debrief as debriefFlight,
  type FlightDocument,
  type FlownOutcome,
  flightNumber,
  planToEngine,
  type RecordNamed,
  type UnitSystem,
} from "@delaywright/documents";
import type { GivenColumns } from "../args/columns.js";
import { UsageError } from "../args/usage.js";
import { EXIT, type Io } from "../io/io.js";
import { debriefText } from "../print/debrief/debrief-text.js";
import { issuesText } from "../print/issues.js";
import { jsonText } from "../print/json.js";
import { wrap } from "../print/wrap.js";
import { askedDelay } from "./asked-delay.js";
import { type DecidedArgs, showingProgress } from "./decided.js";
import { type FlightLog, flightLog, isSameFlight, type NoFlightLog } from "./flight-log.js";
import { type FlightsFolder, flightsFolder } from "./flights-folder.js";
import { readyPlan } from "./load.js";
import { keepWhatIsThere, writeOutput } from "./output.js";

/** What `delaywright debrief` was asked. */
export interface DebriefArgs extends DecidedArgs {
  /** A record as CSV, a log's document or a flight's. */
  readonly log: string;
  /** Delay as set [s]. */
  readonly set?: number;
  /** Which flight of the record, from 1. */
  readonly number?: number;
  /** The folder with all flights. */
  readonly flights?: string;
  readonly columns?: GivenColumns;
  readonly outcome?: FlownOutcome;
  /** Why nothing is learned from it. */
  readonly exclude?: string;
  /** Flight document to write. */
  readonly output?: string;
  readonly units?: UnitSystem;
  readonly json?: boolean;
}

const noFlights: FlightsFolder = { flights: [], issues: [] };

/** What happened in a flight, what it means, what was learned, and how much the next odds change because of it. */
export async function debrief(args: DebriefArgs, io: Io): Promise<number> {
  const plan = await readyPlan(args.plan, io);
  if (!plan.ok) return plan.code;
  const folder = args.flights === undefined ? noFlights : await flightsFolder(args.flights, io);
  const log = await flightLog(args.log, { plan: plan.parts, columns: args.columns, others: folder.flights }, io);
  if (!log.ok) return refused(log, io);
  const asked = args.number ?? log.record?.number;
  const number = log.record === null ? undefined : flightNumber(log.record.read.samples, asked);
  const flown = planToEngine(log.flown);
  if (!flown.ok) return refused(flown, io);
  const set = args.set === undefined ? undefined : askedDelay("--set", flown.inputs, args.set);
  await keepOther(args, log, io);
  const others = folder.flights.filter((other) => !isSameFlight(other, log, number, args.output));
  const flight = withExclusion(log.document, args.exclude, io);
  const pool = await io.openPool(args.workers ?? Math.min(io.cores, 4));
  try {
    const made = await debriefFlight(
      {
        flown: log.flown,
        next: plan.parts,
        flight,
        file: log.file,
        ...(log.record === null
          ? {}
          : {
              record: {
                file: log.record.file,
                samples: log.record.read.samples,
                ...(number === undefined ? {} : { number }),
              },
            }),
        ...(set === undefined ? {} : { set }),
        ...(args.outcome === undefined ? {} : { outcome: args.outcome }),
        past: others.map(({ past }) => past),
        issues: [...folder.issues, ...log.issues],
      },
      {
        run: showingProgress(pool, io),
        ...(args.draws === undefined ? {} : { draws: args.draws }),
        ...(args.seed === undefined ? {} : { seed: args.seed }),
        ...(args.model === undefined ? {} : { model: args.model }),
      },
    );
    io.progress.end();
    if (!made.ok) return refused(made, io);
    const { data, findings, forecast } = made;
    if (args.output !== undefined) {
      const record = namedRecord(args.output, log, data.flight.number);
      const document = debriefedFlight(log.raw, {
        findings,
        forecast,
        ...(record === null ? {} : { record }),
        ...(flight.excluded === undefined ? {} : { excluded: flight.excluded }),
      });
      await writeOutput(args.output, jsonText(document), io);
    }
    const seen = log.record?.read ?? null;
    io.out(args.json ? jsonText(data) : debriefText({ data, seen, units: args.units ?? "metric" }, io.colour));
    const { toCut } = data.next.after;
    return toCut === null || (toCut.reachesLeast && toCut.reachesHolds) ? EXIT.done : EXIT.notGoodEnough;
  } finally {
    io.progress.end();
    await pool.close();
  }
}

function refused({ issues, sentences }: Omit<NoFlightLog, "ok">, io: Io): number {
  io.err(
    sentences === undefined ? issuesText(issues) : `${sentences.map((each) => wrap(each, "", "  ")).join("\n")}\n`,
  );
  return EXIT.wrongInput;
}

/** The flight, left out from learning where that was asked for; when is written to the minute, in the flyer's own time. */
function withExclusion(flight: FlightDocument, reason: string | undefined, io: Io): FlightDocument {
  if (reason === undefined) return flight;
  if (reason.trim() === "")
    throw new UsageError('--exclude: a reason is missing, for example --exclude "the canopy was out before lift-off"');
  const now = io.now();
  const two = (value: number): string => String(value).padStart(2, "0");
  const when = `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}T${two(now.getHours())}:${two(now.getMinutes())}`;
  return { ...flight, excluded: { reason: reason.trim(), when } };
}

function namedRecord(output: string, { record }: FlightLog, number: number | null): RecordNamed | null {
  if (record === null || number === null) return null;
  const { mapping, headingsKey } = record.read;
  const source = isAbsolute(record.file) === isAbsolute(output) ? relative(dirname(output), record.file) : record.file;
  return { source: source.replaceAll("\\", "/"), columns: mapping, headings: headingsKey, number };
}

/** A flight that was written before is replaced only by itself, told once more; a record is never written over. */
async function keepOther({ output, log }: DebriefArgs, { flight }: FlightLog, io: Io): Promise<void> {
  if (output === undefined || (flight && resolve(output) === resolve(log))) return;
  const accepted = "a new name is accepted, or the document of the very flight that stands as LOG";
  await keepWhatIsThere(output, { accepted }, io);
}
