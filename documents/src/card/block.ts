import { shorten } from "../issue.js";
import type { UnitSystem } from "../quantity/systems.js";
import type { CardCode } from "./card-code.js";
import type { CardData } from "./card-data.js";
import { escaped } from "./html.js";

/** How much of each list a card carries. Stops and looks are always all there. */
export interface CardAmount {
  /** Topics of cautions, and whether each with all its sentences. */
  readonly cautions: number;
  readonly wholeCautions: boolean;
  /** Names of checks that were not made. */
  readonly notChecked: number;
  readonly warnings: number;
  /** What it means, beside each stop and look. */
  readonly stopMeanings: boolean;
  readonly lookMeanings: boolean;
  /** Each look on a line of its own; else one after the other. */
  readonly looksApart: boolean;
  /** Boxes to tick after the flight. */
  readonly after: boolean;
  /** Smaller letters. */
  readonly small: boolean;
  /** The most needed words only, and a smaller code. */
  readonly tight: boolean;
  /** Opening, recovery, landing and weather; else height and where it comes down unopened. */
  readonly flight: boolean;
  /** The plan's code. */
  readonly code: boolean;
  /** Each stop on a line of its own; else one after the other. */
  readonly stopsApart: boolean;
}

/** A part of the page and how many lines it takes. */
export interface Block {
  readonly html: string;
  readonly lines: number;
}

/** What a body is made of. */
export interface BodyInputs {
  readonly card: CardData;
  readonly code: CardCode | null;
  readonly units: UnitSystem;
  /** Width between the margins [em]. */
  readonly width: number;
}

/** Longest name that is printed, and longest where there is much to say; what is longer is cut. */
export const NAME = 56;
export const SHORT_NAME = 30;
/** Longest text of a list that is printed. */
export const LONG = 10_000;
/** Width of bold letters over that of others. */
export const BOLD = 1.08;

/** A text as markup shows it, cut where it is longer than `most`. */
export function shownText(text: string, most = 200): string {
  return escaped(shorten(text, most));
}
