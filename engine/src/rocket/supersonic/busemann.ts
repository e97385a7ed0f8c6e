/**
 * Coefficients of the pressure on a facet in plane supersonic flow, by its angle θ to the flow: Cp = C₁ θ + C₂ θ².
 *
 * Small angles, attached shocks, ratio of specific heats 1.4.
 *
 * @param mach > 1
 * @param steepest facet that it is meant for [rad]; C₂ is held so that it never takes away more than half of that facet's first order
 * @returns C₁ (Ackeret) and C₂
 * @source A. Busemann, Volta congress, 1935: C₁ = 2/β, C₂ = ((γ + 1) M⁴ − 4 β²)/(2 β⁴); memory, held against oblique shocks and
 * Prandtl-Meyer expansions in `engine/reference/naca-1135`
 * @example
 * busemann(2); // { first: 1.1547005, second: 1.4666667 }
 */
export function busemann(mach: number, steepest = 0): { readonly first: number; readonly second: number } {
  const square = mach * mach - 1;
  const first = 2 / Math.sqrt(square);
  const second = (2.4 * mach ** 4 - 4 * square) / (2 * square * square);
  return { first, second: Math.min(second, first / (2 * steepest)) };
}
