import type { Issue } from "../issues.js";
import { baseDiameter } from "./outline.js";
import type { DragSource, FinSet, NoseShape, Rocket } from "./rocket.js";

const finite = Number.isFinite;

interface Findings {
  readonly issues: Issue[];
  add(code: string, path: string, found: number | string, accepted: string): void;
  /** Adds an issue unless the value is above zero; tells whether it is. */
  positive(path: string, value: number, unit?: string): boolean;
  /** Adds an issue unless the value lies within the limits, both included. */
  within(code: string, path: string, value: number, least: number, most: number, unit?: string): void;
}

function findings(): Findings {
  const issues: Issue[] = [];
  const add: Findings["add"] = (code, path, found, accepted) => {
    issues.push({ code, path: `rocket.${path}`, found, accepted });
  };
  return {
    issues,
    add,
    positive: (path, value, unit = "m") => {
      const fine = finite(value) && value > 0;
      if (!fine) add("not-positive", path, value, `> 0 ${unit}`.trim());
      return fine;
    },
    within: (code, path, value, least, most, unit = "m") => {
      if (finite(value) && value >= least && value <= most) return;
      const range = most === Number.POSITIVE_INFINITY ? `≥ ${least} ${unit}` : `${least} … ${most} ${unit}`;
      add(code, path, value, range.trim());
    },
  };
}

function noseShapeIssues(found: Findings, shape: NoseShape, fineness: number): void {
  if (shape.kind === "haack") found.within("haack-out-of-range", "nose.shape.c", shape.c, 0, 2 / 3, "");
  if (shape.kind === "power" && !(shape.exponent > 0 && shape.exponent <= 1))
    found.add("power-out-of-range", "nose.shape.exponent", shape.exponent, "> 0, ≤ 1");
  if (shape.kind === "ogive" && fineness < 0.5)
    found.add("ogive-too-blunt", "nose.length", fineness, "length ≥ 0.5 diameters");
}

function transitionIssues(found: Findings, rocket: Rocket): void {
  let free = rocket.nose.length;
  for (const [i, transition] of rocket.transitions.entries()) {
    const path = `transitions[${i}]`;
    found.positive(`${path}.length`, transition.length);
    found.positive(`${path}.aftDiameter`, transition.aftDiameter);
    found.within("transition-overlaps", `${path}.at`, transition.at, free, Number.POSITIVE_INFINITY);
    const end = transition.at + transition.length;
    if (end > rocket.length * (1 + 1e-9)) found.add("transition-beyond-tail", path, end, `≤ ${rocket.length} m`);
    free = end;
  }
}

function outlineIssues(found: Findings, fins: FinSet, path: string): number | undefined {
  const { shape } = fins;
  if (shape.kind === "polygon") {
    const { points } = shape;
    const first = points[0];
    const last = points.at(-1);
    if (points.length < 3 || !first || !last) {
      found.add("polygon-too-few-points", `${path}.points`, points.length, "≥ 3 points");
      return undefined;
    }
    if (first[1] !== 0 || last[1] !== 0)
      found.add(
        "polygon-off-root",
        `${path}.points`,
        first[1] === 0 ? last[1] : first[1],
        "0 m spanwise, first and last",
      );
    if (!points.flat().every(finite)) found.add("not-a-number", `${path}.points`, "not a number", "finite numbers");
    if (points.some(([, y]) => y < 0))
      found.add("polygon-inside-tube", `${path}.points`, "below the root", "≥ 0 m spanwise");
    found.positive(`${path}.points`, Math.max(...points.map(([, y]) => y)));
    if (selfCrossing(points))
      found.add("polygon-crosses-itself", `${path}.points`, "crossing edges", "a simple outline");
    return last[0] - first[0];
  }
  found.positive(`${path}.root`, shape.root);
  found.positive(`${path}.span`, shape.span);
  if (shape.kind === "trapezoid") {
    found.within("negative", `${path}.tip`, shape.tip, 0, Number.POSITIVE_INFINITY);
    if (!finite(shape.sweep)) found.add("not-a-number", `${path}.sweep`, shape.sweep, "a finite length in m");
  }
  return shape.root;
}

type Point = readonly [number, number];
const side = (a: Point, b: Point, c: Point) => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

function selfCrossing(points: readonly Point[]): boolean {
  const edges = points.map((point, i): readonly [Point, Point] => [point, points[(i + 1) % points.length] ?? point]);
  return edges.some(([a, b], i) =>
    edges.slice(i + 2).some(([c, d]) => side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0),
  );
}

