import { row } from "../src/flight/fast/work.js";
import { Doubles } from "../src/math/doubles.js";

/** Memory that grows when more of it is asked for; what was in it is then lost. */
export class Block {
  private start: Doubles = row(0);
  private size: i32 = 0;
  private used: i32 = 0;

  begin(count: i32): void {
    if (count > this.size) {
      this.size = 2 * count;
      this.start = row(this.size);
    }
    this.used = 0;
  }

  take(count: i32): Doubles {
    const from = changetype<usize>(this.start) + (<usize>this.used << 3);
    this.used += count;
    return changetype<Doubles>(from);
  }
}
