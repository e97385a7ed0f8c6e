import * as n from "./dormand-prince-numbers.js";

/**
 * Coefficients of the embedded Runge-Kutta pair of order 5(4) with seven stages, the last equal to the first of the next step.
 *
 * `nodes` c, `matrix` a (row i gives stage i + 2), `error` the difference of the two orders, `dense` the extra weight of the
 * continuous extension of order 4.
 *
 * @source J. R. Dormand, P. J. Prince, J. Comp. Appl. Math. 6 (1980); continuous extension as in Hairer, Nørsett, Wanner,
 *   Solving Ordinary Differential Equations I (1993), II.6. Written from memory; the test checks all 17 conditions of order 5
 */
export const dormandPrince = Object.freeze({
  nodes: [0, n.c2, n.c3, n.c4, n.c5, 1, 1],
  matrix: [
    [n.a21],
    [n.a31, n.a32],
    [n.a41, n.a42, n.a43],
    [n.a51, n.a52, n.a53, n.a54],
    [n.a61, n.a62, n.a63, n.a64, n.a65],
    [n.b1, 0, n.b3, n.b4, n.b5, n.b6],
  ],
  error: [n.e1, 0, n.e3, n.e4, n.e5, n.e6, n.e7],
  dense: [n.d1, 0, n.d3, n.d4, n.d5, n.d6, n.d7],
} as const);
