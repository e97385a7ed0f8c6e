/** Blasius' constant: Cf √Re of a laminar plate, from f‴ + f f″/2 = 0 by classical Runge-Kutta; the far end sets the scale of f″(0). */
export function blasiusConstant(): number {
  let [f, g, h] = [0, 0, 1];
  const step = 0.005;
  const rates = (f: number, g: number, h: number): readonly [number, number, number] => [g, h, (-f * h) / 2];
  for (let k = 0; k < 2400; k++) {
    const a = rates(f, g, h);
    const b = rates(f + (step / 2) * a[0], g + (step / 2) * a[1], h + (step / 2) * a[2]);
    const c = rates(f + (step / 2) * b[0], g + (step / 2) * b[1], h + (step / 2) * b[2]);
    const d = rates(f + step * c[0], g + step * c[1], h + step * c[2]);
    f += (step / 6) * (a[0] + 2 * b[0] + 2 * c[0] + d[0]);
    g += (step / 6) * (a[1] + 2 * b[1] + 2 * c[1] + d[1]);
    h += (step / 6) * (a[2] + 2 * b[2] + 2 * c[2] + d[2]);
  }
  return 4 * g ** -1.5;
}
