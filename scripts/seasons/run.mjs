// Calibration of the whole decision over simulated seasons, recorded beside it:  node scripts/seasons/run.mjs [SEASONS] [SEED]

import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { bundled } from "../bundled.mjs";

const [seasons = 1000, seed = 1] = process.argv.slice(2).map(Number);
const flights = 4;
const draws = 512;
const folder = mkdtempSync(join(tmpdir(), "seasons-"));
const program = await bundled("scripts/seasons/seasons.ts", join(folder, "seasons.mjs"));
const { reliability, offBy } = await import(
  await bundled("engine/test/seasons/reliability.ts", join(folder, "reliability.mjs"))
);

/** All openings of so many seasons, shared out among the cores. */
async function openingsOf(count, believed) {
  const parts = Math.min(2, availableParallelism());
  const runs = Array.from({ length: parts }, (_, part) => {
    const share = Math.floor(((part + 1) * count) / parts) - Math.floor((part * count) / parts);
    const out = join(folder, `${believed}-${part}.json`);
    const words = [program, share, flights, draws, seed * 100 + part, believed, out].map(String);
    return new Promise((done, failed) => {
      spawn(process.execPath, words, { stdio: "inherit" }).on("exit", (code) =>
        code === 0 ? done(JSON.parse(readFileSync(out, "utf8"))) : failed(new Error(`ended with ${code}`)),
      );
    });
  });
  return (await Promise.all(runs)).flat();
}

const started = Date.now();
const right = await openingsOf(seasons, 1);
const wrong = await openingsOf(Math.ceil(seasons / 5), 1 / 3);
const ninety = (openings) => offBy(openings.filter(({ odds }) => odds >= 0.88 && odds < 0.92));
const first = (openings) => openings.filter(({ learned }) => learned === 0);
const result = {
  date: new Date().toISOString().slice(0, 10),
  seasons,
  flights,
  draws,
  seed,
  seconds: Math.round((Date.now() - started) / 1000),
  all: offBy(right),
  aboutNinety: ninety(right),
  byFlightsLearned: Array.from({ length: flights }, (_, n) => offBy(right.filter(({ learned }) => learned === n))),
  reliability: reliability(right),
  wrongPrior: {
    what: "drag and delay believed three times better known than they are",
    seasons: Math.ceil(seasons / 5),
    all: offBy(wrong),
    firstFlights: offBy(first(wrong)),
    aboutNinety: ninety(wrong),
    reliability: reliability(wrong),
  },
};
const text = JSON.stringify(result, null, 2);
console.log(text);
if (process.argv.length === 2) writeFileSync("scripts/seasons/result.json", `${text}\n`);
const { clean, openings } = result.aboutNinety;
const good =
  Math.abs(clean / openings - 0.9) <= 0.02 &&
  (seasons < 1000 || openings >= 1500) &&
  result.reliability.every(({ off }) => Math.abs(off) < 3.5) &&
  result.wrongPrior.all.off < -4;
process.exit(good ? 0 : 1);
