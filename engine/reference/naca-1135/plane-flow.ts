/** Pressure coefficient on a wedge: the weak oblique shock found by bisection between the Mach angle and the greatest turn. */
export function wedgePressure(mach: number, turn: number): number {
  const turnOf = (shock: number) => {
    const normal = (mach * Math.sin(shock)) ** 2;
    return Math.atan((2 / Math.tan(shock)) * ((normal - 1) / (mach * mach * (1.4 + Math.cos(2 * shock)) + 2)));
  };
  let low = Math.asin(1 / mach);
  let high = low;
  while (turnOf(high) < turn) {
    high += 0.001;
    if (high > 1.5) return Number.NaN;
  }
  for (let k = 0; k < 80; k++) {
    const middle = (low + high) / 2;
    if (turnOf(middle) < turn) low = middle;
    else high = middle;
  }
  const jump = (2.8 * (mach * Math.sin(high)) ** 2 - 0.4) / 2.4;
  return (jump - 1) / (0.7 * mach * mach);
}

/** Prandtl-Meyer angle by quadrature of √(M² − 1)/(1 + 0.2 M²) dM/M from 1 on, with M = 1 + s² so that the start is smooth. */
export function turnByQuadrature(mach: number): number {
  const end = Math.sqrt(mach - 1);
  const count = 2000;
  let sum = 0;
  for (let k = 0; k <= count; k++) {
    const s = (end * k) / count;
    const m = 1 + s * s;
    const weight = k === 0 || k === count ? 1 : k % 2 === 1 ? 4 : 2;
    sum += (weight * Math.sqrt(m * m - 1) * 2 * s) / ((1 + 0.2 * m * m) * m);
  }
  return (sum * end) / (3 * count);
}

/** Pressure coefficient behind an expansion, by bisection on the quadrature. */
export function expansionPressure(mach: number, turn: number): number {
  const wanted = turnByQuadrature(mach) + turn;
  let [low, high] = [mach, mach + 3];
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2;
    if (turnByQuadrature(middle) < wanted) low = middle;
    else high = middle;
  }
  const ratio = ((1 + 0.2 * mach * mach) / (1 + 0.2 * low * low)) ** 3.5;
  return (ratio - 1) / (0.7 * mach * mach);
}

const degree = Math.PI / 180;

/** Greatest difference of a law C₁ θ + C₂ θ² from exact wedges and expansions of 1 to 4 degrees, as a share of C₁ θ, Mach 1.5 to 3. */
export function worstFacetDifference(
  law: (mach: number) => { readonly first: number; readonly second: number },
): number {
  let worst = 0;
  for (const mach of [1.5, 2, 2.5, 3])
    for (const angle of [1, 2, 3, 4]) {
      const theta = angle * degree;
      const { first, second } = law(mach);
      const wedge = wedgePressure(mach, theta) - first * theta - second * theta ** 2;
      const expansion = expansionPressure(mach, theta) + first * theta - second * theta ** 2;
      worst = Math.max(worst, Math.abs(wedge) / (first * theta), Math.abs(expansion) / (first * theta));
    }
  return worst;
}
