import { fastFlight } from "./fast-flight.js";
import { kernelCode } from "./kernel-code.js";
import type { FastOutcome } from "./outcome.js";
import { mostRecords, recordSize } from "./sizes.js";
import type { FastWork } from "./work.js";

declare const WebAssembly: {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (module: object) => { readonly exports: object };
};
declare const atob: (text: string) => string;

/** What the compiled hot loop offers: addresses are in bytes. */
interface Exports {
  readonly memory: { readonly buffer: ArrayBuffer };
  readonly lay: (...lengths: readonly number[]) => void;
  readonly count: (...counts: readonly number[]) => void;
  readonly turn: (settled: boolean, pitches: boolean, handsOver: boolean) => void;
  readonly fly: (impulse: number, time: number, tolerance: number) => number;
  readonly slotsAt: () => number;
  readonly recordsAt: () => number;
  readonly airAt: () => number;
  readonly windAt: () => number;
  readonly coastingAt: () => number;
  readonly thrustingAt: () => number;
  readonly windKnotsAt: () => number;
  readonly aeroAt: () => number;
  readonly stretchesAt: () => number;
  readonly liftOff: () => number;
  readonly burnout: () => number;
  readonly guideExitSpeed: () => number;
  readonly apogeeTime: () => number;
  readonly apogeeHeight: () => number;
  readonly landingTime: () => number;
  readonly landingEast: () => number;
  readonly landingNorth: () => number;
  readonly recordCount: () => number;
  readonly calls: () => number;
}

/** The hot loop compiled to WebAssembly: flies what `fastFlight` flies, to the bit. */
export class CompiledFlight {
  private readonly kernel: Exports;
  /** Whose tables it has. */
  private laid: FastWork | null = null;
  private slots = new Float64Array();
  private air = new Float64Array();
  private wind = new Float64Array();
  private records = new Float64Array();

  /** @throws where code may not be compiled, as a browser or its page may rule */
  constructor() {
    const bytes = Uint8Array.from(atob(kernelCode), (letter) => letter.charCodeAt(0));
    this.kernel = new WebAssembly.Instance(new WebAssembly.Module(bytes)).exports as Exports;
  }

  fly(w: FastWork, impulse: number, time: number, tolerance: number, out: FastOutcome): FastOutcome {
    const { kernel } = this;
    if (this.laid !== w) this.lay(w);
    this.slots.set(w.slots);
    this.air.set(w.air);
    this.wind.set(w.wind);
    out.flew = kernel.fly(impulse, time, tolerance) !== 0;
    out.liftOff = kernel.liftOff();
    out.burnout = kernel.burnout();
    out.guideExitSpeed = kernel.guideExitSpeed();
    out.apogeeTime = kernel.apogeeTime();
    out.apogeeHeight = kernel.apogeeHeight();
    out.landingTime = kernel.landingTime();
    out.landingEast = kernel.landingEast();
    out.landingNorth = kernel.landingNorth();
    out.recordCount = kernel.recordCount();
    out.calls = kernel.calls();
    w.records.set(this.records.subarray(0, out.recordCount * recordSize));
    return out;
  }

  private lay(w: FastWork): void {
    const { kernel } = this;
    kernel.lay(
      w.air.length,
      w.wind.length,
      w.coasting.length,
      w.thrusting.length,
      w.windKnots.length,
      w.aero.length,
      w.stretches.length,
    );
    kernel.count(
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
    kernel.turn(w.settled, w.pitches, w.handsOver);
    // only now: laying may have moved the memory
    const row = (at: number, length: number) => new Float64Array(kernel.memory.buffer, at, length);
    row(kernel.coastingAt(), w.coasting.length).set(w.coasting);
    row(kernel.thrustingAt(), w.thrusting.length).set(w.thrusting);
    row(kernel.windKnotsAt(), w.windKnots.length).set(w.windKnots);
    row(kernel.aeroAt(), w.aero.length).set(w.aero);
    row(kernel.stretchesAt(), w.stretches.length).set(w.stretches);
    this.slots = row(kernel.slotsAt(), w.slots.length);
    this.air = row(kernel.airAt(), w.air.length);
    this.wind = row(kernel.windAt(), w.wind.length);
    this.records = row(kernel.recordsAt(), mostRecords * recordSize);
    this.laid = w;
  }
}

/** One for all flights of a thread; null: it has none and flies them in JavaScript. */
let kernel: CompiledFlight | null | undefined;

function compiled(): CompiledFlight | null {
  try {
    return new CompiledFlight();
  } catch {
    return null;
  }
}

/** Flies one draw as `fastFlight` does, by the compiled hot loop where there can be one. */
export function compiledFlight(
  w: FastWork,
  impulse: number,
  time: number,
  tolerance: number,
  out: FastOutcome,
): FastOutcome {
  if (kernel === undefined) kernel = compiled();
  return kernel === null ? fastFlight(w, impulse, time, tolerance, out) : kernel.fly(w, impulse, time, tolerance, out);
}
