import { Doubles } from "../../math/doubles.js";
import { mostRecords, recordSize, rowSize } from "./sizes.js";
import { slotCount } from "./slots.js";

/** A row of zeros. */
function row(count: i32): Doubles {
  const size = <usize>count << 3;
  const start = heap.alloc(size);
  memory.fill(start, 0, size);
  return changetype<Doubles>(start);
}

/** The hot loop's memory, as `FastWork` of the engine: rows that all flights use, then those of one plan. */
export class FastWork {
  slots: Doubles = row(slotCount);
  y: Doubles = row(rowSize);
  stage: Doubles = row(rowSize);
  next: Doubles = row(rowSize);
  k: Doubles = row(7 * rowSize);
  place: Doubles = row(2);
  records: Doubles = row((mostRecords + 1) * recordSize);
  /** The last block of memory: it grows where it stands. */
  tables: Doubles = row(1);
  air: Doubles = this.tables;
  wind: Doubles = this.tables;
  coasting: Doubles = this.tables;
  thrusting: Doubles = this.tables;
  windKnots: Doubles = this.tables;
  aero: Doubles = this.tables;
  stretches: Doubles = this.tables;
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

  /** Lays the tables of another plan where the last one's were. */
  lay(air: i32, wind: i32, coasting: i32, thrusting: i32, windKnots: i32, aero: i32, stretches: i32): void {
    const all = air + wind + coasting + thrusting + windKnots + aero + stretches;
    const start = heap.realloc(changetype<usize>(this.tables), <usize>all << 3);
    this.tables = changetype<Doubles>(start);
    this.air = this.tables;
    this.wind = after(this.air, air);
    this.coasting = after(this.wind, wind);
    this.thrusting = after(this.coasting, coasting);
    this.windKnots = after(this.thrusting, thrusting);
    this.aero = after(this.windKnots, windKnots);
    this.stretches = after(this.aero, aero);
  }
}

/** Where the next row begins. */
function after(row: Doubles, count: i32): Doubles {
  return changetype<Doubles>(changetype<usize>(row) + (<usize>count << 3));
}
