import { checkMotor } from "../motor/check.js";
import type { RawView } from "../raw.js";

/** What a rocket's fields must be to each other. */
export function checkRocket(rocket: RawView): void {
  checkMass(rocket);
  if (rocket.at("readyWith").isObject) checkMotor(rocket.at("readyWith"));
  if (!rocket.has("statedCp") && rocket.at("fins").list.length === 0) {
    rocket.at("fins").report("missing", "at least one ring of fins, or statedCp", '"statedCp": "1.18 m"');
  }
  checkNose(rocket.at("nose"));
  checkSections(rocket);
  rocket.at("fins").list.forEach(checkFins);
  checkDrag(rocket.at("drag"));
  checkRecovery(rocket.at("recovery"));
}

function checkMass(rocket: RawView): void {
  const withoutMotor = ["massWithoutMotor", "balanceWithoutMotor"];
  const ready = ["massReady", "balanceReady", "readyWith"];
  if (!ready.some((key) => rocket.has(key))) {
    for (const key of withoutMotor.filter((each) => !rocket.has(each))) {
      const example = key === "massWithoutMotor" ? '"1.95 kg"' : '"0.86 m"';
      rocket.at(key).report("missing", `${key}, or massReady, balanceReady and readyWith instead of both`, example);
    }
    return;
  }
  for (const key of withoutMotor.filter((each) => rocket.has(each))) {
    rocket.at(key).report("one-of-two", "either the figures without motor or the figures ready to fly");
  }
  for (const key of ready.filter((each) => !rocket.has(each))) {
    const example = { massReady: '"2.28 kg"', balanceReady: '"0.98 m"' }[key] ?? '"demo-h150.motor.json"';
    rocket.at(key).report("missing", "massReady, balanceReady and readyWith together", example);
  }
}

function checkNose(nose: RawView): void {
  const shape = nose.at("shape").text;
  if (shape === "power" && !nose.has("exponent"))
    nose.at("exponent").report("missing", "a number from 0.05 to 1", "0.5");
  if (nose.has("exponent") && shape !== "power")
    nose.at("exponent").report("does-not-belong", "only with the shape power");
  if (nose.has("c") && shape !== "haack") nose.at("c").report("does-not-belong", "only with the shape haack");
}

function checkSections(rocket: RawView): void {
  const length = rocket.at("length").si("length") ?? Number.POSITIVE_INFINITY;
  const nose = rocket.at("nose").at("length").si("length");
  if (nose !== undefined && nose > length) {
    rocket.at("nose").at("length").report("too-long-for-rocket", "a nose no longer than the rocket");
  }
  let end = nose ?? 0;
  for (const section of rocket.at("sections").list) {
    const at = section.at("at").si("length");
    const long = section.at("length").si("length");
    if (at === undefined || long === undefined) continue;
    if (at < end - 1e-9) section.at("at").report("not-in-order", "a place behind the nose and the section before it");
    if (at + long > length + 1e-9)
      section.at("length").report("too-long-for-rocket", "a section that ends within the rocket's length");
    end = at + long;
  }
}

function checkFins(fins: RawView): void {
  const points = fins.at("points").list.map((point) => [point.at(0).si("length"), point.at(1).si("length")] as const);
  if (points.length < 3 || points.some((point) => point.includes(undefined))) return;
  for (const index of [0, points.length - 1]) {
    if (Math.abs(points[index]?.[1] ?? 0) > 1e-6) {
      fins
        .at("points")
        .at(index)
        .report("not-on-root", "first and last corner on the root, spanwise 0", '["180 mm", "0 mm"]');
    }
  }
  if (!points.some((point) => (point[1] ?? 0) > 1e-6))
    fins.at("points").report("no-span", "corners that stand out from the tube");
}

function checkDrag(drag: RawView): void {
  if (drag.at("from").text !== "table") return;
  const mach = drag.at("mach").list.map((each) => each.number);
  for (const column of ["coasting", "thrusting"]) {
    const { length } = drag.at(column).list;
    if (length > 0 && length !== mach.length)
      drag.at(column).report("lengths-differ", `a list of ${mach.length}, one for each Mach number`);
  }
  mach.forEach((value, index) => {
    const before = mach[index - 1];
    if (value !== undefined && before !== undefined && value <= before) {
      drag.at("mach").at(index).report("not-rising", `a Mach number above ${before}`);
    }
  });
}

function checkRecovery(recovery: RawView): void {
  if (recovery.at("motorCharge").text === "backup" && !recovery.has("electronics")) {
    recovery
      .at("electronics")
      .report("missing", "the electronics that the charge stands behind", '{ "fires": "apogee" }');
  }
  if (recovery.has("drogue") && !recovery.at("main").has("opensAt")) {
    recovery
      .at("main")
      .at("opensAt")
      .report("missing", "the height at which the main opens after the drogue", '"150 m"');
  }
  for (const key of ["opensAt", "shearPins"]) {
    if (recovery.at("main").has(key) && !recovery.has("drogue"))
      recovery.at("main").at(key).report("does-not-belong", "only with a drogue");
  }
  const [hole, canopy] = [
    recovery.at("main").at("spillHole").si("length"),
    recovery.at("main").at("canopy").at("diameter").si("length"),
  ];
  if (hole !== undefined && canopy !== undefined && hole >= canopy)
    recovery.at("main").at("spillHole").report("out-of-range", "less than the diameter of the canopy");
}
