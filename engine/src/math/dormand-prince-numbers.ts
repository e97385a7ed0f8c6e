import type { f64 } from "./doubles.js";

export const c2: f64 = 1 / 5;
export const c3: f64 = 3 / 10;
export const c4: f64 = 4 / 5;
export const c5: f64 = 8 / 9;

export const a21: f64 = 1 / 5;
export const a31: f64 = 3 / 40;
export const a32: f64 = 9 / 40;
export const a41: f64 = 44 / 45;
export const a42: f64 = -56 / 15;
export const a43: f64 = 32 / 9;
export const a51: f64 = 19372 / 6561;
export const a52: f64 = -25360 / 2187;
export const a53: f64 = 64448 / 6561;
export const a54: f64 = -212 / 729;
export const a61: f64 = 9017 / 3168;
export const a62: f64 = -355 / 33;
export const a63: f64 = 46732 / 5247;
export const a64: f64 = 49 / 176;
export const a65: f64 = -5103 / 18656;

export const b1: f64 = 35 / 384;
export const b3: f64 = 500 / 1113;
export const b4: f64 = 125 / 192;
export const b5: f64 = -2187 / 6784;
export const b6: f64 = 11 / 84;

export const e1: f64 = 71 / 57600;
export const e3: f64 = -71 / 16695;
export const e4: f64 = 71 / 1920;
export const e5: f64 = -17253 / 339200;
export const e6: f64 = 22 / 525;
export const e7: f64 = -1 / 40;

export const d1: f64 = -12715105075 / 11282082432;
export const d3: f64 = 87487479700 / 32700410799;
export const d4: f64 = -10690763975 / 1880347072;
export const d5: f64 = 701980252875 / 199316789632;
export const d6: f64 = -1453857185 / 822651844;
export const d7: f64 = 69997945 / 29380423;
