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
  nodes: [0, 1 / 5, 3 / 10, 4 / 5, 8 / 9, 1, 1],
  matrix: [
    [1 / 5],
    [3 / 40, 9 / 40],
    [44 / 45, -56 / 15, 32 / 9],
    [19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729],
    [9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656],
    [35 / 384, 0, 500 / 1113, 125 / 192, -2187 / 6784, 11 / 84],
  ],
  error: [71 / 57600, 0, -71 / 16695, 71 / 1920, -17253 / 339200, 22 / 525, -1 / 40],
  dense: [
    -12715105075 / 11282082432,
    0,
    87487479700 / 32700410799,
    -10690763975 / 1880347072,
    701980252875 / 199316789632,
    -1453857185 / 822651844,
    69997945 / 29380423,
  ],
} as const);
