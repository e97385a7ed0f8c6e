import type {
  DebriefData,
  Fault,
  FlightDocument,
  Issue,
  LearnedDocument,
  LogMapping,
  LogPreview,
  PastFlightData,
  Raw,
} from "@delaywright/documents";
import type { Calibration, EventName } from "@delaywright/engine";
import type { Incoming, ReadFiles } from "../../store/read-incoming.js";

/** A line of a plot, thinned: seconds after lift-off, and figures in SI units. */
export interface ThinLine {
  readonly time: Float64Array;
  readonly value: Float64Array;
}

/** Two lines and what lies between them: seconds after the predicted lift-off, and figures in SI units. */
export interface BandLine {
  readonly time: Float64Array;
  readonly low: Float64Array;
  readonly high: Float64Array;
}

/** A stretch of a flight as recorded, thinned so that no spike is lost. */
export interface FlownLines {
  readonly height: ThinLine;
  readonly speed: ThinLine;
  /** Null without an accelerometer. */
  readonly acceleration: ThinLine | null;
}

/** Which stretch of a flight is asked for, seconds after lift-off, and of at most how many points. */
export interface StretchAsk {
  readonly from: number;
  readonly to: number;
  readonly most: number;
}

/** One flight to be debriefed. */
export interface DebriefAsk {
  /** Documents by path: the plan, all flights, and what they refer to. */
  readonly documents: Readonly<Record<string, Raw>>;
  readonly plan: string;
  readonly flight: string;
  /** Null: there is none, and what was written down counts. */
  readonly record: RecordAsk | null;
  /** Of each line of the plot at most; left out: as many as a wide window shows. */
  readonly points?: number;
}

/** How the file that was opened is to be read. */
export interface RecordAsk {
  readonly file: string;
  readonly mapping: LogMapping;
  /** Which flight of the record, from 1; left out: the highest. */
  readonly number?: number;
  /** Events that the flyer moved, on the record's own clock [s]; left out: as written down with the flight. */
  readonly moved?: Moved;
}

export type Moved = { readonly [Name in EventName]?: number };

/** A stretch of time, seconds after lift-off. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** What came of a debrief. */
export interface DebriefTold {
  readonly data: DebriefData;
  /** What is written into the flight's document where the flyer accepts it. */
  readonly findings: NonNullable<FlightDocument["findings"]>;
  readonly forecast: FlightDocument["forecast"];
  /** Null without a record. */
  readonly plot: {
    readonly whole: Stretch;
    /** Lift-off on the clock of the flight's record [s]. */
    readonly zero: number;
    /** Where each event that was found may be moved. */
    readonly ranges: { readonly [Name in EventName]?: Stretch };
    readonly moved: Moved;
    /** Vertical, slope of the predicted height [m/s]. */
    readonly predictedSpeed: ThinLine;
    /** Heights between which 9 in 10 of the plan's flights are [m]; null where none flies. */
    readonly predictedBand: BandLine | null;
    readonly lines: FlownLines;
  } | null;
  /** What was learned, as a plan holds it. */
  readonly learned: LearnedDocument;
  /** The plan as it was flown, with everything inside it. */
  readonly plan: Raw;
  /** All draws are flown. */
  readonly settled: boolean;
}

/** What a file holds under a mapping, or what is wrong with it. */
export type Previewed =
  | {
      readonly ok: true;
      readonly preview: LogPreview;
      readonly rows: number;
      /** Rough lift-off on the record's own clock [s], and top [m]. */
      readonly flights: readonly { readonly liftOff: number; readonly top: number }[];
    }
  | { readonly ok: false; readonly faults: readonly Fault[]; readonly preview: LogPreview | null };

/** All flights, and how the odds held that they were given. */
export interface FlightLibrary {
  readonly past: readonly Omit<PastFlightData, "isThis">[];
  readonly calibration: Calibration;
}

/** A file as it is handed to the worker, which reads it: its bytes never pass through the page. */
export interface LogFile {
  readonly bytes: Blob;
  /** It is compressed. */
  readonly gzip: boolean;
}

/** A file as it is kept. */
export interface PackedLog {
  /** Says what is in it. */
  readonly path: string;
  /** Compressed. */
  readonly gzip: Blob;
}

/** From the page. A later debrief drops the one before, a later file the one that is still read. */
export type ToDebrief =
  | { readonly kind: "open"; readonly job: number; readonly file: LogFile }
  | { readonly kind: "pack"; readonly job: number; readonly name: string }
  | { readonly kind: "preview"; readonly job: number; readonly mapping: LogMapping | null }
  | { readonly kind: "debrief"; readonly job: number; readonly ask: DebriefAsk }
  | { readonly kind: "library"; readonly job: number; readonly documents: DebriefAsk["documents"] }
  | { readonly kind: "stretch"; readonly job: number; readonly ask: StretchAsk }
  /** Files that are to be taken in. */
  | { readonly kind: "incoming"; readonly job: number; readonly files: readonly Incoming[] };

/** To the page, each with the job that it belongs to. */
export type FromDebrief =
  /** Null: the file cannot be unpacked. */
  | { readonly kind: "opened"; readonly job: number; readonly previewed: Previewed | null }
  | { readonly kind: "previewed"; readonly job: number; readonly previewed: Previewed }
  | { readonly kind: "packed"; readonly job: number; readonly packed: PackedLog }
  | { readonly kind: "library"; readonly job: number; readonly library: FlightLibrary }
  | { readonly kind: "told"; readonly job: number; readonly told: DebriefTold }
  | { readonly kind: "wrong"; readonly job: number; readonly issues: readonly Issue[] }
  /** Null: no record is open. */
  | { readonly kind: "lines"; readonly job: number; readonly lines: FlownLines | null }
  | { readonly kind: "incoming"; readonly job: number; readonly read: ReadFiles }
  /** A later debrief was asked for, or a later file. */
  | { readonly kind: "dropped"; readonly job: number }
  /** A defect. */
  | { readonly kind: "failed"; readonly job: number; readonly reason: string };
