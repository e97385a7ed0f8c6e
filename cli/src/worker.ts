import { parentPort } from "node:worker_threads";
import { type EnsembleChunk, prepareEnsemble } from "@delaywright/engine";
import type { Task } from "./io/pool.js";

let prepared: { readonly job: number; readonly fly: (from: number, to: number) => EnsembleChunk } | undefined;

parentPort?.on("message", (task: Task) => {
  if (task.spec !== undefined) prepared = { job: task.job, fly: prepareEnsemble(task.spec) };
  if (prepared?.job !== task.job) throw new Error("a run came before its spec");
  const chunk = prepared.fly(task.from, task.to);
  parentPort?.postMessage(chunk, [
    chunk.flights.buffer as ArrayBuffer,
    chunk.judged.buffer as ArrayBuffer,
    chunk.samples.buffer as ArrayBuffer,
  ]);
});
