import { expect, test } from "vitest";
import { Line } from "./line.js";
import type { Task } from "./task.js";
import type { WorkKind } from "./work.js";

const tick = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

/** A line whose work takes some steps and notes what it does. */
function noted() {
  const notes: string[] = [];
  const failures: unknown[] = [];
  const line = new Line((_, error) => failures.push(error));
  const add = (kind: WorkKind, job: number, steps = 3, fails = false): void => {
    const run = async (task: Task): Promise<void> => {
      notes.push(`${job} starts`);
      for (let i = 0; i < steps; i++) {
        await tick();
        task.check();
      }
      if (fails) throw new Error("defect");
      notes.push(`${job} ends`);
    };
    line.add({ kind, job, plan: "", run });
  };
  const quiet = async (): Promise<void> => {
    for (let i = 0; i < 60; i++) await tick();
  };
  return { line, notes, failures, add, quiet };
}

test("Line does the most urgent first, and equals in the order they came", async () => {
  const { notes, add, quiet } = noted();
  add("window", 1);
  add("brief", 2);
  add("brief", 3);
  add("pictures", 4);
  await quiet();
  expect(notes.filter((note) => note.endsWith("ends"))).toEqual(["1 ends", "4 ends", "2 ends", "3 ends"]);
});

test("Line lays aside what is less urgent and starts it again afterwards", async () => {
  const { notes, failures, add, quiet } = noted();
  add("brief", 1);
  await tick();
  add("plan", 2);
  await quiet();
  expect(notes).toEqual(["1 starts", "2 starts", "2 ends", "1 starts", "1 ends"]);
  expect(failures).toHaveLength(0);
});

test("Line drops a job for good, be it under way, laid aside or waiting", async () => {
  const { line, notes, add, quiet } = noted();
  add("brief", 1);
  add("brief", 2);
  await tick();
  add("plan", 3);
  line.drop(1);
  line.drop(2);
  await tick();
  await tick();
  line.drop(3);
  await quiet();
  expect(notes).toEqual(["1 starts", "3 starts"]);
});

test("Line tells of work that failed and goes on", async () => {
  const { notes, failures, add, quiet } = noted();
  add("plan", 1, 1, true);
  add("plan", 2);
  await quiet();
  expect(failures).toMatchObject([{ message: "defect" }]);
  expect(notes.at(-1)).toBe("2 ends");
});
