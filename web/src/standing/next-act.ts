import { type Issue, kindOfCut, type PrepLine } from "@delaywright/documents";
import type { Told } from "../compute/index.js";
import { fieldWithin, type PartOfPlan, type PlanDocuments } from "./plan-documents.js";
import { targetOf } from "./target.js";
import type { WeatherAge } from "./weather-age.js";

/** Sections of the plan sheet, in the order of the day. */
export const sectionIds = [
  "rocket",
  "motor",
  "field",
  "delay",
  "cut",
  "packing",
  "checks",
  "prep",
  "card",
  "debrief",
] as const;
export type SectionId = (typeof sectionIds)[number];

/** The one thing to do next. */
export interface NextAct {
  readonly words: string;
  /** Shorter, for a phone's bottom bar. */
  readonly short: string;
  readonly section: SectionId;
  /** Field to go to inside its document. */
  readonly field?: { readonly path: string; readonly field: string };
  /** Goes to the pad view. */
  readonly pad?: true;
}

/** What the next act follows from. */
export interface Standing {
  readonly documents: PlanDocuments;
  readonly issues: readonly Issue[];
  readonly told: Told | null;
  readonly age: WeatherAge | null;
  /** The next step of the prep sheet of a flight that was begun; null or left out: none. */
  readonly prepStep?: PrepLine | null;
}

/** The path of an issue inside a part of the plan; null where it stands elsewhere. */
function pathInside(part: PartOfPlan | null, { file, path }: Pick<Issue, "file" | "path">): string | null {
  if (part === null || part.path !== file) return null;
  if (part.within === "") return path;
  if (path === part.within) return "";
  return path.startsWith(`${part.within}.`) ? path.slice(part.within.length + 1) : null;
}

const first = (path: string): string => path.split(/[.[]/)[0] ?? "";

/** Fields of a plan that are not written in the Delay section. */
const planFields: Readonly<Record<string, SectionId>> = Object.freeze({
  rocket: "rocket",
  ballast: "rocket",
  motor: "motor",
  tool: "cut",
  field: "field",
  weather: "field",
  guide: "field",
  date: "field",
  name: "field",
  flyer: "field",
  note: "field",
  site: "field",
  packing: "packing",
  ruleSet: "checks",
});

/** Fields of a rocket that are written in the Packing section. */
const packed: readonly string[] = ["recovery", "bay", "electronicsBay", "sectionMasses"];

/** The section in which the field of an issue is written. */
export function sectionOfIssue(issue: Pick<Issue, "file" | "path">, documents: PlanDocuments): SectionId {
  const { rocket, motor, inHand, tool, field, flyer, ruleSet } = documents;
  const inRocket = pathInside(rocket, issue);
  if (inRocket !== null) return packed.includes(first(inRocket)) ? "packing" : "rocket";
  if (pathInside(motor, issue) !== null || pathInside(inHand, issue) !== null) return "motor";
  if (pathInside(field, issue) !== null || pathInside(flyer, issue) !== null) return "field";
  if (pathInside(ruleSet, issue) !== null) return "checks";
  if (pathInside(tool, issue) !== null) return "cut";
  return planFields[first(issue.path)] ?? "delay";
}

/** A field in words: `fins 1, root`. */
export function wordOfField(path: string): string {
  const words = path
    .replace(/\[(\d+)\]/g, (_, index: string) => ` ${Number(index) + 1}`)
    .replaceAll(".", ", ")
    .replace(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
  return words === "" ? "the document" : words;
}

function mending(issues: readonly Issue[], documents: PlanDocuments): NextAct | null {
  const [issue] = issues;
  if (issue === undefined) return null;
  const missing = issue.code === "missing";
  const word = wordOfField(issue.path);
  const more = issues.length > 1 ? `, 1 of ${issues.length}` : "";
  return {
    words: `Next: ${missing ? "enter" : "mend"} ${word}${more}`,
    short: `Next: ${missing ? "enter" : "mend"} ${word}`,
    section: sectionOfIssue(issue, documents),
    field: { path: issue.file, field: issue.path },
  };
}

function readingsOf({ inHand }: PlanDocuments): readonly { readonly before?: unknown; readonly after?: unknown }[] {
  const readings = inHand?.raw["readings"];
  return Array.isArray(readings) ? readings : [];
}

function cutting({ documents, told }: Standing): NextAct | null {
  if (told === null) return null;
  const target = targetOf(told.data);
  if (target === null || kindOfCut(target, told.data.given.removedDepth) !== "cut") return null;
  const { inHand } = documents;
  const act = (words: string, section: SectionId): NextAct => ({ words, short: words, section });
  if (inHand === null) return { ...act("Next: name the motor in hand", "cut"), short: "Next: name the motor" };
  const measured = readingsOf(documents).some((reading) => reading.before !== undefined);
  return act(
    `Next: ${measured ? "cut" : "measure"} ${inHand.name}${measured ? ", then read it" : ", then cut"}`,
    "cut",
  );
}

/** What is done before the pad; from there on the pad view says it. */
function preparing({ prepStep }: Standing): NextAct | null {
  if (prepStep == null || !["bench", "packing"].includes(prepStep.phase)) return null;
  const title = prepStep.title.charAt(0).toLowerCase() + prepStep.title.slice(1);
  return { words: `Next: ${title}`, short: "Next: the prep sheet", section: "prep" };
}

/** The one thing to do next, or null where all is done here. */
export function nextAct(standing: Standing): NextAct | null {
  const { documents, issues, told, age } = standing;
  const mend = mending(issues, documents);
  if (mend !== null || told === null) return mend;
  const { data, facts } = told;
  const act = (words: string, section: SectionId): NextAct => ({ words, short: words, section });
  if (data.overCut !== null) return act("Next: see the ways out", "delay");
  if (facts.element.kind === "adjustable" && !facts.cutAllowed && documents.motor !== null)
    return {
      ...act("Next: read the motor's instructions", "motor"),
      field: { path: documents.motor.path, field: fieldWithin(documents.motor, "delay.instructions.allowCutting") },
    };
  if (age?.stale === true)
    return { ...act("Next: read the wind", "field"), field: { path: documents.plan.path, field: "weather.wind" } };
  if (data.toCut !== null && !(data.toCut.reachesLeast && data.toCut.reachesHolds))
    return act("Next: see what would help", "delay");
  if (data.checks.some((check) => check.verdict === "stop")) return act("Next: see what says stop", "checks");
  return cutting(standing) ?? preparing(standing) ?? { ...act("Next: to the pad", "cut"), pad: true };
}
