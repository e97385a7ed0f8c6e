import { readFileSync } from "node:fs";

const key = ({ pid, tid }) => `${pid} ${tid}`;

/** What the page's main thread did, in a trace of Chromium. */
function mainThread(file) {
  const { traceEvents } = JSON.parse(readFileSync(file, "utf8"));
  const threads = traceEvents.filter((event) => event.name === "thread_name" && event.args.name === "CrRendererMain");
  const mains = new Set(threads.map(key));
  return traceEvents.filter((event) => event.ph === "X" && mains.has(key(event)));
}

const isTask = ({ name }) => /RunTask$/.test(name);

/** A message by which the measuring itself asks the page for something. */
const isAsked = ({ args }) => /DevTools/.test(args?.chrome_mojo_event_info?.mojo_interface_tag ?? "");

/** The main thread's tasks without those in which the measuring asked it for something, longest first by `time` [ms]. */
function ownTasks(file, time) {
  const events = mainThread(file);
  const asked = events.filter(isAsked);
  const holds = (task, { ts }) => ts >= task.ts && ts <= task.ts + task.dur;
  return events
    .filter((event) => isTask(event) && !asked.some((each) => key(each) === key(event) && holds(event, each)))
    .map((task) => time(task) / 1000)
    .sort((a, b) => b - a);
}

/**
 * How long the app's own main-thread tasks took, longest first [ms]: with what other threads took of the processor meanwhile,
 * without the questions of the measuring.
 *
 * @param file what `browser.startTracing` wrote
 */
export function longestTasks(file) {
  return ownTasks(file, ({ dur }) => dur);
}

/**
 * Processor time of the app's own main-thread tasks, longest first [ms]: without the questions of the measuring, and without
 * what other programs took meanwhile.
 *
 * @param file what `browser.startTracing` wrote
 */
export function longestOwnTasks(file) {
  return ownTasks(file, ({ dur, tdur = dur }) => tdur);
}
