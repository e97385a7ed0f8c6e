/** The air that was measured at the field, to which the standard atmosphere is shifted. */
export interface FieldAir {
  /** Height of the pad above mean sea level [m]. */
  readonly elevation: number;
  /** Geodetic latitude of the field [rad]. */
  readonly latitude: number;
  /** Air temperature at the pad [K]; left out: the standard's at the elevation. */
  readonly temperature?: number;
  /** Station pressure at the pad [Pa]; left out: the standard's at the elevation. */
  readonly pressure?: number;
  /** Relative humidity at the pad, 0…1; left out: dry air. */
  readonly humidity?: number;
}

/** The air at one height. */
export interface Air {
  /** [K] */
  readonly temperature: number;
  /** [Pa] */
  readonly pressure: number;
  /** [kg/m³] */
  readonly density: number;
  /** [m/s] */
  readonly soundSpeed: number;
  /** Dynamic viscosity [Pa s]. */
  readonly viscosity: number;
}
