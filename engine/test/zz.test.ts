import { test } from "vitest";
import { plan } from "./plan.js";
import { decide } from "../src/decision/decide.js";
const p = 0.79375e-3;
test("x", async () => {
  for (const removed of [0, 4, 6, 8]) {
    const t = performance.now();
    const d = await decide(removed ? { ...plan, cutSoFar: { removedDepth: removed * p, depthError: 1e-4 } } : plan, { draws: 256 });
    console.log(removed, performance.now() - t, JSON.stringify({ coast: d.coast, toCut: d.toCut, air: d.apogeeAirspeed, set: d.settings.map((s) => [s.delay, s.odds.clean, s.odds.holds]), over: d.overCut && { ...d.overCut, ballast: d.overCut.ballast.map(b => [b.from, b.to, b.best]) }, warn: d.warnings.map((w) => w.code), st: d.strength, checks: d.checks.filter((c) => c.verdict !== "pass").map((c) => c.code) }, null, 0));
  }
});
