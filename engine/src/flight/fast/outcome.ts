import type { f64, i32 } from "../../math/doubles.js";

/** What one drawn flight came to; the steps after burnout stand in the work's records. A class for the same reason as `FastWork`. */
export class FastOutcome {
  /** It left the guide and came down within the records. */
  flew: boolean = false;
  liftOff: f64 = 0;
  burnout: f64 = 0;
  guideExitSpeed: f64 = 0;
  apogeeTime: f64 = 0;
  apogeeHeight: f64 = 0;
  landingTime: f64 = 0;
  landingEast: f64 = 0;
  landingNorth: f64 = 0;
  /** Records in use. */
  recordCount: i32 = 0;
  /** Right-hand sides called. */
  calls: i32 = 0;

  clear(): void {
    this.flew = false;
    this.liftOff = 0;
    this.burnout = 0;
    this.guideExitSpeed = 0;
    this.apogeeTime = 0;
    this.apogeeHeight = 0;
    this.landingTime = 0;
    this.landingEast = 0;
    this.landingNorth = 0;
    this.recordCount = 0;
    this.calls = 0;
  }
}
