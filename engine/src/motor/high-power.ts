/** What makes a motor high power. */
export interface MotorFigures {
  /** [N s] */
  readonly totalImpulse: number;
  /** [N] */
  readonly averageThrust: number;
  /** [kg] */
  readonly propellantMass: number;
  /** The propellant holds metal that throws sparks; left out: it does not. */
  readonly sparking?: boolean;
}

/**
 * Whether a motor is a high-power one: total impulse above 160 N s, average thrust above 80 N, propellant above 62.5 g,
 * or sparks.
 *
 * @param motor its figures
 * @returns true for high power
 * @source NFPA 1122 (2018); 71 FR 46079 (62.5 g); the clause on sparks from memory
 * @example
 * isHighPowerMotor({ totalImpulse: 160, averageThrust: 80, propellantMass: 0.0625 }); // false
 */
export function isHighPowerMotor(motor: MotorFigures): boolean {
  return (
    motor.totalImpulse > 160 || motor.averageThrust > 80 || motor.propellantMass > 0.0625 || motor.sparking === true
  );
}

/**
 * Whether a rocket on one motor is a high-power rocket: on a high-power motor, or above 1500 g at lift-off.
 *
 * The limits on a whole model rocket (125 g of propellant, 320 N s) are twice those of one motor: they bind only where
 * several are installed.
 *
 * @param rocket lift-off mass [kg] and its motor's figures
 * @returns true for high power
 * @source NFPA 1122 (2018), 4.4 and 4.5; Model Rocket Safety Code (August 2012)
 * @example
 * isHighPowerRocket({ liftOffMass: 1.6, motor: { totalImpulse: 120, averageThrust: 60, propellantMass: 0.06 } }); // true
 */
export function isHighPowerRocket(rocket: { liftOffMass: number; motor: MotorFigures }): boolean {
  return rocket.liftOffMass > 1.5 || isHighPowerMotor(rocket.motor);
}

/**
 * Level of certification that a motor's class asks of its flyer: 1 for H and I, 2 for J to L, 3 for M to O.
 *
 * A smaller motor that is high power by thrust, propellant or sparks asks for level 1 as well: ask `isHighPowerMotor`.
 *
 * @param motorClass `1/8A` … `Z`
 * @returns level; 0: none by class; null: above O, or no class at all
 * @source practice of the national associations, as on their clubs' pages; NFPA 1127 (2018) for the highest class
 * @example
 * certificationLevel("I"); // 1
 */
export function certificationLevel(motorClass: string): 0 | 1 | 2 | 3 | null {
  if (/^(1\/[248]A|[A-G])$/.test(motorClass)) return 0;
  if (/^[HI]$/.test(motorClass)) return 1;
  if (/^[JKL]$/.test(motorClass)) return 2;
  return /^[MNO]$/.test(motorClass) ? 3 : null;
}
