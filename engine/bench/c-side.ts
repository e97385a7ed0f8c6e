import { execFileSync, spawnSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { basename, join } from "node:path";
import type { EnsembleSpec } from "../src/spread/ensemble.js";
import { dumpEnsemble } from "./dump.js";
import type { Means } from "./means.js";

/** How the C side is compiled: as fast as the compiler makes it without changing what it computes. */
export const compilerFlags = ["-O3", "-march=native"] as const;

/** First line of what the C compiler says of itself, or null where there is none. */
export function compilerName(): string | null {
  const run = spawnSync("gcc", ["--version"], { encoding: "utf8" });
  return run.status === 0 ? (run.stdout.split("\n")[0] as string) : null;
}

/**
 * Compiles `ensemble.c` or `rigid.c`.
 *
 * @returns path of the program, in `folder`
 */
export function compile(source: string, folder: string): string {
  const program = join(folder, basename(source, ".c"));
  execFileSync("gcc", [...compilerFlags, "-o", program, source, "-lm"], { stdio: ["ignore", "ignore", "inherit"] });
  return program;
}

/** What the C side printed: flights a second of each repeat, and the means. */
export interface CRun extends Means {
  readonly rates: readonly number[];
}

/** Writes the inputs for the C side; flies draws `from` … `to` − 1 as often as asked. */
export function prepareC(
  program: string,
  spec: EnsembleSpec,
  folder: string,
): (from: number, to: number, repeats: number) => CRun {
  const inputs = join(folder, `${spec.options.model}.txt`);
  writeFileSync(inputs, dumpEnsemble(spec));
  return (from, to, repeats) => {
    const printed = execFileSync(program, [inputs, String(from), String(to), String(repeats)], { encoding: "utf8" });
    const row = (name: string): number[] => {
      const line = printed.split("\n").find((l) => l.startsWith(`${name} `));
      if (line === undefined) throw new Error(`the C side printed no ${name}`);
      return line.split(" ").slice(2).map(Number);
    };
    return { rates: row("rates"), flights: row("flights"), judged: row("judged"), samples: row("samples") };
  };
}
