import { loadPlan, planToEngine } from "@delaywright/documents";
import { diskFiles } from "/work/six/cli/src/io/files.js";
import { decide, fly } from "@delaywright/engine";
import { prepareEnsemble } from "/work/six/engine/src/spread/ensemble.js";
const loaded = await loadPlan("/work/six/cli/examples/worked-example/plan.json", diskFiles);
const made = planToEngine(loaded.parts!); if (!made.ok) throw 1;
let spec: any;
await decide(made.inputs, { seed: 1, draws: 64, run: async (s: any, a: number, b: number) => { spec ??= s; return prepareEnsemble(s)(a, b); } } as any);
const run = prepareEnsemble(spec);
run(0, 3000);
for (let r = 0; r < Number(process.argv[2] ?? 4); r++) { const t = process.cpuUsage().user; run(0, 4000); const u = process.cpuUsage().user - t; console.log((u / 4000).toFixed(2), "us per draw"); }
