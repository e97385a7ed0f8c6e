import {
  aimNote,
  aimWords,
  cautions,
  decimals,
  delayColumn,
  holdsCell,
  issueLine,
  kindOfCut,
  percentCell,
  type RankedData,
  refusalWords,
  rowNotes,
  type ShortlistData,
  shortlistBasis,
  shortlistColumnsNote,
  shortlistHead,
} from "@delaywright/documents";
import { styleFor } from "./style.js";
import { type Column, table } from "./table.js";
import { bullet, wrap } from "./wrap.js";

const columns: readonly Column[] = [
  { head: "", align: "left" },
  { head: "cut to\ns" },
  { head: "clean\n%" },
  { head: "holds\n%" },
  { head: "height\nm" },
  { head: "opens\nbelow m/s" },
  { head: "leaves guide\nat m/s" },
  { head: "thrust to\nweight" },
  { head: "price" },
];

/** Delay to cut, with a word where nothing is to be cut or no cut may be shown. */
function cutCells(ranked: readonly RankedData[]): string[] {
  const cuts = ranked.flatMap(({ toCut }) => (toCut === null ? [] : [toCut.delay]));
  const delays = delayColumn(cuts);
  let next = 0;
  return ranked.map(({ toCut }) => {
    if (toCut === null) return "none";
    const delay = delays[next++] ?? "";
    return kindOfCut(toCut) === "uncut" ? `as it is ${delay}` : delay;
  });
}

function row({ name, toCut, height, launch, thrustToWeight, price }: RankedData, cut: string): string[] {
  const fast = toCut?.openingSpeed.p90 ?? null;
  return [
    name,
    cut,
    toCut === null ? "-" : percentCell(toCut.odds.clean),
    toCut === null ? "-" : holdsCell(toCut.odds.holds),
    height === null ? "-" : `${decimals(height.p50, 0)} / ${decimals(height.p95, 0)}`,
    fast === null ? "-" : String(Math.ceil(fast)),
    launch === null ? "-" : decimals(launch.guideExitSpeed, 1),
    decimals(thrustToWeight, 1),
    price === null ? "-" : String(price),
  ];
}

/** Notes that several motors share are told once, with their names. */
function notesOf(ranked: readonly RankedData[]): string[] {
  const notes = new Map<string, string[]>();
  for (const each of ranked) {
    for (const note of rowNotes(each)) notes.set(note, [...(notes.get(note) ?? []), each.name]);
  }
  return [...notes].map(([note, names]) =>
    bullet(`${names.length === ranked.length && names.length > 1 ? "All of them" : names.join("; ")}: ${note}`),
  );
}

function ranking(data: ShortlistData): string[] {
  const { ranked } = data;
  if (ranked.length === 0) return [];
  const cuts = cutCells(ranked);
  const note = aimNote(data);
  const shown = columns.slice(0, ranked.some(({ price }) => price !== null) ? columns.length : -1);
  return [
    `Motors that are not refused, ${aimWords(data.aim)} first`,
    table(
      shown,
      ranked.map((each, i) => row(each, cuts[i] ?? "").slice(0, shown.length)),
    ),
    wrap(shortlistColumnsNote, "  "),
    ...(note === null ? [] : [wrap(note, "  ")]),
    ...notesOf(ranked),
  ];
}

/** A shortlist for a person: what is left first, then what was refused, by its reasons. */
export function shortlistText(data: ShortlistData, colour: boolean): string {
  const style = styleFor(colour);
  const headed = (lines: readonly string[]): string | null => {
    const [head, ...rest] = lines;
    return head === undefined ? null : [style.strong(head), ...rest].join("\n");
  };
  const refusals = refusalWords(data).map(({ head, groups }) => {
    const named = groups.map(({ motors, note }) => `${motors.join("; ")}${note === "" ? "" : ` (${note})`}`);
    return bullet(`${head}: ${named.join("; ")}`);
  });
  const unjudged = data.unjudged.flatMap(({ issues }) => issues.map((issue) => bullet(issueLine(issue))));
  const sections = [
    style.strong(wrap(shortlistHead(data))),
    headed(ranking(data)),
    headed(refusals.length === 0 ? [] : ["Refused", ...refusals]),
    headed(unjudged.length === 0 ? [] : ["Not judged", ...unjudged]),
    wrap(shortlistBasis(data)),
    cautions.authority.map((line) => wrap(line)).join("\n"),
  ];
  return `${sections.filter((section) => section !== null).join("\n\n")}\n`;
}
