import { isBlankLine, LONGEST_LINE, lineEnd, nextLine } from "./log-lines.js";

/** Logs of up to so many lines are looked at whole; of longer ones so many, in bursts all over the file. */
const MOST = 20_000;
const BURST = 16;

/** Lines of a log that stand for all of them, in their order; blank ones and endless ones left out. */
export interface SampleLines {
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Neighbours have the same number: each burst one. */
  readonly burst: Int32Array;
  readonly count: number;
}

/**
 * Chooses lines by which a log's columns are told apart.
 *
 * @param lines bound of the number of lines
 */
export function sampleLines(bytes: Uint8Array, start: number, end: number, lines: number): SampleLines {
  const whole = lines <= MOST;
  const bursts = whole ? 1 : Math.floor(MOST / BURST);
  const from = new Int32Array(Math.min(lines, MOST));
  const to = new Int32Array(from.length);
  const burst = new Int32Array(from.length);
  let count = 0;
  let at = start;
  for (let k = 0; k < bursts; k++) {
    const place = start + Math.floor((k * (end - start)) / bursts);
    if (place > at) at = nextLine(bytes, lineEnd(bytes, place, end), end);
    let left = whole ? lines : BURST;
    while (left-- > 0 && at < end && count < from.length) {
      const stop = lineEnd(bytes, at, end);
      if (stop - at <= LONGEST_LINE && !isBlankLine(bytes, at, stop)) {
        from[count] = at;
        to[count] = stop;
        burst[count++] = k;
      }
      at = nextLine(bytes, stop, end);
    }
  }
  return { from, to, burst, count };
}
