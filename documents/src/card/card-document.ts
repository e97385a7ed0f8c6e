import type { ThrustCurve } from "@delaywright/engine";
import type { PlacedMotor, PlanParts } from "../load-plan.js";
import type { Raw } from "../migrate.js";

/** The plan with all that it refers to inside it, as it was typed. What names no figure goes: the schemas for editors. */
export function cardDocument(parts: PlanParts): Raw {
  const { plan, rocket, readyWith, motor, motorInHand, tool, field, flyer, ruleSet } = parts;
  const own = plain(plan.document);
  const type = motorDocument(motor);
  return {
    ...own,
    rocket: {
      ...plain(rocket.document),
      ...(readyWith === undefined ? {} : { readyWith: motorDocument(readyWith) }),
    },
    motor: motorInHand === undefined ? type : { ...plain(motorInHand.document), type },
    ...(tool === undefined ? {} : { tool: plain(tool.document) }),
    ...(field === undefined ? {} : { field: plain(field.document) }),
    ...(flyer === undefined ? {} : { flyer: plain(flyer.document) }),
    ...(ruleSet === undefined ? {} : { ruleSet: plain(ruleSet.document) }),
  };
}

function plain(document: object): Raw {
  const { $schema: _, ...own } = document as Raw;
  return own;
}

function motorDocument({ document, thrust }: PlacedMotor): Raw {
  return { ...plain(document), thrust: { time: thrust.times, newtons: thrust.thrusts } };
}

/** A plan's document with another thrust curve in its motor, which says so in a note of its own. */
export function withCurve(document: Raw, { times, thrusts }: ThrustCurve, note: string): Raw {
  const motor = document["motor"] as Raw;
  const changed = (type: Raw): Raw => ({ ...type, note, thrust: { time: times, newtons: thrusts } });
  return {
    ...document,
    motor: motor["kind"] === "motor-in-hand" ? { ...motor, type: changed(motor["type"] as Raw) } : changed(motor),
  };
}

/** Without notes, and with the readings of the motor in hand as one: the first depth before, the last after. */
export function withoutNotes(document: Raw): Raw {
  const inner = Object.fromEntries(
    Object.entries(document).map(([key, value]) => [
      key,
      typeof value === "object" && value !== null && !Array.isArray(value) ? withoutNotes(value as Raw) : value,
    ]),
  );
  const { note: _, ...rest } = inner;
  const { readings } = rest;
  return Array.isArray(readings) ? { ...rest, readings: asOne(readings as Raw[]) } : rest;
}

function asOne(readings: readonly Raw[]): Raw[] {
  const first = readings.find((reading) => reading["before"] !== undefined);
  const last = readings.findLast((reading) => reading["after"] !== undefined);
  if (first === undefined || last === undefined) return [];
  const { note: _, ...kept } = last;
  return [{ ...kept, before: first["before"] }];
}
