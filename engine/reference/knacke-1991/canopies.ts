import type { CanopyShape } from "../../src/packing/recovery.js";

/** [shape, CD0 low, CD0 high, Cx low, Cx high, fill constant or null] on the nominal area. */
export const canopyRows: readonly (readonly [CanopyShape, number, number, number, number, number | null])[] = [
  ["flat circular", 0.75, 0.8, 1.7, 1.7, 8],
  ["conical", 0.75, 0.9, 1.8, 1.8, 8],
  ["biconical", 0.75, 0.92, 1.8, 1.8, null],
  ["triconical", 0.8, 0.96, 1.8, 1.8, null],
  ["extended skirt 10 %", 0.78, 0.87, 1.4, 1.4, 10],
  ["extended skirt 14.3 %", 0.75, 0.9, 1.4, 1.4, 12],
  ["hemispherical", 0.62, 0.77, 1.6, 1.6, null],
  ["annular", 0.85, 0.95, 1.4, 1.4, null],
  ["cross", 0.6, 0.85, 1.1, 1.2, 11.7],
  ["flat ribbon", 0.45, 0.5, 1.05, 1.05, 14],
  ["conical ribbon", 0.5, 0.55, 1.05, 1.05, 14],
  ["ringslot", 0.56, 0.65, 1.05, 1.05, 14],
  ["ringsail", 0.75, 0.85, 1.1, 1.1, 7],
  ["disk-gap-band", 0.52, 0.58, 1.3, 1.3, null],
  ["guide surface, ribless", 0.3, 0.34, 1.4, 1.4, null],
];
