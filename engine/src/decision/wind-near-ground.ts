import type { WindProfile } from "../wind/profile.js";

/** Wind that the rocket meets as it leaves the guide, taken at the height of the reading [m/s]. */
export function windNearGround({ wind }: { readonly wind: WindProfile }): number {
  return wind.kind === "power" ? Math.hypot(wind.east, wind.north) : Math.hypot(wind.east[0]!, wind.north[0]!);
}
