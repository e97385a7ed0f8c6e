import {
  type DecisionData,
  headlineSentence,
  type PrepBranchLines,
  type PrepData,
  type PrepLine,
  prepAuthority,
  prepBranchLines,
  prepBranchWords,
  prepLines,
  prepPhaseWords,
  stopSentences,
  type UnitSystem,
} from "@delaywright/documents";
import type { PrepBranch, PrepPhase } from "@delaywright/engine";
import { shown } from "./shown.js";
import { type Style, styleFor } from "./style.js";
import { wrap } from "./wrap.js";

/** What a prep sheet is told with. */
export interface PrepTold {
  readonly data: DecisionData;
  readonly sheet: PrepData;
  readonly units: UnitSystem;
}

/** Letters that fit across A4 in a fixed font of 10 points. */
const PAGE = 88;
const INDENT = "       ";
const BLANK = "______  __:__";
const phases: readonly PrepPhase[] = ["bench", "packing", "pad", "countdown", "after"];
const branches: readonly PrepBranch[] = ["scrub", "misfire"];

const page = (text: string, indent = INDENT, hanging = indent): string => wrap(text, indent, hanging, PAGE);

/** Initials and time at the right edge, or room for them. */
function signColumn({ signed }: PrepLine): string {
  if (signed === null) return BLANK;
  const time = /T(\d\d:\d\d)/.exec(signed.when)?.[1] ?? "";
  return `${shown(signed.by).slice(0, 6).padEnd(6)}  ${time}`.padEnd(BLANK.length);
}

function stepText(line: PrepLine, number: string, style: Style, fresh: boolean): string {
  const head = `${number.padStart(2)} [${line.signed === null ? " " : "x"}] `;
  const title = wrap(line.title, head, INDENT, PAGE - BLANK.length - 2).split("\n");
  const first = `${(title[0] ?? "").padEnd(PAGE - BLANK.length)}${signColumn(line)}`.trimEnd();
  return [
    style.strong(first),
    ...title.slice(1),
    ...line.hazards.map((each) => style.look(page(each, `${INDENT}! `, `${INDENT}  `))),
    ...line.how.map((each) => page(each)),
    ...(line.code === null ? [] : [page(line.code)]),
    page(line.reason, `${INDENT}Why here: `, INDENT),
    ...(fresh ? [] : line.waits.map((each) => style.stop(page(each)))),
  ].join("\n");
}

function phaseText(phase: PrepPhase, lines: readonly PrepLine[], style: Style, fresh: boolean): string {
  const steps = lines.flatMap((line, i) => (line.phase === phase ? [stepText(line, String(i + 1), style, fresh)] : []));
  return [style.strong(prepPhaseWords(phase)), ...steps].join("\n\n");
}

function branchText(branch: PrepBranch, { steps, again }: PrepBranchLines, style: Style): string {
  const letter = branch === "scrub" ? "s" : "m";
  return [
    style.strong(prepBranchWords(branch)),
    ...steps.map((line, i) => stepText(line, `${letter}${i + 1}`, style, true)),
    page(`Then again: ${again.map((title) => title.toLowerCase()).join("; ")}.`),
  ].join("\n\n");
}

/** A prep sheet for a person, to print and to sign. */
export function prepText({ data, sheet, units }: PrepTold, colour: boolean): string {
  const style = styleFor(colour);
  const { context } = data;
  const lines = prepLines(sheet, units);
  const fresh = sheet.state.events.length === 0;
  const names = [context.rocket, context.motor, context.field].filter((name) => name !== undefined).join(", ");
  const walked = new Set(sheet.state.steps.map(({ step }) => step.branch));
  const head = [
    style.strong(page(`Prep sheet: ${context.plan}`, "")),
    page(`${names}${context.date === undefined ? "" : `, ${context.date}`}. ${headlineSentence(data)}`, ""),
    ...stopSentences(data).map((each) => style.stop(page(`Stop: ${each}`, "", "  "))),
    page(prepAuthority, ""),
    page("Sign each step when it is done, with initials and time; nothing before what stands above it.", ""),
  ].join("\n");
  const sections = [
    head,
    ...phases.map((phase) => phaseText(phase, lines, style, fresh)),
    ...branches
      .filter((each) => !walked.has(each))
      .map((each) => branchText(each, prepBranchLines(sheet, each, units), style)),
  ];
  return `${sections.join("\n\n")}\n`;
}

/** A prep sheet for machines. */
export function prepJson({ data, sheet, units }: PrepTold) {
  const { state, facts, setting } = sheet;
  const needs = new Map(
    state.steps.map(({ step, waitsFor, hindrances, due }) => [
      step.id,
      { needs: step.preconditions.map((each) => each.step), waitsFor, hindrances, due },
    ]),
  );
  const told = (line: PrepLine) => ({ ...line, ...needs.get(line.id) });
  const branch = (name: PrepBranch) => prepBranchLines(sheet, name, units);
  return {
    context: data.context,
    setting,
    facts: {
      delay: facts.delay,
      cut: facts.cut,
      electronics: facts.electronics,
      ownCharge: facts.ownCharge,
      shearPins: facts.shearPins,
      drogue: facts.drogue,
      checkSaysStop: facts.checkSaysStop,
    },
    next: state.next,
    flown: state.flown,
    igniterIn: state.igniterIn,
    electronicsOn: state.electronicsOn,
    steps: prepLines(sheet, units).map(told),
    scrub: branch("scrub"),
    misfire: branch("misfire"),
  };
}
