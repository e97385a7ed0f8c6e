import type { Motor } from "../../motor/motor.js";
import type { Rocket } from "../../rocket/rocket.js";
import { ownDefault, statedBy } from "../../rules/sources.js";
import type { MotorLook, Refusal } from "./judged-motor.js";

/** Sizes that differ by less are the same [m]. */
const sameSize = 1e-6;

/** A motor thinner than its mount by more than this sits in an adapter [m]. Own default, no source. */
const adapterGap = 2e-3;

/**
 * Does a motor go into the mount?
 *
 * It is too long for a mount whose length is known, else where it would reach out of the rocket's nose. A thinner one is not
 * refused: it needs an adapter, whose mass no figure allows for.
 *
 * @example
 * mountFit(rocket, { ...motor, diameter: 0.054 }).refusals[0]?.code; // "too-wide-for-mount"
 */
export function mountFit(
  { mount }: Pick<Rocket, "mount">,
  { diameter, length }: Pick<Motor, "diameter" | "length">,
): { readonly refusals: readonly Refusal[]; readonly looks: readonly MotorLook[] } {
  const room = mount.length ?? mount.motorAftAt;
  const size = { unit: "m", sense: "most" as const, details: [], ...statedBy("the rocket's motor mount") };
  const refusals: Refusal[] = [];
  if (diameter > mount.diameter + sameSize)
    refusals.push({ code: "too-wide-for-mount", value: diameter, limit: mount.diameter, ...size });
  if (length > room + sameSize) refusals.push({ code: "too-long-for-mount", value: length, limit: room, ...size });
  const thin = mount.diameter - diameter > adapterGap + sameSize;
  const looks: MotorLook[] = thin
    ? [{ ...size, ...ownDefault, code: "adapter-needed", value: diameter, limit: mount.diameter, sense: "none" }]
    : [];
  return { refusals, looks };
}
