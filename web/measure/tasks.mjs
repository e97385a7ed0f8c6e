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

/**
 * Durations of the page's main-thread tasks in a trace of Chromium, longest first [ms].
 *
 * @param file what `browser.startTracing` wrote
 */
export function longestTasks(file) {
  return mainThread(file)
    .filter(isTask)
    .map(({ dur }) => dur / 1000)
    .sort((a, b) => b - a);
}

/** A message by which the measuring itself asks the page for something. */
const isAsked = ({ args }) => /DevTools/.test(args?.chrome_mojo_event_info?.mojo_interface_tag ?? "");

/**
 * Processor time of the app's own main-thread tasks, longest first [ms]: without the questions of the measuring, and without
 * what other programs took meanwhile.
 *
 * @param file what `browser.startTracing` wrote
 */
export function longestOwnTasks(file) {
  const events = mainThread(file);
  const asked = events.filter(isAsked);
  const holds = (task, { ts }) => ts >= task.ts && ts <= task.ts + task.dur;
  return events
    .filter((event) => isTask(event) && !asked.some((each) => key(each) === key(event) && holds(event, each)))
    .map(({ dur, tdur = dur }) => tdur / 1000)
    .sort((a, b) => b - a);
}
