import { readLog } from "../src/log/read-log.js";
import { inventedFlight } from "../test/invented-log.js";

const flight = inventedFlight({ rate: 100, pad: 60 });

/** A log of so many rows and six columns, flight after flight, as bytes. */
function longLog(rows: number): Uint8Array {
  const head = "time (s),height (m),speed (m/s),acceleration (m/s2),pressure (hPa),battery (V)\n";
  const bytes = new Uint8Array(head.length + 64 * rows);
  const encoder = new TextEncoder();
  let length = encoder.encodeInto(head, bytes).written;
  for (let k = 0; k < rows; k++) {
    const { height, speed, acceleration, pressure, battery } = flight[k % flight.length]!;
    const cells = [k / 100, height, speed, acceleration, pressure / 100, battery].map((each) => each.toFixed(3));
    length += encoder.encodeInto(`${cells.join(",")}\n`, bytes.subarray(length)).written;
  }
  return bytes.slice(0, length);
}

/** Reads a log and gives the processor's time [s]. */
function timeOf(bytes: Uint8Array, rows: number): number {
  const before = process.cpuUsage();
  const read = readLog(bytes);
  const { user, system } = process.cpuUsage(before);
  if (!read.ok || read.rows !== rows) throw new Error("the bench's own log was not read");
  return (user + system) / 1e6;
}

const whole = 1_000_000;
const long = longLog(whole);
// the long one first, so that its time holds the warming up; the short ones are compared with it warm
const seconds = timeOf(long, whole);
const { maxRSS } = process.resourceUsage();
const quarter = longLog(whole / 4);
const warm = Math.min(...[1, 2, 3].map(() => timeOf(quarter, whole / 4)));
const again = Math.min(...[1, 2].map(() => timeOf(long, whole)));

process.stdout.write(JSON.stringify({ seconds, megabytes: maxRSS / 1024, growth: again / (4 * warm) }));
