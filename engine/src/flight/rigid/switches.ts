/** Parts of the rigid-body model that can be left out, each to compare it with models that have none of it. */
export interface RigidSwitches {
  /** Fin cant and roll damping. */
  readonly roll: boolean;
  /** Gyroscopic share of the change of inertia while burning: İ ω. */
  readonly inertiaChange: boolean;
  /** Each part meets the wind and the gust at its own place, not those at the balance point. */
  readonly windOverBody: boolean;
  /** Pivoting on the aft fitting once the forward one has left the guide; switches off the pitching model's tip-off too. */
  readonly pivot: boolean;
  /** The thrust line's angle and offset. */
  readonly misalignment: boolean;
  /** A rigid body past the top, too: there some fall flat; otherwise nose-first from the top on, as every model. */
  readonly pastTop: boolean;
}

/** The model as it is flown. */
export const allOfRigid: RigidSwitches = Object.freeze({
  roll: true,
  inertiaChange: true,
  windOverBody: true,
  pivot: true,
  misalignment: true,
  pastTop: false,
});
