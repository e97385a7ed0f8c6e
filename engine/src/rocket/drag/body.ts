/**
 * By how much the thickness of a body raises its drag above that of its friction.
 *
 * @param fineness length over largest diameter, > 0; held at 1 below
 * @returns factor > 1
 * @source S. F. Hoerner, Fluid-Dynamic Drag (1965), ch. VI: 1 + 1.5/f^1.5 + 7/f³
 * @example
 * bodyFormFactor(10); // 1.0544342
 */
export function bodyFormFactor(fineness: number): number {
  const f = Math.max(fineness, 1);
  return 1 + 1.5 / f ** 1.5 + 7 / f ** 3;
}
