import {
  calibrationSentence,
  cautions,
  coastFlownSentence,
  type DebriefData,
  debriefHead,
  delayLearnedSentence,
  dragSentence,
  fittedClimbSentence,
  flawSentences,
  impulseSentence,
  issueLine,
  learnedBasis,
  meaningSentence,
  nextSentence,
  nextTopSentence,
  noteSentences,
  oddsGivenSentence,
  openingRangeSentence,
  type ReadLogRecord,
  recordSentence,
  setSentence,
  toldEvents,
  topBandSentence,
  topsSentence,
  type UnitSystem,
  untaughtSentences,
} from "@delaywright/documents";
import { styleFor } from "../style.js";
import { bullet, wrap } from "../wrap.js";
import { eventsTable } from "./events-table.js";
import { flightsTable } from "./flights-table.js";
import { readingSentences } from "./reading.js";

/** A debrief with what it is told with. */
export interface ToldDebrief {
  readonly data: DebriefData;
  /** The record as it was read; null without one. */
  readonly seen: ReadLogRecord | null;
  readonly units: UnitSystem;
}

type Lines = readonly (string | null)[];

/** A debrief for a person: what happened, what it means, what was learned, what it changes, and how it was read. */
export function debriefText(told: ToldDebrief, colour: boolean): string {
  const { data, units } = told;
  const style = styleFor(colour);
  const section = (head: string, lines: Lines): string | null => {
    const kept = lines.filter((line) => line !== null);
    return kept.length === 0 ? null : [style.strong(head), ...kept].join("\n");
  };
  const bullets = (sentences: Lines): string[] => sentences.flatMap((each) => (each === null ? [] : [bullet(each)]));
  const sections = [
    [
      style.strong(wrap(debriefHead(data, units))),
      ...[
        oddsGivenSentence(data),
        topBandSentence(data, units),
        openingRangeSentence(data),
        coastFlownSentence(data),
      ].flatMap((line) => (line === null ? [] : [wrap(line)])),
    ].join("\n"),
    section("What happened", [eventsTable(data, units)]),
    section(
      "What the differences mean",
      bullets(
        toldEvents(data.events)
          .filter(({ meaning }) => meaning !== "starts-clock")
          .map((event) => meaningSentence(event, units)),
      ),
    ),
    section("What was learned", bullets(learnedLines(data, units))),
    section("What it changes", bullets([nextSentence(data.next), nextTopSentence(data.next, units)])),
    section("All flights", [
      flightsTable(data, units),
      ...bullets([calibrationSentence(data.calibration), topsSentence(data.calibration)]),
    ]),
    section("How it was read", bullets(readLines(told))),
    section(
      "Not read",
      data.issues.map((issue) => wrap(issueLine(issue), "  ", "    ")),
    ),
    wrap(`${data.model} model, ${data.draws} draws, seed ${data.seed}.`),
    cautions.authority.map((line) => wrap(line)).join("\n"),
  ];
  return `${sections.filter((each) => each !== null).join("\n\n")}\n`;
}

function learnedLines(data: DebriefData, units: UnitSystem): Lines {
  const { learned } = data;
  return [
    dragSentence(learned),
    impulseSentence(learned),
    delayLearnedSentence(learned),
    ...untaughtSentences(learned),
    learnedBasis(learned.after),
    fittedClimbSentence(data, units),
  ];
}

function readLines({ data, seen, units }: ToldDebrief): Lines {
  return [
    data.record === null ? null : recordSentence(data.record, units),
    ...(seen === null ? [] : readingSentences(seen)),
    ...(data.record === null ? [] : flawSentences(data.record)),
    setSentence(data),
    ...noteSentences(data),
  ];
}
