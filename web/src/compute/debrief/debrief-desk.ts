import {
  type FlightDocument,
  flightOfPlan,
  flownParts,
  type Issue,
  type LogMapping,
  learnedNames,
  learnedToDocument,
  loadAny,
  loadPlan,
  memoryFiles,
  type OpenedFlight,
  type PastFlight,
  type PlanParts,
  pastFlightOf,
  pastOdds,
  planToEngine,
  prepareDebrief,
  type Raw,
  type ReadLog,
  readLog,
  recordPath,
} from "@delaywright/documents";
import { calibration, type FlightRecord, flightsIn } from "@delaywright/engine";
import { gunzipped, gzipped } from "../../store/gzip.js";
import { readIncoming } from "../../store/read-incoming.js";
import { shortRuns } from "../desk/short-runs.js";
import { Dropped, Task } from "../desk/task.js";
import { linesOf, predictedSpeedOf, rangesOf, wholeOf } from "./plot-lines.js";
import { predictedBand } from "./predicted-band.js";
import type { BandLine, DebriefAsk, DebriefTold, FromDebrief, LogFile, Previewed, ToDebrief } from "./protocol.js";

/** Points of a plot that is told with a debrief, where nobody says how many. */
const POINTS = 1600;

export interface DebriefDeskOptions {
  readonly post: (message: FromDebrief) => void;
  /** A pause that lets messages be taken. */
  readonly tick: () => Promise<void>;
  /** Draws of the odds, rising: a rough answer first, then the whole one. */
  readonly draws: readonly number[];
}

/** Reads one log and debriefs its flight, away from the page. */
export class DebriefDesk {
  private readonly options: DebriefDeskOptions;
  private bytes = new Uint8Array();
  private opening: LogFile | null = null;
  /** By mapping, of the file that is open. */
  private readonly read = new Map<string, ReadLog>();
  private shown: { readonly record: FlightRecord; readonly zero: number } | null = null;
  private task: Task | null = null;

  constructor(options: DebriefDeskOptions) {
    this.options = options;
  }

  take(message: ToDebrief): void {
    const { job } = message;
    this.answer(message).then(
      (answer) => answer !== null && this.options.post(answer),
      (error: unknown) => {
        const reason = error instanceof Error ? error.message.slice(0, 200) : "unknown";
        this.options.post(error instanceof Dropped ? { kind: "dropped", job } : { kind: "failed", job, reason });
      },
    );
  }

  private async answer(message: ToDebrief): Promise<FromDebrief | null> {
    const { job } = message;
    switch (message.kind) {
      case "open":
        return { kind: "opened", job, previewed: (await this.open(message.file)) ? this.previewed(null) : null };
      case "pack": {
        const { bytes } = this;
        return { kind: "packed", job, packed: { path: recordPath(message.name, bytes), gzip: await gzipped(bytes) } };
      }
      case "preview":
        return { kind: "previewed", job, previewed: this.previewed(message.mapping) };
      case "library":
        return this.library(job, message.documents);
      case "stretch": {
        const { shown } = this;
        return { kind: "lines", job, lines: shown && linesOf(shown.record, shown.zero, message.ask) };
      }
      case "incoming":
        return { kind: "incoming", job, read: await readIncoming(message.files) };
      case "debrief":
        this.task?.drop();
        this.task = new Task();
        return this.debriefed(this.task, job, message.ask);
    }
  }

  /** False: it cannot be unpacked. */
  private async open(file: LogFile): Promise<boolean> {
    this.opening = file;
    const bytes = file.gzip ? await gunzipped(file.bytes) : new Uint8Array(await file.bytes.arrayBuffer());
    if (this.opening !== file) throw new Dropped();
    this.bytes = bytes ?? new Uint8Array();
    this.read.clear();
    return bytes !== null;
  }

  private previewed(mapping: LogMapping | null): Previewed {
    const log = this.log(mapping);
    if (!log.ok) return log;
    const { samples, rows, skipped: _, skippedRows: __, ...preview } = log;
    const flights = flightsIn(samples).map(({ liftOff, top }) => ({ liftOff, top }));
    return { ok: true, preview, rows, flights };
  }

  /** The file as a mapping has it; what was read last is kept, also as what it was guessed to be. */
  private log(mapping: LogMapping | null): ReadLog {
    const key = JSON.stringify(mapping);
    const known = this.read.get(key);
    if (known !== undefined) return known;
    const log = mapping === null ? readLog(this.bytes) : readLog(this.bytes, mapping);
    this.read.clear();
    this.read.set(key, log);
    if (log.ok) this.read.set(JSON.stringify(log.mapping), log);
    return log;
  }

