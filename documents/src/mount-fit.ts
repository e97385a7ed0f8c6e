import { type Issue, show } from "./issue.js";

/** Sizes that differ by less are the same as typed [m]. */
const sameSize = 1e-6;

/**
 * A motor that does not go into the mount.
 *
 * @param motor where it stands, its diameter as typed and in metres
 * @param rocket the mount's inner diameter as typed and in metres
 */
export function motorTooLarge(
  motor: { readonly file: string; readonly path: string; readonly diameter: string; readonly outer: number },
  rocket: { readonly mount: string; readonly inner: number },
): Issue[] {
  if (motor.outer <= rocket.inner + sameSize) return [];
  return [
    {
      file: motor.file,
      path: motor.path === "" ? "diameter" : `${motor.path}.diameter`,
      code: "motor-too-large-for-mount",
      found: show(motor.diameter),
      accepted: `no more than the mount's inner diameter, ${rocket.mount}`,
      example: "",
    },
  ];
}
