import { mostRecords } from "../flight/fast/sizes.js";
import { normalCdfIn, normalQuantileIn } from "../math/normal.js";
import { doublesScratch } from "../math/scratch.js";
import { studentTable } from "../math/student-table.js";
import { mostCrossings, mostEdges, mostNodes } from "./judge-sizes.js";
import type { OpeningSpec } from "./opening-spec.js";

const nodeTimes = doublesScratch();
const nodeSquares = doublesScratch();
const nodeRecords = doublesScratch();

/** Points at which the airspeed is looked at: both ends of every record, and its least value near the top. Forgotten once a flight is judged. */
export class SpeedNodes {
  count = 0;
  readonly times: Float64Array;
  readonly squares: Float64Array;
  /** Record in which the stretch from this node to the next lies. */
  readonly records: Float64Array;

  constructor(most: number) {
    this.times = nodeTimes.take(most);
    this.squares = nodeSquares.take(most);
    this.records = nodeRecords.take(most);
  }
}

/** What openings are judged by, and memory for it, made once a worker. A class for the same reason as `FastWork`. */
export class JudgeWork {
  readonly settingCount: number;
  /** Mean delay at each setting, and its standard deviation [s]. */
  readonly delays: Float64Array;
  readonly deviations: Float64Array;
  /** The delay counts from burnout; false: from ignition. */
  readonly fromBurnout: boolean;
  readonly lineStretch: number;
  readonly speedLimit: number;
  readonly strengthSpeed: number;
  readonly floor: number;
  readonly fillDistance: number;
  readonly hasElectronics: boolean;
  readonly electronicsDelay: number;
  readonly samples: number;

  readonly nodes: SpeedNodes;
  readonly limitCrossings = new Float64Array(mostCrossings);
  readonly strengthCrossings = new Float64Array(mostCrossings);
  readonly edges = new Float64Array(mostEdges);
  /** Class of each stretch between edges, and whether it holds. */
  readonly classes = new Float64Array(mostEdges + 1);
  readonly holding = new Float64Array(mostEdges + 1);
  edgeCount = 0;
  /** Of the delay's scatter, in its standard deviations: each puts its answer where the question stands. */
  readonly cdfIn: (row: Float64Array, at: number) => void;
  readonly quantileIn: (row: Float64Array, at: number) => void;

  /** @param records most steps of a flight that is judged: those that its work holds */
  constructor(spec: OpeningSpec, records = mostRecords) {
    this.settingCount = spec.settings.length;
    this.delays = Float64Array.from(spec.settings, ({ delay }) => delay);
    this.deviations = Float64Array.from(spec.settings, ({ sd }) => sd);
    this.fromBurnout = spec.clock === "burnout";
    this.lineStretch = spec.lineStretch;
    this.speedLimit = spec.speedLimit;
    this.strengthSpeed = spec.strengthSpeed;
    this.floor = spec.floor;
    this.fillDistance = spec.fillDistance;
    this.hasElectronics = spec.electronicsDelay !== null;
    this.electronicsDelay = spec.electronicsDelay ?? 0;
    this.samples = spec.samples;
    this.nodes = new SpeedNodes(mostNodes(records));
    const { cdfIn, quantileIn } = scatterShape(spec.degrees);
    this.cdfIn = cdfIn;
    this.quantileIn = quantileIn;
  }
}

/** The distribution of a delay's scatter, scaled to a standard deviation of 1. */
function scatterShape(degrees: number | undefined): Pick<JudgeWork, "cdfIn" | "quantileIn"> {
  if (degrees === undefined) return { cdfIn: normalCdfIn, quantileIn: normalQuantileIn };
  const table = studentTable(degrees);
  const scale = Math.sqrt((degrees - 2) / degrees);
  return {
    cdfIn: (row, at) => {
      row[at] = table.cdf(row[at]! / scale);
    },
    quantileIn: (row, at) => {
      row[at] = scale * table.quantile(row[at]!);
    },
  };
}
