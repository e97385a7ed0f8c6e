/**
 * Most energy with which a tethered section of a student competition's rocket may land [J]: 75 ft lbf.
 *
 * @source NASA Student Launch handbook, recovery requirements; memory
 */
export const landingEnergyLimit = 75 * 0.3048 * 0.45359237 * 9.80665;

/**
 * Kinetic energy of a section that lands.
 *
 * @param section mass [kg], > 0, and speed [m/s]
 * @returns [J]
 * @example
 * landingEnergy({ mass: 2, speed: 6 }); // 36
 */
export function landingEnergy({ mass, speed }: { readonly mass: number; readonly speed: number }): number {
  return 0.5 * mass * speed * speed;
}

/**
 * Speed at which a section lands with an energy: `landingEnergy` turned round.
 *
 * @param section mass [kg], > 0, and energy [J], ≥ 0
 * @returns [m/s]
 * @example
 * speedForEnergy({ mass: 3, energy: 101.68635 }); // 8.233523
 */
export function speedForEnergy({ mass, energy }: { readonly mass: number; readonly energy: number }): number {
  return Math.sqrt((2 * energy) / mass);
}

/** One tethered section at the landing. */
export interface SectionLanding {
  /** [kg] */
  readonly mass: number;
  /** [J] */
  readonly energy: number;
  readonly aboveLimit: boolean;
  /** At which it would land with the limit's energy [m/s]. */
  readonly speedAtLimit: number;
}

/**
 * Energies of the tethered sections of a rocket against a limit.
 *
 * All sections land at the same speed: the last of them is in truth slowed by the canopy that lost the others' weight.
 *
 * @param sections masses [kg], each > 0
 * @param landing speed [m/s] and limit [J]
 * @returns one row for each section, in their order
 * @example
 * sectionLandings([2], { speed: 6 })[0]?.aboveLimit; // false
 */
export function sectionLandings(
  sections: readonly number[],
  { speed, limit = landingEnergyLimit }: { readonly speed: number; readonly limit?: number },
): readonly SectionLanding[] {
  return sections.map((mass) => {
    const energy = landingEnergy({ mass, speed });
    return { mass, energy, aboveLimit: energy > limit, speedAtLimit: speedForEnergy({ mass, energy: limit }) };
  });
}
