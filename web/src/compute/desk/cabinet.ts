import {
  checkField,
  type FileSource,
  type Issue,
  isKind,
  type Loaded,
  loadAny,
  loadPlan,
  memoryFiles,
  otherRocket,
  type PlanParts,
  ReadBefore,
} from "@delaywright/documents";
import type { DecisionInputs, OtherRocket } from "@delaywright/engine";
import { isMotorFile } from "../motor-file.js";
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
  private readonly bytes: Record<string, Uint8Array> = {};
  private readonly before = new ReadBefore();
  private readonly files: FileSource = { ...memoryFiles(this.bytes), before: this.before };
  private readonly encoder = new TextEncoder();
  private changes = 0;

  /** Grows with every change. */
  get revision(): number {
    return this.changes;
  }

  put(document: DeskDocument): void {
    this.changes += 1;
    this.documents.set(document.path, document);
    const text = document.raw === null ? (document.text ?? "") : JSON.stringify(document.raw);
    this.bytes[document.path] = this.encoder.encode(text);
  }

  remove(path: string): void {
    this.changes += 1;
    this.documents.delete(path);
    delete this.bytes[path];
  }

  /** Reads a plan with all that it refers to. */
  async read(plan: string): Promise<ReadPlan> {
    const { issues, files, parts } = await loadPlan(plan, this.files);
    return { issues: [...issues, ...files.flatMap((path) => this.drafted(path))], files, parts };
  }

  /** Every motor type by its path, right or wrong. */
  async motors(): Promise<(readonly [path: string, loaded: Loaded])[]> {
    const paths = [...this.documents.values()]
      .filter(({ path, raw }) => (raw === null ? isMotorFile(path) : raw["kind"] === "motor"))
      .map(({ path }) => path)
      .sort();
    const loaded: (readonly [string, Loaded])[] = [];
    for (const path of paths) loaded.push([path, await loadAny(path, this.files, ["motor"])]);
    return loaded;
  }

  /** Reads a plan to ask about other motors: where its own is missing or wrong, one that is right stands in for it. */
  async readForAnyMotor(plan: string, motors: readonly (readonly [path: string, loaded: Loaded])[]): Promise<ReadPlan> {
    const asItIs = await this.read(plan);
    const raw = this.documents.get(plan)?.raw;
    const [path] = motors.find(([, { state }]) => state === "ready") ?? [];
    if (asItIs.parts !== undefined || raw == null || path === undefined) return asItIs;
    const files = memoryFiles({ ...this.bytes, [plan]: JSON.stringify({ ...raw, motor: path }) });
    const resolve = (base: string, named: string) => (named === path ? path : files.resolve(base, named));
    const { issues, files: looked, parts } = await loadPlan(plan, { read: files.read, resolve, before: this.before });
    const others = [...issues.filter(({ file }) => file !== path), ...looked.flatMap((each) => this.drafted(each))];
    return { issues: others, files: [...asItIs.files, ...looked], parts };
  }

  /** Every other rocket that is right: the shortened element may suit it. */
  async otherRockets(
    { rocket }: PlanParts,
    { latitude, elevation }: DecisionInputs["air"],
  ): Promise<{ readonly rockets: OtherRocket[]; readonly files: string[] }> {
    const plan = { rocket: rocket.document.name, latitude, elevation };
    const rockets: OtherRocket[] = [];
    const files: string[] = [];
    const others = [...this.documents.values()].filter(({ path, raw }) => {
      return raw?.["kind"] === "rocket" && path !== rocket.file;
    });
    for (const { path } of others.sort((a, b) => (a.path < b.path ? -1 : 1))) {
      const other = await otherRocket(path, this.files, plan);
      files.push(...other.files);
      if (other.rocket !== undefined) rockets.push(other.rocket);
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
