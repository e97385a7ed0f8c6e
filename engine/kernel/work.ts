import { Doubles } from "../../math/doubles.js";
import { mostRecords, recordSize, rowSize } from "./sizes.js";
import { slotCount } from "./slots.js";

/** A row of zeros. */
export function row(count: i32): Doubles {
  const size = <usize>count << 3;
  const start = heap.alloc(size);
  memory.fill(start, 0, size);
  return changetype<Doubles>(start);
}

/** The hot loop's memory, as `FastWork` of the engine. */
export class FastWork {
  slots: Doubles = row(slotCount);
  y: Doubles = row(rowSize);
  stage: Doubles = row(rowSize);
  next: Doubles = row(rowSize);
  k: Doubles = row(7 * rowSize);
  place: Doubles = row(2);
  records: Doubles = row((mostRecords + 1) * recordSize);

  air: Doubles = row(0);
  wind: Doubles = row(0);
  coasting: Doubles = row(0);
  thrusting: Doubles = row(0);
  windKnots: Doubles = row(0);
  aero: Doubles = row(0);
  stretches: Doubles = row(0);
  machCount: i32 = 0;
  lastAirCell: i32 = 0;
  lastWindCell: i32 = 0;
  lastMachCell: i32 = 0;
  lastDragRow: i32 = 0;
  windKnotCount: i32 = 0;
  aeroStride: i32 = 0;
  partCount: i32 = 0;
  stretchCount: i32 = 0;
  settled: boolean = false;
  pitches: boolean = false;
  handsOver: boolean = false;
}
