import type { TaughtFlight } from "@delaywright/engine";
import type { PastFlightData, UntaughtCode } from "../answer/debrief-data.js";
import { toldFactor } from "../answer/factor-data.js";
import type { FlightDocument } from "../kinds/flight/schema.js";
import { si } from "../kinds/si.js";
import type { Loaded, LoadedNode } from "../load.js";
import { placed } from "../load-plan.js";
import type { Raw } from "../migrate.js";
import { type DragBasis, dragBasis } from "./drag-basis.js";
import type { Findings } from "./findings.js";
import { readFindings } from "./read-findings.js";

/** A flight of the library: what is shown of it, and what it teaches. */
export interface PastFlight {
  readonly data: Omit<PastFlightData, "isThis">;
  /** Null where it teaches nothing: `data.untaught` says why. */
  readonly taught: TaughtFlight | null;
  /** How its rocket's drag was reckoned; null: not known. */
  readonly drag: DragBasis | null;
}

/** What a flight document and the names beside it say of a past flight. */
export interface PastFlightFacts {
  readonly file: string;
  readonly document: FlightDocument;
  readonly rocket: string | null;
  readonly motor: string | null;
  readonly lot: string | null;
  readonly drag: DragBasis | null;
}

/**
 * A flight as a past one. Rockets and motor types are told apart by their names.
 *
 * @param facts the document, and whose flight it was
 */
export function pastFlight({ file, document, rocket, motor, lot, drag }: PastFlightFacts): PastFlight {
  const findings = readFindings(document.findings ?? {});
  const { forecast, excluded } = document;
  const { climb } = findings;
  const untaught = untaughtBy(findings, { excluded: excluded !== undefined, read: rocket !== null && motor !== null });
  const teaches = rocket !== null && motor !== null && !untaught.some((code) => teachesNothing.includes(code));
  return {
    drag,
    data: {
      file,
      name: document.name,
      flown: document.flown ?? null,
      rocket,
      motor,
      lot,
      excluded: excluded?.reason ?? null,
      untaught,
      drag: climb === null ? null : toldFactor(climb.lnDrag, climb.covariance[0][0]),
      impulse: climb === null ? null : toldFactor(climb.lnImpulse, climb.covariance[1][1]),
      set: findings.set,
      delay: findings.delay,
      odds: forecast?.clean ?? null,
      outcome: findings.outcome,
      top: findings.apogee,
      topBand:
        forecast?.apogee === undefined ? null : [si(forecast.apogee.from, "length"), si(forecast.apogee.to, "length")],
    },
    taught: teaches
      ? {
          rocket,
          motor,
          lot,
          climb:
            climb === null ? null : { lnDrag: climb.lnDrag, lnImpulse: climb.lnImpulse, covariance: climb.covariance },
          set: findings.set,
          ...(findings.setError === null ? {} : { setError: findings.setError }),
          flown: findings.set === null ? { kind: "unknown" } : findings.delay,
        }
      : null,
  };
}

const teachesNothing: readonly UntaughtCode[] = ["excluded", "no-findings", "not-read"];

/** Why a flight's findings teach nothing, or not all. */
export function untaughtBy(
  { climb, delay, set }: Findings,
  { excluded, read }: { readonly excluded: boolean; readonly read: boolean },
): UntaughtCode[] {
  if (excluded) return ["excluded"];
  if (!read) return ["not-read"];
  if (climb === null && delay.kind === "unknown") return ["no-findings"];
  const told = climb !== null && Number.isFinite(climb.covariance[0][0] + climb.covariance[1][1]);
  const ofDelay: UntaughtCode[] =
    delay.kind === "unknown"
      ? ["no-delay"]
      : set === null
        ? ["set-not-known"]
        : delay.kind === "seen"
          ? []
          : ["delay-bound"];
  return [...(told ? [] : (["no-climb"] as const)), ...ofDelay];
}

/**
 * A past flight from its loaded document; undefined where the document itself cannot be read.
 *
 * What it refers to may be broken or gone: names are taken from whatever can still be read.
 *
 * @param loaded as `loadAny` gives a flight
 * @example
 * const past = pastFlightOf(await loadAny("first.flight.json", files, ["flight"]));
 */
export function pastFlightOf({ root }: Pick<Loaded, "root">): PastFlight | undefined {
  const flight = placed(root, "flight");
  if (root === undefined || flight === undefined) return undefined;
  const plan = root.children["plan"];
  const planned = plan?.children["motor"];
  const inHand = root.children["motorInHand"] ?? (planned?.kind === "motor-in-hand" ? planned : undefined);
  const type = inHand?.children["type"] ?? (planned?.kind === "motor-in-hand" ? planned.children["type"] : planned);
  const rocket = plan?.children["rocket"];
  return pastFlight({
    file: flight.file,
    document: flight.document,
    rocket: textIn(rocket?.raw, "name"),
    motor: textIn(type?.raw, "name"),
    lot: textIn(inHand?.raw, "lot"),
    drag: dragBasisOf(rocket),
  });
}

function dragBasisOf(rocket: LoadedNode | undefined): DragBasis | null {
  const read = placed(rocket, "rocket");
  return read === undefined ? null : dragBasis(read.document);
}

function textIn(raw: Raw | undefined, field: string): string | null {
  const text = raw?.[field];
  return typeof text === "string" && text.trim() !== "" ? text.trim() : null;
}
