import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

/** Random numbers that are not the product's own. */
export interface Random {
  /** Between 0 and 1. */
  readonly uniform: () => number;
  /** Standard normal, by Box and Muller. */
  readonly normal: () => number;
  /** Sum of squares of `degrees` standard normals over `degrees`. */
  readonly meanSquare: (degrees: number) => number;
}

export function randomOf(seed: number): Random {
  const generator = xoroshiro128plus(seed * 7919 + 13);
  const uniform = (): number => ((generator.next() >>> 0) + 0.5) / 4294967296;
  const normal = (): number => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
  for (let i = 0; i < 100; i++) uniform();
  return {
    uniform,
    normal,
    meanSquare: (degrees) => {
      let sum = 0;
      for (let i = 0; i < degrees; i++) sum += normal() ** 2;
      return sum / degrees;
    },
  };
}
