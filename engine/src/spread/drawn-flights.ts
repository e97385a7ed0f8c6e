import { DrawnValues, setDraw } from "../flight/fast/draw.js";
import { FastOutcome } from "../flight/fast/outcome.js";
import type { FastWork } from "../flight/fast/work.js";
import { drawnValues } from "./drawn-values.js";
import { drawNormals, drawSize } from "./draws.js";
import { type DrawSpec, flyDraw } from "./fly-draw.js";

/** Flies one draw after another in memory made once. A class, so that its code outlives it. */
export class DrawnFlights {
  /** What the draw flown last varies, and how it flew. */
  readonly values = new DrawnValues();
  readonly flight = new FastOutcome();
  private readonly spec: DrawSpec;
  private readonly work: FastWork;
  private readonly normals = new Float64Array(drawSize);

  constructor(spec: DrawSpec, work: FastWork) {
    this.spec = spec;
    this.work = work;
  }

  /** Where the draw flown last lies in the strata of its delay's scatter, as a standard normal. */
  get strata(): number {
    return this.normals[drawSize - 1]!;
  }

  /** Each draw depends on seed and number alone. */
  fly(draw: number): void {
    const { spec, normals, values } = this;
    drawNormals(spec.seed, draw, normals);
    drawnValues(spec.spread, normals, values);
    if (spec.shift !== undefined) {
      values.temperature += spec.shift.temperature;
      values.windSpeed *= spec.shift.windSpeed;
      values.windEast += spec.shift.windEast;
    }
    setDraw(this.work, values);
    flyDraw(spec, this.work, values, draw, this.flight);
  }
}
