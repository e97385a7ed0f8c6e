import { parentPort } from "node:worker_threads";
import { judgeMotor, memoryOf, type PreparedEnsemble, prepareEnsemble, type ShortlistSpec } from "@delaywright/engine";
import type { MotorTask, Task } from "./io/pool.js";

let prepared: { readonly job: number; readonly fly: PreparedEnsemble } | undefined;
let shortlist: ShortlistSpec | undefined;

function flyRun(task: Task): void {
  if (task.spec !== undefined) prepared = { job: task.job, fly: prepareEnsemble(task.spec) };
  if (prepared?.job !== task.job) throw new Error("a run came before its spec");
  const chunk = prepared.fly(task.from, task.to);
  parentPort?.postMessage(chunk, memoryOf(chunk));
}

async function judge(task: MotorTask): Promise<void> {
  shortlist = task.shortlist ?? shortlist;
  if (shortlist === undefined) throw new Error("a motor came before its plan");
  parentPort?.postMessage(await judgeMotor(shortlist, task.candidate));
}

parentPort?.on("message", (task: Task | MotorTask) => {
  if ("candidate" in task) return judge(task);
  flyRun(task);
});
