/** An instrument's mark in its record: a word of its own at a time. */
export interface LogMark {
  /** On the record's own clock [s]. */
  readonly time: number;
  readonly text: string;
}

/**
 * One altimeter's record, as its columns hold it: SI units, all of the length of `time`, NaN where a figure is missing.
 *
 * Rows stand in the file's order: time may stand still, go backwards (a restart) or leave gaps; what reads the record copes.
 */
export interface LogSamples {
  /** On the record's own clock [s]; finite. */
  readonly time: Float64Array;
  /** Height above the instrument's own zero, usually the pad [m]. */
  readonly height?: Float64Array;
  /** Altitude above mean sea level [m]. */
  readonly altitude?: Float64Array;
  /** Static pressure [Pa]. */
  readonly pressure?: Float64Array;
  /** Vertical speed, up positive [m/s]. */
  readonly speed?: Float64Array;
  /** Along the axis, forward positive, as the instrument gives it [m/s²]: with or without the 1 g of a rocket at rest. */
  readonly acceleration?: Float64Array;
  /** [K] */
  readonly temperature?: Float64Array;
  /** [V] */
  readonly battery?: Float64Array;
  readonly marks: readonly LogMark[];
}
