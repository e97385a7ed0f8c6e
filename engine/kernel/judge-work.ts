import { mostRecords } from "../flight/fast/sizes.js";
import { row } from "../flight/fast/work.js";
import { Doubles } from "../math/doubles.js";
import { mostCrossings, mostEdges, mostNodes } from "./judge-sizes.js";

export class SpeedNodes {
  count: i32 = 0;
  times: Doubles = row(mostNodes(mostRecords));
  squares: Doubles = row(mostNodes(mostRecords));
  records: Doubles = row(mostNodes(mostRecords));
}

/** What openings are judged by, and memory for it, as `JudgeWork` of the engine. */
export class JudgeWork {
  settingCount: i32 = 0;
  delays: Doubles = row(0);
  deviations: Doubles = row(0);
  fromBurnout: boolean = false;
  lineStretch: f64 = 0;
  speedLimit: f64 = 0;
  strengthSpeed: f64 = 0;
  floor: f64 = 0;
  fillDistance: f64 = 0;
  hasElectronics: boolean = false;
  electronicsDelay: f64 = 0;
  samples: i32 = 0;

  nodes: SpeedNodes = new SpeedNodes();
  limitCrossings: Doubles = row(mostCrossings);
  strengthCrossings: Doubles = row(mostCrossings);
  edges: Doubles = row(mostEdges);
  classes: Doubles = row(mostEdges + 1);
  holding: Doubles = row(mostEdges + 1);
  edgeCount: i32 = 0;
}
