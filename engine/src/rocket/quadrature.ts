/** Nodes and weights of the 16-point Gauss-Legendre rule on −1…1, the positive half. Abramowitz and Stegun, table 25.4; memory, checked by the tests. */
const NODES: readonly (readonly [node: number, weight: number])[] = [
  [0.09501250983763744, 0.1894506104550685],
  [0.2816035507792589, 0.18260341504492358],
  [0.45801677765722737, 0.16915651939500254],
  [0.6178762444026438, 0.14959598881657674],
  [0.755404408355003, 0.12462897125553388],
  [0.8656312023878318, 0.09515851168249279],
  [0.9445750230732326, 0.062253523938647894],
  [0.9894009349916499, 0.027152459411754096],
];

const GRADING = 40;

function panel(f: (s: number) => number, from: number, to: number): number {
  const middle = (from + to) / 2;
  const half = (to - from) / 2;
  let sum = 0;
  for (const [node, weight] of NODES) sum += weight * (f(middle - half * node) + f(middle + half * node));
  return half * sum;
}

/**
 * Integral over 0…1 of a function that may behave like a root or a power at its ends.
 *
 * Gauss-Legendre on panels that halve towards both ends; better than 1e-11 for the profiles of noses.
 *
 * @param f finite inside 0…1
 * @returns the integral
 * @example
 * integrateUnit((s) => Math.sqrt(s)); // 0.6666666667
 */
export function integrateUnit(f: (s: number) => number): number {
  const mirrored = (s: number) => f(1 - s);
  let sum = 0;
  for (let k = 1; k <= GRADING; k++) {
    const from = k === GRADING ? 0 : 2 ** -(k + 1);
    sum += panel(f, from, 2 ** -k) + panel(mirrored, from, 2 ** -k);
  }
  return sum;
}
