export type ValidityCode =
  | "mach-through-bridge"
  | "mach-above-validated"
  | "angle-of-attack-above-validated"
  | "fineness-below-validated"
  | "fineness-above-validated"
  | "reynolds-above-validated";

/** A figure outside what a model was held against. */
export interface ValidityWarning {
  readonly code: ValidityCode;
  readonly value: number;
  readonly limit: number;
}

/** What the aerodynamics of a flight asked of its models; leave out what is not known. */
export interface Usage {
  /** Highest Mach number. */
  readonly mach?: number;
  /** Largest angle of attack in free flight [rad]. */
  readonly angleOfAttack?: number;
  /** Length over largest diameter. */
  readonly fineness?: number;
  /** Highest Reynolds number on the rocket's length. */
  readonly reynolds?: number;
}

/** One end of a model's range. */
export interface ValidityLimit {
  readonly code: ValidityCode;
  readonly of: keyof Usage;
  readonly side: "above" | "below";
  readonly limit: number;
}

/**
 * Ends of the ranges within which normal force and drag were held against anything. Judgement on the sources' ranges: from Mach
 * 0.9 to 1.2 curves only join what is known on both sides, above 1.2 exact and linear theory were met up to Mach 3, form factors and
 * slender-body theory want a slender body, Barrowman's method small angles, friction laws were measured below Reynolds number 1e9.
 */
export const validityLimits: readonly ValidityLimit[] = Object.freeze([
  { code: "mach-through-bridge", of: "mach", side: "above", limit: 0.9 },
  { code: "mach-above-validated", of: "mach", side: "above", limit: 3 },
  { code: "angle-of-attack-above-validated", of: "angleOfAttack", side: "above", limit: Math.PI / 12 },
  { code: "fineness-below-validated", of: "fineness", side: "below", limit: 5 },
  { code: "fineness-above-validated", of: "fineness", side: "above", limit: 30 },
  { code: "reynolds-above-validated", of: "reynolds", side: "above", limit: 1e9 },
] as const);

/**
 * Which models were used outside their validated range.
 *
 * @param usage extremes met in a flight
 * @returns one entry per limit passed, in the order of `validityLimits`
 * @source `validityLimits`
 * @example
 * validityWarnings({ mach: 1.1, fineness: 22 }); // [{ code: "mach-through-bridge", value: 1.1, limit: 0.9 }]
 */
export function validityWarnings(usage: Usage): ValidityWarning[] {
  return validityLimits.flatMap(({ code, of, side, limit }) => {
    const value = usage[of];
    if (value === undefined) return [];
    const passed = side === "above" ? value > limit : value < limit;
    return passed ? [{ code, value, limit }] : [];
  });
}
