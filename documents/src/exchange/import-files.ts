import { readThrust } from "../csv/thrust.js";
import { resolvePath, utf8 } from "../file-source.js";
import type { Fault, Issue } from "../issue.js";
import { isKind, type Kind } from "../kinds/kinds.js";
import type { Raw } from "../migrate.js";
import { readValue } from "../read.js";
import { failureWords } from "../words/accepted.en.js";
import type { GivenFile, Imported, ImportedCurve, ImportedEntry, ImportedRecord, ImportOptions } from "./exchange.js";
import { baseName, flatPath, isFlat, Paths } from "./flat-path.js";
import { joinedRecords, recordPath } from "./records.js";
import { isRaw, type Named, withReferences } from "./references.js";
import { type Piece, shortName, unpack } from "./unpack.js";

/**
 * Takes in any set of files: documents alone or with those they refer to, in folders or not, libraries, thrust curves.
 *
 * Every document gets a flat path, and every path that it names is rewritten to the flat one; documents inside others stay
 * there. A thrust curve that a motor names moves into the motor; a record that a log names comes beside it. Nothing is thrown, a wrong file stops no other, and a wrong
 * document is kept as it is.
 *
 * @param files names with their folders, and bytes of at most `LARGEST_FILE` each
 * @param options taken: paths in use already
 * @returns documents in the order of the files, curves without a motor, records of logs, and what was not taken
 * @example
 * const { entries } = await importFiles([{ name: "demo.rocket.json", bytes }]);
 * entries[0]?.path; // "demo.rocket.json"
 */
export async function importFiles(files: readonly GivenFile[], options: ImportOptions = {}): Promise<Imported> {
  const { pieces, records: parts, issues } = unpack(files);
  const taken = new Set(options.taken ?? []);
  const whole = joinedRecords(parts);
  const importer = new Importer(pieces, new Set([...taken, ...whole.records.map(({ path }) => path)]));
  const entries = pieces.filter((piece) => piece.is !== "table").map((piece) => importer.entry(piece));
  const lone = importer.loneCurves();
  const records = [...whole.records, ...importer.records.values()];
  return { entries, curves: lone.curves, records, issues: [...issues, ...whole.issues, ...lone.issues] };
}

class Importer {
  /** Files that came with the logs that name them. */
  readonly records = new Map<string, ImportedRecord>();
  private readonly pieces: readonly Piece[];
  private readonly taken: ReadonlySet<string>;
  private readonly paths = new Map<Piece, string>();
  private readonly byFile = new Map<string, Piece>();
  /** By name without folders; null where several have it. */
  private readonly byName = new Map<string, Piece | null>();
  /** Tables that a document names. */
  private readonly used = new Set<Piece>();

  constructor(pieces: readonly Piece[], taken: ReadonlySet<string>) {
    this.pieces = pieces;
    this.taken = taken;
    const paths = new Paths(taken);
    for (const piece of pieces) {
      if (!this.byFile.has(piece.file)) this.byFile.set(piece.file, piece);
      const name = baseName(piece.file);
      this.byName.set(name, this.byName.has(name) ? null : piece);
      if (piece.is !== "table") this.paths.set(piece, paths.take(wishOf(piece)));
    }
  }

  entry(piece: Piece): ImportedEntry {
    const path = this.paths.get(piece) ?? piece.file;
    const drafts = piece.drafts === undefined ? {} : { drafts: piece.drafts };
    const place = (fault: Fault): Issue => ({ ...fault, file: path });
    if (!isRaw(piece.value)) {
      const text = { text: piece.text };
      const issues = (piece.faults.length > 0 ? piece.faults : readValue(piece.value, { file: path }).issues).map(
        place,
      );
      return { path, kind: undefined, name: path, raw: undefined, ...text, state: "unreadable", issues, ...drafts };
    }
    const before = readValue(piece.value, { file: path });
    if (before.state === "newer")
      return {
        path,
        kind: before.kind,
        name: nameOf(piece.value, path),
        raw: piece.value,
        state: "newer",
        issues: before.issues,
        ...drafts,
      };
    const faults: Fault[] = [...piece.faults];
    const kind = kindOf(piece.value);
    const raw =
      kind === undefined
        ? piece.value
        : withReferences(piece.value, kind, (named) => this.replace(named, piece, faults));
    const read = readValue(raw, { file: path });
    const text = piece.faults.length > 0 && piece.text !== "" ? { text: piece.text } : {};
    return {
      path,
      kind: read.kind ?? kind,
      name: nameOf(raw, path),
      raw: read.raw ?? raw,
      ...text,
      state: read.state === "ready" && piece.faults.length > 0 ? "invalid" : read.state,
      issues: [...read.issues, ...faults.map(place)],
      ...drafts,
    };
  }

  /** The flat path of what a document names, or the curve itself; undefined where the path stays. */
  private replace({ path, text, what }: Named, from: Piece, faults: Fault[]): unknown {
    const found = this.find(from, text);
    const missing = () => {
      const accepted = failureWords.missing;
      faults.push({ path, code: "file-missing", found: JSON.stringify(text), accepted, example: "" });
    };
    if (what === "document") {
      const flat = found === undefined ? undefined : this.paths.get(found);
      if (flat === undefined && !this.taken.has(text)) missing();
      return flat;
    }
    if (found === undefined || found.is !== "table") {
      if (what === "thrust" || !this.taken.has(text)) missing();
      return undefined;
    }
    this.used.add(found);
    if (what === "record") {
      const bytes = utf8(found.text);
      const record = recordPath(found.file, bytes);
      this.records.set(record, { path: record, bytes, gzip: false });
      return record;
    }
    const read = readThrust(found.text);
    if (read.ok) return { time: [...read.curve.times], newtons: [...read.curve.thrusts] };
    faults.push(...read.faults.map((fault) => ({ ...fault, path, found: `${fault.path} ${fault.found}`.trim() })));
    return undefined;
  }

  /** By its path; where files came without their folders, by a name that only one has. */
  private find(from: Piece, text: string): Piece | undefined {
    const plain = text.replaceAll("\\", "/");
    return this.byFile.get(resolvePath(from.file, plain)) ?? this.byName.get(baseName(plain)) ?? undefined;
  }

  /** Curves that no motor names. */
  loneCurves(): { curves: ImportedCurve[]; issues: Issue[] } {
    const curves: ImportedCurve[] = [];
    const issues: Issue[] = [];
    for (const piece of this.pieces) {
      if (piece.is !== "table" || this.used.has(piece)) continue;
      const read = readThrust(piece.text);
      if (read.ok) curves.push({ name: shortName(piece), time: read.curve.times, newtons: read.curve.thrusts });
      else issues.push(...read.faults.map((fault) => ({ file: piece.file, ...fault })));
    }
    return { curves, issues };
  }
}

function wishOf({ keep, file, value }: Piece): string {
  if (keep !== undefined && isFlat(keep)) return keep;
  const raw = isRaw(value) ? value : undefined;
  return flatPath(keep ?? file, raw === undefined ? "" : nameOf(raw, ""), raw && kindOf(raw));
}

function kindOf(raw: Raw): Kind | undefined {
  const kind = Object.hasOwn(raw, "kind") ? raw["kind"] : undefined;
  return isKind(kind) ? kind : undefined;
}

function nameOf(raw: Raw, otherwise: string): string {
  const name = Object.hasOwn(raw, "name") ? raw["name"] : undefined;
  return typeof name === "string" && name.trim() !== "" ? name.trim().slice(0, 200) : otherwise;
}