function finIssues(found: Findings, rocket: Rocket): void {
  for (const [i, fins] of rocket.finSets.entries()) {
    const path = `finSets[${i}]`;
    const root = outlineIssues(found, fins, `${path}.shape`);
    found.positive(`${path}.thickness`, fins.thickness);
    if (!Number.isInteger(fins.count) || fins.count < 1)
      found.add("fin-count", `${path}.count`, fins.count, "a whole number ≥ 1");
    if (root !== undefined && !(root > 0)) found.add("not-positive", `${path}.shape`, root, "root > 0 m");
    const most = rocket.length - (root ?? 0);
    if (!(finite(fins.at) && fins.at >= 0 && fins.at <= most * (1 + 1e-9)))
      found.add("fins-off-body", `${path}.at`, fins.at, `0 … ${most} m, so that the root ends on the body`);
  }
  if (rocket.statedCp === undefined && !rocket.finSets.some((fins) => fins.count >= 3)) {
    const counts = rocket.finSets.map((fins) => fins.count);
    if (counts.length === 0) found.add("no-fins", "finSets", 0, "a fin set, or a stated centre of pressure");
    else found.add("too-few-fins", "finSets", Math.max(...counts), "≥ 3 fins in a set, or a stated centre of pressure");
  }
}

function dragIssues(found: Findings, drag: DragSource): void {
  found.positive("drag.scale", drag.scale, "");
  if (drag.from === "constant") found.positive("drag.cd", drag.cd, "");
  if (drag.from !== "table") return;
  const { mach, coasting, thrusting } = drag;
  if (mach.length === 0) found.add("table-empty", "drag.mach", 0, "≥ 1 row");
  for (const [name, column] of [
    ["coasting", coasting],
    ["thrusting", thrusting],
  ] as const) {
    if (column.length !== mach.length)
      found.add("table-lengths-differ", `drag.${name}`, column.length, `${mach.length} values, as many as drag.mach`);
    for (const [i, value] of column.entries()) found.positive(`drag.${name}[${i}]`, value, "");
  }
  for (const [i, value] of mach.entries()) {
    const before = mach[i - 1] ?? Number.NEGATIVE_INFINITY;
    if (!(finite(value) && value >= 0)) found.add("negative", `drag.mach[${i}]`, value, "≥ 0");
    else if (value <= before) found.add("mach-not-rising", `drag.mach[${i}]`, value, `> ${before}`);
  }
}

function mountIssues(found: Findings, rocket: Rocket): void {
  const { mount } = rocket;
  if (found.positive("mount.diameter", mount.diameter) && mount.diameter > baseDiameter(rocket))
    found.add("mount-wider-than-body", "mount.diameter", mount.diameter, `≤ ${baseDiameter(rocket)} m`);
  found.positive("mount.motorAftAt", mount.motorAftAt);
  if (mount.length === undefined) return;
  found.positive("mount.length", mount.length);
  if (mount.length > mount.motorAftAt)
    found.add("mount-too-long", "mount.length", mount.length, `≤ ${mount.motorAftAt} m`);
}

/**
 * Everything that makes a rocket impossible, all at once. Unlikely but possible sizes are not its business.
 *
 * @returns empty where the rocket can be computed with; paths begin with `rocket.`
 * @example
 * rocketIssues({ ...exampleRocket, mass: 0 }).map((issue) => issue.code); // ["not-positive"]
 */
export function rocketIssues(rocket: Rocket): Issue[] {
  const found = findings();
  const { nose, diameter, length } = rocket;
  const sized = [
    found.positive("diameter", diameter),
    found.positive("length", length),
    found.positive("nose.length", nose.length),
  ].every(Boolean);
  found.positive("mass", rocket.mass, "kg");
  found.positive("inertia", rocket.inertia, "kg m²");
  found.within("negative", "roughness", rocket.roughness, 0, Number.POSITIVE_INFINITY);
  found.within("off-body", "balance", rocket.balance, 0, length);
  if (rocket.statedCp !== undefined) found.within("off-body", "statedCp", rocket.statedCp, 0, length);
  if (sized && nose.length >= length) found.add("nose-too-long", "nose.length", nose.length, `< ${length} m`);
  noseShapeIssues(found, nose.shape, nose.length / diameter);
  transitionIssues(found, rocket);
  finIssues(found, rocket);
  for (const [i, fitting] of rocket.fittings.entries()) {
    found.within("off-body", `fittings[${i}].at`, fitting.at, 0, length);
    if (fitting.frontalArea !== undefined)
      found.within("negative", `fittings[${i}].frontalArea`, fitting.frontalArea, 0, Number.POSITIVE_INFINITY, "m²");
  }
  dragIssues(found, rocket.drag);
  mountIssues(found, rocket);
  return found.issues;
}
