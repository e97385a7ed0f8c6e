import { readFileSync } from "node:fs";

/**
 * Durations of the page's main-thread tasks in a trace of Chromium, longest first [ms].
 *
 * @param file what `browser.startTracing` wrote
 */
export function longestTasks(file) {
  const { traceEvents } = JSON.parse(readFileSync(file, "utf8"));
  const threads = traceEvents.filter((event) => event.name === "thread_name" && event.args.name === "CrRendererMain");
  const key = ({ pid, tid }) => `${pid} ${tid}`;
  const mains = new Set(threads.map(key));
  return traceEvents
    .filter((event) => event.ph === "X" && /RunTask$/.test(event.name) && mains.has(key(event)))
    .map((event) => event.dur / 1000)
    .sort((a, b) => b - a);
}
