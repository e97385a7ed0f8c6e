export const rows: readonly (readonly [mach: number, printed: number])[] = [
  [0.3, 1.022703],
  [0.5, 1.0640722],
  [0.8, 1.1704018],
  [1, 1.2756131],
];
