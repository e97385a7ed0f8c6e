/**
 * A root of a continuous function between two points of opposite sign.
 *
 * Illinois false position with a bisection whenever it is slow: at most some 60 calls.
 *
 * @param f the function
 * @param from one end; `f(from)` and `f(to)` differ in sign
 * @param to the other end
 * @param tolerance width of the bracket at which to stop, in the argument's unit
 * @returns the root, within `tolerance`
 * @example
 * rootBetween((x) => x * x - 2, 0, 2, 1e-12); // 1.414213562373
 */
export function rootBetween(f: (x: number) => number, from: number, to: number, tolerance: number): number {
  let a = from;
  let b = to;
  let fa = f(a);
  let fb = f(b);
  if (fa === 0) return a;
  if (fb === 0) return b;
  for (let i = 0; i < 200 && Math.abs(b - a) > tolerance; i++) {
    const guess = i % 3 === 2 ? 0.5 * (a + b) : (a * fb - b * fa) / (fb - fa);
    const x = guess > Math.min(a, b) && guess < Math.max(a, b) ? guess : 0.5 * (a + b);
    const fx = f(x);
    if (fx === 0) return x;
    if (fx > 0 === fb > 0) {
      b = x;
      fb = fx;
      fa *= 0.5;
    } else {
      a = b;
      fa = fb;
      b = x;
      fb = fx;
    }
  }
  return 0.5 * (a + b);
}
