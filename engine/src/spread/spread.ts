/** One-sigma spread of every uncertain input. Zero: known exactly. */
export interface Spread {
  /** Factor exp(σz) on the drag coefficient. */
  readonly dragScale: number;
  /** Factor exp(σz) on the thrust, at fixed propellant mass. */
  readonly totalImpulse: number;
  /** Correlation of the logarithms of drag and thrust, −1…1, where flights have taught both; left out: none. */
  readonly dragWithImpulse?: number;
  /** Factor exp(σz) on the burn's times, at constant impulse. */
  readonly burnTime: number;
  /** Factor exp(σz) on the mass without motor. */
  readonly mass: number;
  /** Factor exp(σz) on the transverse inertia. */
  readonly inertia: number;
  /** Added to the balance point [m]. */
  readonly balance: number;
  /** Lean of the guide about each of two horizontal axes [rad]. */
  readonly guideTilt: number;
  /** Factor exp(σz) on the wind. */
  readonly windSpeed: number;
  /** Added to the wind's direction [rad]. */
  readonly windFrom: number;
  /** Added to the power law's exponent. */
  readonly windExponent: number;
  /** Added to each horizontal component of the wind at its reference height [m/s]. */
  readonly windFloor: number;
  /** Added to the air temperature [K]. */
  readonly temperature: number;
  /** Scatter of the delay: the greater of `seconds` [s] and `fraction` of the delay as cut. */
  readonly delay: { readonly seconds: number; readonly fraction: number };
  /** Depth that a cut really gets [m]; left out: the tool's. */
  readonly cutDepth?: number;
}
