import type { Issue } from "../issue.js";
import type { Raw } from "../migrate.js";
import { parseQuantity } from "../quantity/parse.js";
import { readValue } from "../read.js";
import { Desk } from "./desk.js";
import type { DeskAssumption, DeskEntry, DeskField } from "./desk-entry.js";
import { deskMotor } from "./desk-motor.js";

/** What another flyer's card comes to. */
export interface DeskPlan {
  /** A plan with everything inside it; null while something is missing or wrong. */
  readonly document: Raw | null;
  /** The path of each is the field of the entry that it belongs to. */
  readonly issues: readonly Issue[];
  /** All that the card does not say. */
  readonly assumptions: readonly DeskAssumption[];
}

/** A nose of four calibres, where none is stated, but no longer than a third of the rocket: own default, no source. */
const NOSE_CALIBRES = 4;
const LONGEST_NOSE = 1 / 3;
/** Drag of a rocket whose fins are not stated: own default, no source. */
const CD = 0.55;
/** One sigma of it, as a factor: own default, no source. */
const CD_SPREAD = 0.2;

/**
 * Another flyer's card as a plan ready to be decided. Nothing is kept.
 *
 * What a card does not say is assumed, and each assumption is listed: it belongs beside the odds. The delay is taken as it is
 * set, so the odds are those of that delay.
 *
 * @param entry what the card states, as typed
 * @returns the plan, or an issue beside every field that is missing or wrong
 * @example
 * const { document } = deskPlan({ mass: "2.28 kg", balance: "0.94 m", diameter: "76 mm", length: "1.52 m", cp: "1.1 m",
 *   impulse: "309 N s", burnTime: "2.1 s", delay: "9 s", canopy: "1.1 m" });
 */
export function deskPlan(entry: DeskEntry): DeskPlan {
  const desk = new Desk(entry);
  const motor = deskMotor(desk);
  const plan = { ...planOf(desk), rocket: rocketOf(desk, motor), motor };
  const read = readValue(plan, { file: "", kinds: ["plan"] });
  const told = new Set(desk.issues.map(({ path }) => path));
  for (const issue of read.issues) {
    const path = fieldOf(issue.path);
    if (!told.has(path)) desk.issues.push({ ...issue, path });
    told.add(path);
  }
  const right = desk.issues.length === 0 && read.state === "ready";
  return { document: right ? read.raw : null, issues: desk.issues, assumptions: desk.assumptions };
}

function planOf(desk: Desk): Raw {
  const { field, weather } = desk.entry;
  if (field === undefined) desk.assume("field", "sea level at 45 degrees, without a ceiling");
  if (weather === undefined) desk.assume("weather", "calm, standard air");
  const [tilt, toward] = [desk.text("tilt"), desk.text("toward")];
  return {
    kind: "plan",
    version: 1,
    name: desk.text("name") ?? "Card of another flyer",
    guide: {
      travel: desk.or("guide", () => "1.5 m"),
      ...(tilt === undefined ? {} : { tilt }),
      ...(toward === undefined ? {} : { toward }),
    },
    ...(field === undefined ? {} : { field }),
    ...(weather === undefined ? {} : { weather }),
    ...(hasFins(desk) ? {} : { spread: { dragScale: CD_SPREAD } }),
  };
}

function rocketOf(desk: Desk, motor: Raw): Raw {
  const diameter = desk.needed("diameter", '"76 mm"');
  const length = desk.needed("length", '"1.52 m"');
  const cp = desk.text("cp");
  const fins = finsOf(desk, length);
  if (cp === undefined && fins === undefined) desk.missing("cp", '"1.1 m"');
  if (fins === undefined) desk.assume("finRoot", `a drag coefficient of ${CD}, since the fins are not stated`);
  const { electronics } = desk.entry;
  if (electronics === undefined) desk.assume("electronics", "the motor's charge alone opens it");
  return {
    kind: "rocket",
    version: 1,
    name: desk.text("name") ?? "Rocket of the card",
    diameter,
    length,
    massReady: desk.needed("mass", '"2.28 kg"'),
    balanceReady: desk.needed("balance", '"0.94 m"'),
    readyWith: motor,
    nose: {
      shape: desk.or("noseShape", () => "ogive"),
      length: desk.or("noseLength", () => noseLength(diameter, length)),
      ...(desk.text("noseShape") === "power" ? { exponent: 0.5 } : {}),
    },
    ...(fins === undefined ? { drag: { from: "constant", cd: CD } } : { fins: [fins] }),
    ...(cp === undefined ? {} : { statedCp: cp }),
    // the motor sits at the tail, in a mount of its own diameter
    mount: { diameter: motor["diameter"], motorAftAt: length },
    recovery: {
      ...(electronics === true ? { motorCharge: "backup", electronics: { fires: "apogee" } } : {}),
      main: {
        canopy: { shape: desk.or("canopyShape", () => "flat circular"), diameter: desk.needed("canopy", '"1.1 m"') },
      },
    },
  };
}