  private async library(job: number, documents: DebriefAsk["documents"]): Promise<FromDebrief> {
    const past = await pastOf(documents, null, this.options.tick);
    const odds = past.flatMap((each) => pastOdds(each) ?? []);
    const library = { past: past.map(({ data }) => data), calibration: calibration(odds) };
    return { kind: "library", job, library };
  }

  private async debriefed(task: Task, job: number, ask: DebriefAsk): Promise<FromDebrief | null> {
    const pause = () => this.pause(task);
    const wrong = (issues: readonly Issue[]): FromDebrief => ({ kind: "wrong", job, issues });
    const files = filesOf(ask.documents);
    const plan = await loadPlan(ask.plan, files);
    if (plan.parts === undefined) return wrong(plan.issues);
    const loaded = await loadAny(ask.flight, files, ["flight"]);
    const flight = loaded.root?.document as FlightDocument | undefined;
    if (loaded.root === undefined || flight === undefined) return wrong(loaded.issues);
    const flown = flownParts(loaded.root) ?? plan.parts;
    const past = await pastOf(ask.documents, ask.flight, pause);
    const record = this.record(ask);
    if (record !== null && !record.ok) return wrong(record.issues);
    const given = { flown, next: plan.parts, flight, file: ask.flight, past };
    const prepared = prepareDebrief(record === null ? given : { ...given, record });
    if (!prepared.ok) return wrong(prepared.issues);
    const plot = prepared.opened === null ? null : this.plotted(prepared.opened, ask.points ?? POINTS);
    const made = planToEngine(flown);
    let band: BandLine | null = null;
    for (const [i, draws] of this.options.draws.entries()) {
      const debriefed = await prepared.debrief({ draws, run: shortRuns(pause) });
      await pause();
      if (!debriefed.ok) return wrong(debriefed.issues);
      const { data, findings, forecast } = debriefed;
      const learned = learnedToDocument(data.learned.learned, learnedNames(plan.parts));
      if (plot !== null && made.ok) band ??= await predictedBand(made.inputs, data, pause);
      const drawn = plot?.(data, band) ?? null;
      const told = { data, findings, forecast, plot: drawn, learned, plan: asFlown(flight.name, flown) };
      this.options.post({ kind: "told", job, told: { ...told, settled: i === this.options.draws.length - 1 } });
    }
    return null;
  }

  /** The samples that are asked for, as the mapping has them; null where none are. */
  private record({ record }: DebriefAsk) {
    if (record === null) return null;
    const { file, mapping, number, moved } = record;
    const log = this.log(mapping);
    if (!log.ok) return { ok: false, issues: log.faults.map((fault): Issue => ({ file, ...fault })) } as const;
    const { samples } = log;
    return {
      ok: true,
      file,
      samples,
      ...(number === undefined ? {} : { number }),
      ...(moved === undefined ? {} : { moved }),
    } as const;
  }

  /** Shows a flight: its plot for each debrief of it. */
  private plotted({ record, events, moved }: OpenedFlight, most: number) {
    const zero = events.liftOff?.time ?? 0;
    this.shown = { record, zero };
    const whole = wholeOf(record, events, zero);
    const ranges = rangesOf(record, events, zero);
    const lines = linesOf(record, zero, { ...whole, most });
    return ({ curves }: DebriefTold["data"], predictedBand: BandLine | null): NonNullable<DebriefTold["plot"]> => {
      const predictedSpeed = predictedSpeedOf(curves);
      return { whole, zero, moved, ranges, lines, predictedSpeed, predictedBand };
    };
  }

  private async pause(task: Task): Promise<void> {
    await this.options.tick();
    task.check();
  }
}

function filesOf(documents: DebriefAsk["documents"]) {
  return memoryFiles(Object.fromEntries(Object.entries(documents).map(([path, raw]) => [path, JSON.stringify(raw)])));
}

/** Every flight among documents but one. */
async function pastOf(
  documents: DebriefAsk["documents"],
  but: string | null,
  pause: () => Promise<void>,
): Promise<PastFlight[]> {
  const files = filesOf(documents);
  const past: PastFlight[] = [];
  for (const [path, raw] of Object.entries(documents)) {
    if (raw["kind"] !== "flight" || path === but) continue;
    const flight = pastFlightOf(await loadAny(path, files, ["flight"]));
    if (flight !== undefined) past.push(flight);
    await pause();
  }
  return past;
}

function asFlown(name: string, parts: PlanParts): Raw {
  return flightOfPlan(name, parts)["plan"] as Raw;
}
