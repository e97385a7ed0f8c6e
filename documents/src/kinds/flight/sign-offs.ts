import {
  misfireFlight,
  type PrepAct,
  type PrepEvent,
  type PrepFacts,
  type PrepRefusal,
  type PrepState,
  type PrepStepId,
  type PrepStepState,
  scrubFlight,
  signStep,
  unsignStep,
} from "@delaywright/engine";
import type { Raw } from "../../migrate.js";
import { given } from "../si.js";
import type { FlightDocument } from "./schema.js";

/** One entry of a flight's prep sheet, as it is written down. */
export type SignOff = NonNullable<FlightDocument["signOffs"]>[number];

/** The flight with one more sign-off and the sheet as it then stands, or why there is none. */
export type SignedFlight =
  | { readonly ok: true; readonly flight: Raw; readonly state: PrepState }
  | { readonly ok: false; readonly refusal: PrepRefusal; readonly step: PrepStepState | null };

/** Whose hand, and when. */
export interface SigningHand {
  /** Initials. */
  readonly by: string;
  /** A moment, to the second: `2026-05-02T10:12:40Z`. One flight keeps to one way of writing its zone. */
  readonly when: string;
}

/** A flight, the facts that its sheet depends on, and whose hand. */
export interface SigningInputs extends SigningHand {
  readonly flight: Raw;
  readonly facts: PrepFacts;
}

/**
 * A new flight on a plan, ready to be signed for.
 *
 * @param name of the flight
 * @param plan path of the plan's document
 * @param motorInHand path of the motor's, where one is chosen
 * @example
 * newFlight("Third flight", "third.plan.json")["kind"]; // "flight"
 */
export function newFlight(name: string, plan: string, motorInHand?: string): Raw {
  return { kind: "flight", version: 1, name, plan, ...given("motorInHand", motorInHand), signOffs: [] };
}

/**
 * What was signed on a flight's prep sheet, as the engine reads it. Entries that are none are passed over, and stay in the document.
 *
 * A moment without a zone counts as written; only differences between moments matter.
 *
 * @param flight the document
 * @example
 * prepEvents({ kind: "flight", signOffs: [{ step: "cut", by: "AB", when: "2026-05-02T10:12:00Z" }] })[0]?.kind; // "sign"
 */
export function prepEvents(flight: Raw): readonly PrepEvent[] {
  return listOf(flight).flatMap((each) => eventOf(each) ?? []);
}

/** Signs a step on a flight's prep sheet; what was written before stays as it is. */
export function signOff(step: PrepStepId, { flight, facts, ...hand }: SigningInputs): SignedFlight {
  return kept(flight, signStep(facts, prepEvents(flight), step, moment(hand)));
}

/** Takes a signature back, with its reason. */
export function takeBackSignOff(
  step: PrepStepId,
  { flight, facts, reason, ...hand }: SigningInputs & { readonly reason: string },
): SignedFlight {
  return kept(flight, unsignStep(facts, prepEvents(flight), step, { reason, ...moment(hand) }));
}

/** Calls the flight off for now. */
export function signScrub({
  flight,
  facts,
  reason,
  ...hand
}: SigningInputs & { readonly reason: string }): SignedFlight {
  return kept(flight, scrubFlight(facts, prepEvents(flight), { reason, ...moment(hand) }));
}

/** Writes down that the motor did not light. */
export function signMisfire({
  flight,
  facts,
  reason,
  ...hand
}: SigningInputs & { readonly reason: string }): SignedFlight {
  return kept(flight, misfireFlight(facts, prepEvents(flight), { reason, ...moment(hand) }));
}

function kept(flight: Raw, act: PrepAct): SignedFlight {
  if (!act.ok) return act;
  return { ok: true, flight: { ...flight, signOffs: [...listOf(flight), written(act.event)] }, state: act.state };
}

function written(event: PrepEvent): SignOff {
  const { by, when } = event;
  if (event.kind === "sign") return { step: event.step, by, when, ...given("restsOn", event.rests ?? undefined) };
  const reason = event.reason.trim();
  const why = given("reason", reason === "" ? undefined : reason);
  return event.kind === "unsign"
    ? { what: "unsign", step: event.step, by, when, ...why }
    : { what: event.kind, by, when, ...why };
}

function eventOf(value: unknown): PrepEvent | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { what = "sign", step, by, when, restsOn, reason } = value as { readonly [Key in keyof SignOff]?: unknown };
  if (typeof by !== "string") return undefined;
  const hand = { by, ...(typeof when === "string" ? { when, at: secondsOf(when) ?? null } : { when: "", at: null }) };
  const why = typeof reason === "string" ? reason : "";
  if (what === "scrub" || what === "misfire") return { kind: what, ...hand, reason: why };
  if (typeof step !== "string") return undefined;
  if (what === "sign") return { kind: what, step, ...hand, rests: typeof restsOn === "string" ? restsOn : null };
  return what === "unsign" ? { kind: what, step, ...hand, reason: why } : undefined;
}

function listOf(flight: Raw): readonly unknown[] {
  const list = flight["signOffs"] ?? [];
  if (!Array.isArray(list)) throw new RangeError("signOffs must be a list");
  return list as unknown[];
}

function moment({ by, when }: SigningHand) {
  return { by, when, at: secondsOf(when) };
}

/** A moment on a steady clock [s]; undefined where it is none. */
function secondsOf(when: string): number | undefined {
  const zoned = /(Z|[+-]\d\d:\d\d)$/.test(when) ? when : `${when}Z`;
  const milliseconds = Date.parse(zoned);
  return Number.isNaN(milliseconds) ? undefined : milliseconds / 1000;
}
