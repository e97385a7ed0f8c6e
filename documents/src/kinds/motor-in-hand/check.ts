import { checkMotor } from "../motor/check.js";
import type { RawView } from "../raw.js";

/** A cut only ever gets deeper; a reading that says otherwise is a correction and needs its reason. */
export function checkMotorInHand(motor: RawView): void {
  if (motor.at("type").isObject) checkMotor(motor.at("type"));
  let deepest: number | undefined;
  let first: number | undefined;
  for (const reading of motor.at("readings").list) {
    const before = reading.at("before").si("length");
    const after = reading.at("after").si("length");
    const reason = (reading.at("note").text ?? "").trim() !== "";
    first ??= before;
    if (before !== undefined && after !== undefined && after < before && !reason) {
      reading.at("after").report("after-above-before", "a depth no less than before, or a note with the reason");
    } else if (after !== undefined && deepest !== undefined && after < deepest && !reason) {
      reading
        .at("after")
        .report(
          "cut-shallower",
          "a depth no less than the last, or a note with the reason of the correction",
          '"note": "caliper was held aslant"',
        );
    }
    if (after !== undefined) {
      if (first === undefined) reading.at("before").report("missing", "the depth before the first cut", '"22.2 mm"');
      deepest = after;
    }
  }
}
