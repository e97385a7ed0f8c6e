export const base: readonly (readonly [mach: number, printed: number])[] = [
  [0, 0.12],
  [0.3, 0.1317],
  [0.6, 0.1668],
  [0.9, 0.2253],
  [1.2, 0.208333],
  [2, 0.125],
];

export const wave: readonly (readonly [mach: number, fineness: number, printed: number])[] = [
  [1.2, 3, 0.1363645],
  [1.5, 3, 0.1145573],
  [2, 3, 0.0975962],
  [1.2, 5, 0.058084],
  [1.5, 5, 0.0487953],
  [2, 5, 0.0415708],
];
