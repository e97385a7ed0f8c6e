import type { FastOutcome } from "../flight/fast/outcome.js";
import { recorded } from "../flight/fast/records.js";
import { recordSize } from "../flight/fast/sizes.js";
import * as at from "../flight/fast/slots.js";
import type { FastWork } from "../flight/fast/work.js";
import { cellOf, type Doubles, type f64, type i32, whole } from "../math/doubles.js";
import { mostCrossings, partsNearTop } from "./judge-sizes.js";
import type { SpeedNodes } from "./judge-work.js";

/** Squared airspeed at a share of a recorded step. */
export function airspeed2(w: FastWork, offset: i32, share: f64): f64 {
  const records = w.records;
  const wind = w.wind;
  const c = w.slots;
  const z = recorded(records, offset, 0, share);
  const place = z > 0 ? (z < c[at.WIND_TOP]! ? Math.sqrt(Math.sqrt(z)) * c[at.WIND_SCALE]! : w.lastWindCell + 1) : 0;
  let cell = cellOf(place, w.lastWindCell);
  const part = place - cell;
  cell *= 2;
  const ux = recorded(records, offset, 1, share) - wind[cell]! - part * (wind[cell + 2]! - wind[cell]!);
  const uy = recorded(records, offset, 2, share) - wind[cell + 1]! - part * (wind[cell + 3]! - wind[cell + 1]!);
  const uz = recorded(records, offset, 3, share);
  return ux * ux + uy * uy + uz * uz;
}

/** Record that holds a time; the nearest end beyond them. */
export function recordAt(records: Doubles, count: i32, time: f64): i32 {
  let low = 0;
  let high = count - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (records[middle * recordSize]! <= time) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** Notes one node; returns the slowest so far. */
function addNode(nodes: SpeedNodes, least: i32, time: f64, square: f64, record: i32): i32 {
  const n = nodes.count;
  nodes.times[n] = time;
  nodes.squares[n] = square;
  nodes.records[n] = record;
  nodes.count = n + 1;
  return least < 0 || square < nodes.squares[least]! ? n : least;
}

/** Walks the records once and notes the airspeed at every node. */
export function noteNodes(w: FastWork, flight: FastOutcome, nodes: SpeedNodes): void {
  const records = w.records;
  nodes.count = 0;
  let least = -1;
  for (let r = 0; r < flight.recordCount; r++) {
    const offset = r * recordSize;
    const from = records[offset]!;
    const span = records[offset + 1]!;
    least = addNode(nodes, least, from, airspeed2(w, offset, 0), r);
    const end = from + span;
    if (from > flight.apogeeTime + 3 || end < flight.apogeeTime - 3) continue;
    for (let i = 1; i < partsNearTop; i++) {
      const part: f64 = i;
      const share = part / partsNearTop;
      least = addNode(nodes, least, from + share * span, airspeed2(w, offset, share), r);
    }
  }
  const last = (flight.recordCount - 1) * recordSize;
  const lastShare = (flight.landingTime - records[last]!) / records[last + 1]!;
  while (nodes.count > 0 && nodes.times[nodes.count - 1]! >= flight.landingTime) nodes.count -= 1;
  if (least >= nodes.count) least = nodes.count - 1;
  least = addNode(nodes, least, flight.landingTime, airspeed2(w, last, lastShare), flight.recordCount - 1);
  refineLeast(w, nodes, least);
}

/** Moves the least node to the vertex of the parabola through it and its neighbours, where all three lie in one record. */
function refineLeast(w: FastWork, nodes: SpeedNodes, least: i32): void {
  const times = nodes.times;
  const squares = nodes.squares;
  const records = nodes.records;
  if (least <= 0 || least >= nodes.count - 1 || records[least - 1]! !== records[least]!) return;
  const t0 = times[least - 1]!;
  const t1 = times[least]!;
  const t2 = times[least + 1]!;
  const left = (squares[least]! - squares[least - 1]!) / (t1 - t0);
  const right = (squares[least + 1]! - squares[least]!) / (t2 - t1);
  const vertex = 0.5 * (t0 + t1) - (left * (t2 - t0)) / (2 * (right - left));
  if (!(vertex > t0 && vertex < t2)) return;
  const offset = whole(records[least]!) * recordSize;
  const square = airspeed2(w, offset, (vertex - w.records[offset]!) / w.records[offset + 1]!);
  if (square >= squares[least]!) return;
  times[least] = vertex;
  squares[least] = square;
}

/**
 * Times at which the airspeed passes a level, in order.
 *
 * @param level airspeed [m/s]
 * @param out filled from the start, `mostCrossings` at most
 * @returns how many
 */
export function speedCrossings(w: FastWork, nodes: SpeedNodes, level: f64, out: Doubles): i32 {
  const square = level * level;
  let count = 0;
  for (let i = 0; i + 1 < nodes.count && count < mostCrossings; i++) {
    const below = nodes.squares[i]! < square;
    if (below === nodes.squares[i + 1]! < square) continue;
    const offset = whole(nodes.records[i]!) * recordSize;
    const from = w.records[offset]!;
    const span = w.records[offset + 1]!;
    let low = (nodes.times[i]! - from) / span;
    let high = (nodes.times[i + 1]! - from) / span;
    let atLow = nodes.squares[i]! - square;
    let atHigh = nodes.squares[i + 1]! - square;
    for (let k = 0; k < 40 && high - low > 1e-8; k++) {
      const guess = low + ((high - low) * atLow) / (atLow - atHigh);
      const share = k % 4 !== 3 && guess > low && guess < high ? guess : 0.5 * (low + high);
      const value = airspeed2(w, offset, share) - square;
      if (Math.abs(value) < 1e-9 * square) {
        low = share;
        high = share;
        break;
      }
      if (value < 0 === atLow < 0) {
        low = share;
        atLow = value;
        atHigh *= 0.5;
      } else {
        high = share;
        atHigh = value;
        atLow *= 0.5;
      }
    }
    out[count] = from + 0.5 * (low + high) * span;
    count += 1;
  }
  return count;
}
