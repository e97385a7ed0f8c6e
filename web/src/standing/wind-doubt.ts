import { defaultSpread, parseQuantity, type Raw } from "@delaywright/documents";

/**
 * One sigma of the wind that a plan was given, for a mark beside the reading.
 *
 * @param plan the plan's document
 * @param speed the reading [m/s]
 * @returns [m/s]; 0 without spread
 */
export function windDoubt(plan: Raw | null, speed: number): number {
  const spread = plan?.["spread"];
  if (spread === "none") return 0;
  const { windSpeed, windFloor } =
    (spread as { readonly windSpeed?: unknown; readonly windFloor?: unknown } | undefined) ?? {};
  const factor = typeof windSpeed === "number" ? windSpeed : defaultSpread.windSpeed;
  const floor = typeof windFloor === "string" ? parseQuantity(windFloor, "speed") : null;
  return Math.hypot(factor * speed, floor?.ok === true ? floor.value : defaultSpread.windFloor);
}
