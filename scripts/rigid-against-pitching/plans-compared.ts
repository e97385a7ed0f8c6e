import { writeFileSync } from "node:fs";
import { type Compared, compare } from "./compare.js";

/*
 * The rigid ensemble against the pitching one on drawn plans.
 * Usage: node scripts/rigid-against-pitching/run.mjs [PLANS] [DRAWS] [SEED] [OUT]
 */

const [plansText = "", drawsText = "", seedText = "", out = ""] = process.argv.slice(2);
const [plans, rigid, seed] = [plansText, drawsText, seedText].map(Number) as [number, number, number];
const draws = { pitching: 10_000, rigid };
const compared: Compared[] = [];
const left: Record<string, number> = {};
for (let number = 0; compared.length < plans; number++) {
  const found = await compare(seed, number, draws);
  if (typeof found === "string") left[found] = (left[found] ?? 0) + 1;
  else {
    compared.push(found);
    process.stderr.write(`${compared.length} of ${plans}\n`);
  }
}

const rounded = (_: string, value: unknown): unknown =>
  typeof value === "number" ? Number(value.toPrecision(5)) : value;
const rows = compared.map((each) => JSON.stringify(each, rounded)).join(",\n");
const head = JSON.stringify({ date: new Date().toISOString().slice(0, 10), seed, draws, left });
writeFileSync(out, `${head.slice(0, -1)},"plans":[\n${rows}\n]}\n`);
