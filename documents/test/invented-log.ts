/** One row of an invented flight: SI units, from an Euler integration of a boost, a coast with drag, and a descent at a steady rate. */
export interface InventedRow {
  readonly time: number;
  readonly height: number;
  readonly speed: number;
  /** As an accelerometer along the axis feels it: one g at rest [m/s²]. */
  readonly acceleration: number;
  readonly pressure: number;
  readonly temperature: number;
  readonly battery: number;
  readonly mark: string;
}

export interface InventedOptions {
  /** Rows a second. */
  readonly rate?: number;
  /** Time on the pad before lift-off [s]. */
  readonly pad?: number;
  readonly noise?: number;
  readonly seed?: number;
  /** Elevation of the pad [m]. */
  readonly elevation?: number;
  /** Thrust over mass [m/s²]. */
  readonly push?: number;
}

const G = 9.80665;

/** Pressure of the standard atmosphere's lowest layer [Pa] (U.S. Standard Atmosphere, 1976). */
export const pressureAt = (altitude: number) => 101_325 * (1 - (0.0065 * altitude) / 288.15) ** 5.255_88;

/** Numbers from 0 to 1 that look random: a multiplicative generator (Park and Miller, 1988). */
export function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

/** An invented flight as an altimeter would see it, some 600 m high. */
export function inventedFlight(options: InventedOptions = {}): InventedRow[] {
  const { rate = 20, pad = 5, noise = 0.2, seed = 7, elevation = 200, push = 90 } = options;
  const random = randomNumbers(seed);
  const rows: InventedRow[] = [];
  let [height, speed, opened, landed] = [0, 0, false, 0];
  const steps = 20;
  for (let k = 0; landed < 3; k++) {
    const time = k / rate;
    let felt = G;
    for (let s = 0; s < steps; s++) {
      const since = time + s / rate / steps - pad;
      const thrust = since >= 0 && since < 1.5 ? push : 0;
      felt = opened ? G : thrust - Math.sign(speed) * 0.0016 * speed * speed;
      if (since < 0 || (opened && height <= 0)) felt = G;
      else if (opened) speed += (-6 - speed) * Math.min(1, 4 / rate / steps);
      else speed += (felt - G) / rate / steps;
      if (since < 0 || (opened && height <= 0)) speed = 0;
      height += speed / rate / steps;
      if (since > 3 && speed < -5 && !opened) opened = true;
    }
    if (opened && height <= 0) landed += 1 / rate;
    const seen = height + noise * (random() + random() + random() - 1.5) * 2;
    const mark = opened ? (landed > 0 ? "LANDED" : "DESCENT") : time < pad ? "PAD" : "ASCENT";
    rows.push({
      time,
      height: seen,
      speed: speed + 0.1 * (random() - 0.5),
      acceleration: felt + 0.3 * (random() - 0.5),
      pressure: pressureAt(seen + elevation),
      temperature: 21 - 0.0065 * height + 0.02 * time + 0.1 * (random() - 0.5),
      battery: 8.1 - 0.0004 * time - (opened ? 0.05 : 0) + 0.01 * random(),
      mark,
    });
  }
  return rows;
}

/** Rows as text: each column a function of the row, with so many decimals. */
export function logText(
  rows: readonly InventedRow[],
  columns: readonly (readonly [heading: string, cell: (row: InventedRow) => number | string, decimals?: number])[],
  { delimiter = ",", decimal = ".", headings = true } = {},
): string {
  const lines = rows.map((row) =>
    columns
      .map(([, cell, decimals = 2]) => {
        const value = cell(row);
        return typeof value === "string" ? value : value.toFixed(decimals).replace(".", decimal);
      })
      .join(delimiter),
  );
  return [...(headings ? [columns.map(([heading]) => heading).join(delimiter)] : []), ...lines, ""].join("\n");
}