const finFields = ["finCount", "finAt", "finRoot", "finTip", "finSpan", "finSweep", "finThickness"] as const;

function hasFins(desk: Desk): boolean {
  return finFields.some((field) => desk.text(field) !== undefined);
}

/** One ring of fins; undefined where the card says nothing of them. */
function finsOf(desk: Desk, length: string): Raw | undefined {
  if (!hasFins(desk)) return undefined;
  const root = desk.needed("finRoot", '"180 mm"');
  const count = desk.or("finCount", () => "3");
  return {
    count: /^\d+$/.test(count) ? Number(count) : count,
    at: desk.or("finAt", () => millimetres((siOf(length) ?? 1) - (siOf(root) ?? 0))),
    root,
    tip: desk.needed("finTip", '"80 mm"'),
    span: desk.needed("finSpan", '"90 mm"'),
    sweep: desk.or("finSweep", () => millimetres((siOf(root) ?? 0) - (siOf(desk.text("finTip") ?? "") ?? 0))),
    thickness: desk.or("finThickness", () => "3 mm"),
  };
}

function noseLength(diameter: string, length: string): string {
  return millimetres(Math.min(NOSE_CALIBRES * (siOf(diameter) ?? 0.076), LONGEST_NOSE * (siOf(length) ?? 1)));
}

function siOf(text: string): number | undefined {
  const parsed = parseQuantity(text, "length");
  return parsed.ok ? parsed.value : undefined;
}

function millimetres(length: number): string {
  return `${Math.round(1000 * length)} mm`;
}

/** Where the fields of an entry stand in the plan; the first that a path begins with. */
const places: readonly (readonly [place: string, field: DeskField])[] = [
  ["rocket.massReady", "mass"],
  ["rocket.balanceReady", "balance"],
  ["rocket.diameter", "diameter"],
  ["rocket.length", "length"],
  ["rocket.statedCp", "cp"],
  ["rocket.nose.shape", "noseShape"],
  ["rocket.nose.exponent", "noseShape"],
  ["rocket.nose", "noseLength"],
  ["rocket.fins[0].count", "finCount"],
  ["rocket.fins[0].at", "finAt"],
  ["rocket.fins[0].root", "finRoot"],
  ["rocket.fins[0].tip", "finTip"],
  ["rocket.fins[0].span", "finSpan"],
  ["rocket.fins[0].sweep", "finSweep"],
  ["rocket.fins[0].thickness", "finThickness"],
  ["rocket.fins[0]", "finRoot"],
  ["rocket.fins", "cp"],
  ["rocket.mount.diameter", "motorDiameter"],
  ["rocket.mount.motorAftAt", "length"],
  ["rocket.recovery.main.canopy.shape", "canopyShape"],
  ["rocket.recovery", "canopy"],
  ["rocket.readyWith.delay", "delay"],
  ["rocket.readyWith.loadedMass", "loadedMass"],
  ["rocket.readyWith.propellantMass", "propellantMass"],
  ["rocket.readyWith.diameter", "motorDiameter"],
  ["rocket.readyWith.length", "motorLength"],
  ["rocket.readyWith.name", "motorName"],
  ["rocket.readyWith", "motor"],
  ["rocket.name", "name"],
  ["motor.delay", "delay"],
  ["motor.loadedMass", "loadedMass"],
  ["motor.propellantMass", "propellantMass"],
  ["motor.diameter", "motorDiameter"],
  ["motor.length", "motorLength"],
  ["motor.name", "motorName"],
  ["motor", "motor"],
  ["guide.travel", "guide"],
  ["guide.tilt", "tilt"],
  ["guide.toward", "toward"],
  ["guide", "guide"],
  ["name", "name"],
];

/** The field that an issue of the plan belongs to; within field and weather the path stays. */
function fieldOf(path: string): string {
  return places.find(([place]) => path === place || path.startsWith(`${place}.`))?.[1] ?? path;
}

/**
 * The field of an entry to which an issue of a plan that `deskPlan` made belongs: for what only shows when its documents are
 * held against each other.
 *
 * @example
 * deskIssue(issue).path; // "mass"
 */
export function deskIssue(issue: Issue): Issue {
  return { ...issue, file: "", path: fieldOf(issue.path) };
}
