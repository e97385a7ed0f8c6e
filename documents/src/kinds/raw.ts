import { type Fault, joinPath, show } from "../issue.js";
import { parseQuantity } from "../quantity/parse.js";
import type { Dimension } from "../quantity/units.js";

/** A document or a part of it that may be wrong anywhere: every look into it answers undefined where nothing fits. */
export class RawView {
  private readonly value: unknown;
  private readonly base: readonly (string | number)[];
  private readonly faults: Fault[];

  constructor(value: unknown, faults: Fault[] = [], base: readonly (string | number)[] = []) {
    this.value = value;
    this.faults = faults;
    this.base = base;
  }

  /** The part at a key or index. */
  at(key: string | number): RawView {
    const { value } = this;
    const inside = typeof value === "object" && value !== null && Object.hasOwn(value, key);
    return new RawView(inside ? (value as Record<string | number, unknown>)[key] : undefined, this.faults, [
      ...this.base,
      key,
    ]);
  }

  has(key: string): boolean {
    return this.at(key).value !== undefined;
  }

  get isObject(): boolean {
    return typeof this.value === "object" && this.value !== null && !Array.isArray(this.value);
  }

  get isText(): boolean {
    return typeof this.value === "string";
  }

  get text(): string | undefined {
    return typeof this.value === "string" ? this.value : undefined;
  }

  /** What stands there, as it is. */
  get given(): unknown {
    return this.value;
  }

  /** Keys of an object; none of anything else. */
  get keys(): readonly string[] {
    return this.isObject ? Object.keys(this.value as object) : [];
  }

  /** The quantity in SI units. */
  si(dimension: Dimension): number | undefined {
    const parsed = typeof this.value === "string" ? parseQuantity(this.value, dimension) : undefined;
    return parsed?.ok === true ? parsed.value : undefined;
  }

  get number(): number | undefined {
    return typeof this.value === "number" && Number.isFinite(this.value) ? this.value : undefined;
  }

  get list(): readonly RawView[] {
    return Array.isArray(this.value) ? this.value.map((_, index) => this.at(index)) : [];
  }

  /** Adds a fault at this place. */
  report(code: string, accepted: string, example = "", found = show(this.value)): void {
    this.faults.push({ path: joinPath(this.base), code, found, accepted, example });
  }
}
