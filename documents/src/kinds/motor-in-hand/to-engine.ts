import type { CutSoFar } from "@delaywright/engine";
import { defaultDepthError } from "../../defaults.js";
import { si, siOr } from "../si.js";
import type { MotorInHandDocument } from "./schema.js";

/**
 * What has been taken out of a motor so far: the last depth read after a cut, less the first that was read before one.
 *
 * A correction is a later reading, so it counts. The error is that of two caliper readings.
 *
 * @returns undefined where nothing was read after a cut
 */
export function cutSoFar(motor: MotorInHandDocument): CutSoFar | undefined {
  const readings = motor.readings ?? [];
  const first = siOr(readings.find((reading) => reading.before !== undefined)?.before, "length", undefined);
  const last = readings.findLast((reading) => reading.after !== undefined)?.after;
  if (first === undefined || last === undefined) return undefined;
  return { removedDepth: si(last, "length") - first, depthError: defaultDepthError.reading * Math.SQRT2 };
}
