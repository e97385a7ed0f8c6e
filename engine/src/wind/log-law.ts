/**
 * Roughness lengths of the Davenport-Wieringa terrain classes [m].
 *
 * @source WMO/TD-No. 1555 (2010), Table 2.1
 */
export const roughnessLengths = Object.freeze({
  sea: 0.0002,
  smooth: 0.005,
  open: 0.03,
  roughlyOpen: 0.1,
  rough: 0.25,
  veryRough: 0.5,
  closed: 1,
});

/**
 * Wind speed at one height over the speed at another, by the logarithmic law.
 *
 * Valid in the lowest hundred metres or so over even ground, in neutral air.
 *
 * @param z height above the ground [m]; at or below the roughness length the answer is 0
 * @param referenceHeight [m], above the roughness length
 * @param roughness roughness length of the terrain [m], > 0
 * @returns ratio, ≥ 0
 * @source WMO/TD-No. 1555 (2010)
 * @example
 * logLawRatio(100, 10, 0.1); // 1.5
 */
export function logLawRatio(z: number, referenceHeight: number, roughness: number): number {
  return z > roughness ? Math.log(z / roughness) / Math.log(referenceHeight / roughness) : 0;
}
