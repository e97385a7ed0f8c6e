/** One flight inside a record: rows from `from` up to, not including, `to`. */
export interface FlightSpan {
  readonly from: number;
  readonly to: number;
  /** Roughly, on the record's own clock [s]. */
  readonly liftOff: number;
  /** Highest above where it started [m]. */
  readonly top: number;
}

/** A stretch of the record that is not what it seems, on the clock of `FlightRecord` [s]. */
export interface RecordFlaw {
  readonly kind: "gap" | "spike" | "saturated" | "restart" | "not-a-number";
  readonly from: number;
  readonly to: number;
  /** So much before the first row that shows it a spike began to rise out of the noise; of spikes only [s]. */
  readonly rise?: number;
}

/** One flight made ready: times rise, zero at rough lift-off; heights above the pad. */
export interface FlightRecord {
  /** [s], rising */
  readonly time: Float64Array;
  /** Above the pad, spikes marked and bridged, not smoothed [m]. */
  readonly height: Float64Array;
  /** Vertical speed by smoothing that shifts no event [m/s]. */
  readonly speed: Float64Array;
  /** Along the axis, over ground (0 at rest) [m/s²]; null without an accelerometer. */
  readonly acceleration: Float64Array | null;
  /** Column that the heights were taken from; left out: a barometer's. */
  readonly heightsFrom?: "pressure" | "height" | "altitude" | "speed" | "acceleration";
  /** One sigma of one height [m], from the quiet stretch on the pad or from second differences. */
  readonly heightError: number;
  /** Of one acceleration [m/s²]; null without an accelerometer. */
  readonly accelerationError: number | null;
  /** Median samples a second [1/s]. */
  readonly rate: number;
  readonly flaws: readonly RecordFlaw[];
  /** Record's clock at time 0 [s]. */
  readonly zero: number;
  readonly marks: readonly { readonly time: number; readonly text: string }[];
}
