import { isKind, type Raw } from "@delaywright/documents";
import type { DocumentSource, SourceDocument } from "./desk-copy.js";

/** No document of a store has a folder in its path, so nothing laid aside is ever taken for one. */
const FOLDER = "aside/";

const noDrafts = Object.freeze({});

/** Documents that are asked about and kept nowhere, beside those of a store. */
export class Aside implements DocumentSource {
  private readonly kept: DocumentSource;
  private readonly laid = new Map<string, SourceDocument>();
  private readonly listeners = new Set<() => void>();
  private last = 0;

  constructor(kept: DocumentSource) {
    this.kept = kept;
  }

  readonly entries = (): readonly SourceDocument[] => [...this.kept.entries(), ...this.laid.values()];

  readonly subscribe = (listener: () => void): (() => void) => {
    const end = this.kept.subscribe(listener);
    this.listeners.add(listener);
    return () => {
      end();
      this.listeners.delete(listener);
    };
  };

  /** A path that was never given away. */
  path(): string {
    this.last += 1;
    return `${FOLDER}${this.last}.json`;
  }

  /** Lays a document aside, in place of the one before; null takes it away. */
  lay(path: string, raw: Raw | null): void {
    if (raw === null) this.laid.delete(path);
    else {
      const kind = isKind(raw["kind"]) ? raw["kind"] : null;
      this.laid.set(path, { path, kind, raw, text: null, drafts: noDrafts });
    }
    for (const listener of [...this.listeners]) listener();
  }
}
