import type { PrepBasis } from "@delaywright/engine";
import type { PlanParts } from "../load-plan.js";
import type { Raw } from "../migrate.js";
import { decimals } from "../words/numbers.en.js";

/** What belongs to a document but changes nothing that is signed for. */
const apart = ["$schema", "kind", "version", "name", "note"] as const;

/**
 * A short mark for each thing that a signature can rest on: it changes when what was typed there changes.
 *
 * @param parts of the plan
 * @param delay that the sheet is for [s]; null: none
 * @param removed depth taken out of the motor in hand [m]; null: none
 */
export function prepBasis(
  { plan, rocket, motor, motorInHand, field }: PlanParts,
  delay: number | null,
  removed: number | null,
): Readonly<Record<PrepBasis, string>> {
  const { ballast, guide, weather } = plan.document;
  const airframe: Raw = { ...rocket.document };
  const { instructions: _confirmed, ...element } = { ...motor.document.delay } as Raw;
  return {
    motor: mark({ ...without(motor.document, ["price", "certified", "delay"]), element, curve: motor.thrust }),
    bag: mark([motorInHand?.document.name, motorInHand?.document.label, motorInHand?.document.lot]),
    removed: mark(removed === null ? null : decimals(1e5 * removed, 0)),
    setting: mark(delay === null ? null : decimals(100 * delay, 0)),
    charge: mark([element["charge"], element["wellHolds"]]),
    bay: mark([airframe["bay"], airframe["electronicsBay"]]),
    recovery: mark(airframe["recovery"]),
    rocket: mark([without(airframe, ["bay", "electronicsBay", "recovery", "drag"]), ballast]),
    guide: mark(guide),
    weather: mark(without(weather ?? {}, ["taken"])),
    place: mark(field === undefined ? null : without(field.document, ["hours"])),
  };
}

function without(document: object, keys: readonly string[]): Raw {
  const left = new Set<string>([...apart, ...keys]);
  return Object.fromEntries(Object.entries(document).filter(([key]) => !left.has(key)));
}

/** At most seven letters. @source FNV-1a, 32 bit */
function mark(value: unknown): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(JSON.stringify(value ?? null)))
    hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash.toString(36);
}
