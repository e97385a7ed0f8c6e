import { kernelCode } from "./kernel-code.js";

declare const WebAssembly: {
  readonly Module: new (bytes: Uint8Array) => object;
  readonly Instance: new (module: object, imports: object) => { readonly exports: object };
};
declare const atob: (text: string) => string;

type Numbers = (...numbers: readonly number[]) => void;

/** What the compiled hot loop offers; where its rows begin is in bytes. */
export interface Kernel {
  readonly memory: { readonly buffer: ArrayBuffer };
  readonly layTables: Numbers;
  readonly countTables: Numbers;
  readonly turnBy: (settled: boolean, pitches: boolean, handsOver: boolean) => void;
  readonly layOpenings: (settings: number, samples: number) => void;
  readonly judgeBy: (
    fromBurnout: boolean,
    lineStretch: number,
    speedLimit: number,
    strengthSpeed: number,
    floor: number,
    fillDistance: number,
    hasElectronics: boolean,
    electronicsDelay: number,
  ) => void;
  readonly fly: (impulse: number, time: number, tolerance: number) => number;
  readonly judge: (nominalBurnout: number, strata: number) => void;
  readonly toldAt: () => number;
  readonly slotsAt: () => number;
  readonly recordsAt: () => number;
  readonly askedAt: () => number;
  /** Air, wind, drag coasting and thrusting, kinks of the wind, aerodynamics, stretches: one behind the other. */
  readonly tablesAt: () => number;
  /** Delays, deviations, what was judged, samples: one behind the other. */
  readonly openingsAt: () => number;
}

/** How the delays of the flight that is judged scatter, in standard deviations: each answers the number that stands at `askedAt`, in its place. */
export interface Scatter {
  readonly cdf: () => void;
  readonly quantile: () => void;
}

/**
 * Starts a kernel: memory and code of its own.
 *
 * @throws where code may not be compiled, as a browser or its page may rule
 */
export function startKernel(scatter: Scatter): Kernel {
  const bytes = Uint8Array.from(atob(kernelCode), (letter) => letter.charCodeAt(0));
  return new WebAssembly.Instance(new WebAssembly.Module(bytes), { scatter }).exports as Kernel;
}
