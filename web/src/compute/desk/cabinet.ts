import {
  checkField,
  type FileSource,
  type Issue,
  isKind,
  loadAny,
  loadPlan,
  memoryFiles,
  type PlanParts,
  recoveryToEngine,
  rocketToEngine,
} from "@delaywright/documents";
import { type DecisionInputs, normalGravity, type OtherRocket } from "@delaywright/engine";
import type { DeskDocument } from "../protocol.js";

/** A plan as it was read. */
export interface ReadPlan {
  readonly issues: readonly Issue[];
  /** Every document that was looked at, missing ones too. */
  readonly files: readonly string[];
  /** There where no document has an issue; what is typed but cannot be read yet is none. */
  readonly parts: PlanParts | undefined;
}

/** The documents as the desk has them. */
export class Cabinet {
  private readonly documents = new Map<string, DeskDocument>();
  private readonly texts: Record<string, string> = {};
  private readonly files: FileSource = memoryFiles(this.texts);
  private changes = 0;

  /** Grows with every change. */
  get revision(): number {
    return this.changes;
  }

  put(document: DeskDocument): void {
    this.changes += 1;
    this.documents.set(document.path, document);
    this.texts[document.path] = document.raw === null ? (document.text ?? "") : JSON.stringify(document.raw);
  }

  remove(path: string): void {
    this.changes += 1;
    this.documents.delete(path);
    delete this.texts[path];
  }

  /** Reads a plan with all that it refers to. */
  async read(plan: string): Promise<ReadPlan> {
    const { issues, files, parts } = await loadPlan(plan, this.files);
    return { issues: [...issues, ...files.flatMap((path) => this.drafted(path))], files, parts };
  }

  /** Every other rocket that is right: the shortened element may suit it. */
  async otherRockets(
    { rocket }: PlanParts,
    { latitude, elevation }: DecisionInputs["air"],
  ): Promise<{ readonly rockets: OtherRocket[]; readonly files: string[] }> {
    const gravity = normalGravity(latitude, elevation);
    const rockets: OtherRocket[] = [];
    const files: string[] = [];
    const others = [...this.documents.values()].filter(({ path, raw }) => {
      return raw?.["kind"] === "rocket" && path !== rocket.file;
    });
    for (const { path } of others.sort((a, b) => (a.path < b.path ? -1 : 1))) {
      const { state, root, files: looked } = await loadAny(path, this.files, ["rocket"]);
      files.push(...looked);
      if (state !== "ready" || root?.document?.kind !== "rocket") continue;
      if (root.document.name === rocket.document.name) continue;
      const ready = root.children["readyWith"]?.document;
      const readyWith = ready?.kind === "motor" ? ready : undefined;
      rockets.push({
        name: root.document.name,
        rocket: rocketToEngine(root.document, { readyWith, gravity }),
        recovery: recoveryToEngine(root.document),
      });
    }
    return { rockets, files };
  }

  /** What is typed into a document's fields and cannot be read yet. */
  private drafted(path: string): Issue[] {
    const document = this.documents.get(path);
    const kind = document?.raw?.["kind"];
    if (document === undefined || !isKind(kind)) return [];
    return Object.entries(document.drafts).flatMap(([field, text]) => {
      const issue = checkField(kind, field, text);
      return issue === undefined ? [] : [{ ...issue, file: path }];
    });
  }
}
