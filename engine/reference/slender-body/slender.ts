/** Wave drag on the base area of a nose of fineness f whose squared profile is given over s = x/L, tangent at its end; Bₙ by quadrature. */
export function slenderWaveDrag(squaredRadius: (s: number) => number, fineness: number): number {
  const count = 2000;
  const terms = 40;
  const steps = Array.from({ length: count }, (_, k) => {
    const [from, to] = [(k * Math.PI) / count, ((k + 1) * Math.PI) / count];
    const s = (theta: number) => (1 - Math.cos(theta)) / 2;
    return { middle: (from + to) / 2, rise: squaredRadius(s(to)) - squaredRadius(s(from)) };
  });
  let sum = 0;
  for (let n = 1; n <= terms; n++) {
    // Bₙ = (2/π) ∫ S′ sin nθ dθ, with S′ dθ = dS/(L/2 sin θ)
    const b = steps.reduce((all, { middle, rise }) => all + (rise * Math.sin(n * middle)) / Math.sin(middle), 0);
    sum += n * ((2 / Math.PI) * 2 * b) ** 2;
  }
  // S in base areas, x in lengths: D/q / A = (π/4) Σ n Bₙ² A/L², A/L² = π/(4 f²)
  return (Math.PI ** 2 * sum) / (16 * fineness * fineness);
}

/** Greatest relative difference of noses' drag from the slender limit, Haack's two noses of fineness 6, Mach 1.2 to 2. */
export function worstSlenderDifference(drag: (c: number, fineness: number, mach: number) => number): number {
  let worst = 0;
  for (const c of [0, 1 / 3])
    for (const mach of [1.2, 1.5, 2])
      worst = Math.max(worst, Math.abs(drag(c, 6, mach) / ((1 + (9 * c * c) / 8) / 36) - 1));
  return worst;
}
