import { fieldZones, type PlanParts } from "@delaywright/documents";
import {
  airframeWithBallast,
  burnOf,
  type CuttingTool,
  cutAllowed,
  type DecisionInputs,
  delayOfDepth,
  depthOfDelay,
  loadedAt,
  motorClass,
  outlinePoints,
  type Removal,
} from "@delaywright/engine";
import type { ElementFacts, PlanFacts, ToolFacts } from "../told.js";

/** Slower than this it is a calm [m/s]. */
const CALM = 0.05;

/** Height at which winds aloft are near the ground [m], where none is given lower. */
const NEAR_GROUND = 10;

/** What screens need of a plan's inputs, as plain data. */
export function factsOf(inputs: DecisionInputs, parts: PlanParts): PlanFacts {
  const { motor, rocket, ballast, recovery } = inputs;
  const burn = burnOf(motor.thrust);
  const bare = airframeWithBallast(rocket, ballast);
  const aftAt = rocket.mount.motorAftAt;
  const ready = loadedAt(bare, { length: motor.length, diameter: motor.diameter, aftAt }, motor.loadedMass);
  const outline = outlinePoints(rocket);
  const field = parts.field?.document;
  return {
    element: elementOf(inputs),
    lineStretch: recovery.lineStretch,
    burnEnd: burn.end,
    limits: inputs.limits,
    readyMass: ready.mass,
    readyBalance: ready.balance,
    massWithoutMotor: bare.mass,
    balanceWithoutMotor: bare.balance,
    diameter: 2 * Math.max(...outline.body.map(({ r }) => r)),
    length: rocket.length,
    thrust: { times: motor.thrust.times, newtons: motor.thrust.thrusts },
    totalImpulse: burn.totalImpulse,
    motorClass: motorClass(burn.totalImpulse),
    averageThrust: burn.averageThrust,
    outline,
    zones: field === undefined ? null : fieldZones(field),
    ceiling: inputs.fieldLimits.ceiling ?? null,
    guideTravel: inputs.guide.travel,
    wind: windOf(inputs.wind),
    tool: inputs.tool === undefined ? null : toolOf(inputs.tool),
    electronics: recovery.electronics !== undefined,
    cutAllowed: motor.delay.kind === "adjustable" && cutAllowed(inputs),
  };
}

function elementOf({ motor, tool, cutSoFar }: DecisionInputs): ElementFacts {
  const { delay } = motor;
  if (delay.kind !== "adjustable") {
    const longest = delay.kind === "fixed" ? delay.seconds : 0;
    const clock = delay.kind === "fixed" ? delay.clock : "burnout";
    return {
      kind: delay.kind,
      longest,
      mostRemoved: null,
      leastLeft: longest,
      depthPerSecond: null,
      removedDepth: 0,
      removed: 0,
      clock,
    };
  }
  const depthPerSecond = delay.depthPerSecond ?? tool?.depthPerSecond ?? null;
  const removedDepth = cutSoFar?.removedDepth ?? 0;
  return {
    kind: "adjustable",
    longest: delay.longest,
    mostRemoved: Number.isFinite(delay.mostRemoved) ? delay.mostRemoved : null,
    leastLeft: delay.leastLeft,
    depthPerSecond,
    removedDepth,
    removed: depthPerSecond === null ? 0 : delayOfDepth(removedDepth, depthPerSecond),
    clock: delay.clock,
  };
}

function toolOf(tool: CuttingTool): ToolFacts {
  if (tool.kind === "stop") {
    const { kind, name, from, to, step, depthError } = tool;
    return { kind, name, from, to, step, depthError };
  }
  const depth = (removal: Removal): number =>
    "depth" in removal ? removal.depth : depthOfDelay(removal.seconds, tool.depthPerSecond);
  return {
    kind: "ends",
    name: tool.name,
    ends: tool.ends.map(({ name, removes }) => ({ name, removes: depth(removes) })),
    spacers: tool.spacers.map(({ name, keepsBack, count }) => ({ name, keepsBack: depth(keepsBack), count })),
    depthError: tool.depthError,
  };
}

function windOf(wind: DecisionInputs["wind"]): PlanFacts["wind"] {
  const [east, north, height] =
    wind.kind === "power"
      ? [wind.east, wind.north, wind.referenceHeight]
      : [wind.east[0] ?? 0, wind.north[0] ?? 0, wind.heights[0] ?? NEAR_GROUND];
  const speed = Math.hypot(east, north);
  const from = (Math.atan2(-east, -north) + 2 * Math.PI) % (2 * Math.PI);
  return { speed, from: speed < CALM ? null : from, height };
}
