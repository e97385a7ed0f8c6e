import { fastFlight } from "../flight/fast/fast-flight.js";
import type { FastOutcome } from "../flight/fast/outcome.js";
import { mostRecords, recordSize } from "../flight/fast/sizes.js";
import type { FastWork } from "../flight/fast/work.js";
import { judgeFlight } from "./judge.js";
import type { JudgeWork } from "./judge-work.js";
import { type Kernel, startKernel } from "./kernel.js";
import { judgedSize, sampleSize } from "./outcomes.js";

/** Numbers that the kernel tells of a flight. */
const toldSize = 10;

/** The hot loop compiled to WebAssembly: flies what `fastFlight` flies and judges as `judgeFlight` does, to the bit. */
export class CompiledFlights {
  private readonly kernel: Kernel;
  /** Whose tables it has, what it judges by, and which flight it flew last. */
  private work: FastWork | null = null;
  private judging: JudgeWork | null = null;
  private flown: FastOutcome | null = null;
  private slots = new Float64Array();
  private air = new Float64Array();
  private wind = new Float64Array();
  private records = new Float64Array();
  /** Its first so many, by their number: flights have a few dozen, and a view of them is not made anew for each. */
  private first: Float64Array[] = [];
  private asked = new Float64Array();
  private told = new Float64Array();
  private judged = new Float64Array();
  private samples = new Float64Array();

  /** @throws where code may not be compiled, as a browser or its page may rule */
  constructor() {
    this.kernel = startKernel({
      cdf: () => this.judging?.cdfIn(this.asked, 0),
      quantile: () => this.judging?.quantileIn(this.asked, 0),
    });
  }

  /** As `fastFlight`. */
  fly(w: FastWork, impulse: number, time: number, tolerance: number, out: FastOutcome): FastOutcome {
    if (this.work !== w) this.layTables(w);
    this.slots.set(w.slots);
    this.air.set(w.air);
    this.wind.set(w.wind);
    out.flew = this.kernel.fly(impulse, time, tolerance) !== 0;
    const { told } = this;
    out.liftOff = told[0]!;
    out.burnout = told[1]!;
    out.guideExitSpeed = told[2]!;
    out.apogeeTime = told[3]!;
    out.apogeeHeight = told[4]!;
    out.landingTime = told[5]!;
    out.landingEast = told[6]!;
    out.landingNorth = told[7]!;
    out.recordCount = told[8]!;
    out.calls = told[9]!;
    w.records.set(this.firstRecords(out.recordCount));
    this.flown = out;
    return out;
  }

  /** Is this the flight that was flown last, and as it was flown, so that it is still known here? */
  knows(w: FastWork, flight: FastOutcome): boolean {
    const { told } = this;
    return this.work === w && this.flown === flight && flight.burnout === told[1] && flight.recordCount === told[8];
  }

  /** As `judgeFlight`, of the flight flown last. */
  judge(
    j: JudgeWork,
    nominalBurnout: number,
    strata: number,
    judged: Float64Array,
    judgedAt: number,
    samples: Float64Array,
    samplesAt: number,
  ): void {
    if (this.judging !== j) this.layOpenings(j);
    this.kernel.judge(nominalBurnout, strata);
    judged.set(this.judged, judgedAt);
    samples.set(this.samples, samplesAt);
  }

  /** @param before how many numbers stand before it */
  private row(at: number, length: number, before = 0): Float64Array<ArrayBuffer> {
    return new Float64Array(this.kernel.memory.buffer, at + before * Float64Array.BYTES_PER_ELEMENT, length);
  }

  private firstRecords(count: number): Float64Array {
    this.first[count] ??= this.records.subarray(0, count * recordSize);
    return this.first[count];
  }

  private layTables(w: FastWork): void {
    const { kernel } = this;
    const tables = [w.air, w.wind, w.coasting, w.thrusting, w.windKnots, w.aero, w.stretches];
    kernel.layTables(...tables.map(({ length }) => length));
    kernel.countTables(
      w.machCount,
      w.lastAirCell,
      w.lastWindCell,
      w.lastMachCell,
      w.lastDragRow,
      w.windKnotCount,
      w.aeroStride,
      w.partCount,
      w.stretchCount,
    );
    kernel.turnBy(w.settled, w.pitches, w.handsOver);
    let before = 0;
    for (const table of tables) {
      this.row(kernel.tablesAt(), table.length, before).set(table);
      before += table.length;
    }
    this.work = w;
    this.flown = null;
    this.findRows();
  }

  private layOpenings(j: JudgeWork): void {
    const { kernel } = this;
    kernel.layOpenings(j.settingCount, j.samples);
    kernel.judgeBy(
      j.fromBurnout,
      j.lineStretch,
      j.speedLimit,
      j.strengthSpeed,
      j.floor,
      j.fillDistance,
      j.hasElectronics,
      j.electronicsDelay,
    );
    this.row(kernel.openingsAt(), j.settingCount).set(j.delays);
    this.row(kernel.openingsAt(), j.settingCount, j.settingCount).set(j.deviations);
    this.judging = j;
    this.findRows();
  }

  /** Rows move when others are laid, and all of them when the memory grows. */
  private findRows(): void {
    const { kernel, work, judging } = this;
    const airCount = work?.air.length ?? 0;
    const settings = judging?.settingCount ?? 0;
    const samples = settings * (judging?.samples ?? 0) * sampleSize;
    const judgedFrom = 2 * settings;
    this.told = this.row(kernel.toldAt(), toldSize);
    this.slots = this.row(kernel.slotsAt(), work?.slots.length ?? 0);
    this.records = this.row(kernel.recordsAt(), mostRecords * recordSize);
    this.first = [];
    this.asked = this.row(kernel.askedAt(), 1);
    this.air = this.row(kernel.tablesAt(), airCount);
    this.wind = this.row(kernel.tablesAt(), work?.wind.length ?? 0, airCount);
    this.judged = this.row(kernel.openingsAt(), settings * judgedSize, judgedFrom);
    this.samples = this.row(kernel.openingsAt(), samples, judgedFrom + settings * judgedSize);
  }
}

/** One for all flights of a thread; null: it can have none and flies them in JavaScript. */
let compiled: CompiledFlights | null | undefined;

function start(): CompiledFlights | null {
  try {
    return new CompiledFlights();
  } catch {
    return null;
  }
}

/** Flies one draw as `fastFlight` does, in the compiled hot loop where there can be one. */
export function compiledFlight(
  w: FastWork,
  impulse: number,
  time: number,
  tolerance: number,
  out: FastOutcome,
): FastOutcome {
  if (compiled === undefined) compiled = start();
  return compiled === null
    ? fastFlight(w, impulse, time, tolerance, out)
    : compiled.fly(w, impulse, time, tolerance, out);
}

/** Judges a flight as `judgeFlight` does, in the compiled hot loop where that flew it last. */
export function compiledJudgement(
  j: JudgeWork,
  w: FastWork,
  flight: FastOutcome,
  nominalBurnout: number,
  strata: number,
  judged: Float64Array,
  judgedAt: number,
  samples: Float64Array,
  samplesAt: number,
): void {
  if (compiled?.knows(w, flight)) compiled.judge(j, nominalBurnout, strata, judged, judgedAt, samples, samplesAt);
  else judgeFlight(j, w, flight, nominalBurnout, strata, judged, judgedAt, samples, samplesAt);
}
