import type { Decision, DecisionInputs } from "@delaywright/engine";
import { expect, test } from "vitest";
import { setDelay } from "./set-delay.js";

const adjustable = { motor: { delay: { kind: "adjustable" } } } as unknown as DecisionInputs;
const fixed = { motor: { delay: { kind: "fixed", seconds: 7 } } } as unknown as DecisionInputs;
const plugged = { motor: { delay: { kind: "none" } } } as unknown as DecisionInputs;
const inHand = { ...adjustable, cutSoFar: { removedDepth: 0.004, depthError: 0 } };
const decision = { settings: [{ delay: 9.1 }], choice: null, toCut: { delay: 10 } } as unknown as Decision;
const chosen = { ...decision, choice: { setting: { delay: 8 } } } as unknown as Decision;

test.each([
  ["said now", adjustable, chosen, 11, 12, 11, "given"],
  ["written", inHand, chosen, undefined, 12, 12, "findings"],
  ["fixed", fixed, chosen, undefined, null, 7, "fixed"],
  ["read", inHand, chosen, undefined, null, 9.1, "reading"],
  ["chosen", adjustable, chosen, undefined, null, 8, "choice"],
  ["suggested", adjustable, decision, undefined, null, 10, "suggested"],
  ["no delay", plugged, decision, 11, 12, null, null],
] as const)(
  "setDelay() takes the delay as %s before what comes after",
  (_, inputs, judged, stated, written, set, from) => {
    expect(setDelay(inputs, judged, stated, written)).toEqual({ set, from });
  },
);
