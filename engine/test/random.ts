import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** Seeded random numbers that are not the product's own. */
export interface Random {
  /** 0…1, ends excluded. */
  readonly uniform: () => number;
  readonly between: (from: number, to: number) => number;
  /** Standard normal, by Box and Muller. */
  readonly normal: () => number;
  readonly chance: (share: number) => boolean;
  readonly pick: <T>(from: readonly T[]) => T;
  /** Sum of squares of `degrees` standard normals over `degrees`. */
  readonly meanSquare: (degrees: number) => number;
}

export function randomOf(seed: number): Random {
  const generator = xoroshiro128plus(seed * 7919 + 13);
  for (let i = 0; i < 100; i++) generator.next();
  const uniform = (): number => ((generator.next() >>> 0) + 0.5) / 4294967296;
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  return {
    uniform,
    between: (from, to) => from + (to - from) * uniform(),
    normal,
    chance: (share) => uniform() < share,
    pick: (from) => from[Math.floor(uniform() * from.length)]!,
    meanSquare: (degrees) =>
      Array.from({ length: degrees }, () => normal() ** 2).reduce((sum, x) => sum + x, 0) / degrees,
  };
}
