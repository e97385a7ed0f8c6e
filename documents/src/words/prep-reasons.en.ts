import type { DueCause, PrepHindrance, PrepReason, PrepRefusal } from "@delaywright/engine";

const reasons: Readonly<Record<PrepReason, string>> = Object.freeze({
  "right-motor-first": "All figures below are for this one motor: another one would make them wrong.",
  "instructions-rule": "They come before this sheet: they alone say whether and how a delay may be cut.",
  "weak-part-found-early": "What is cracked or frayed is mended now, before anything live is in it.",
  "depth-has-a-start": "Only the depth before the cut tells how much the cut took out.",
  "cut-is-final": "It cannot be undone, so instructions and first reading come before it.",
  "reading-proves-cut": "The reading tells the delay that it has now; nothing is closed over a cut that was not read.",
  "charge-proven-by-test": "A reckoned charge is a starting point: a test on the ground tells whether the bay parts.",
  "washer-on-cut-face": "It lies on the face that was cut and read; after the charge nobody can see it.",
  "charge-late": "Powder goes in when no more tool comes near.",
  "cap-holds-charge": "It keeps the powder in its well, against the delay.",
  "charge-pushes-motor": "Once the motor is in, charge and cap are out of sight.",
  "tested-without-charge": "A fault shows itself while there is nothing to fire.",
  "off-before-charge": "No power where powder is handled.",
  "own-charge-late": "Powder goes in when wires are tested and power is seen to be off.",
  "canopy-over-charge": "It lies over the charge, with its protector between the two.",
  "drogue-first-out": "It comes out first, so it goes in after what comes out later.",
  "links-last-seen": "This is the last look at every link before the tubes close over them.",
  "joints-part-once": "Joints are tried when all is inside, and before pins hide how tight they are.",
  "pins-shut-it": "They shut the rocket; what is inside is not seen again.",
  "weigh-as-flown": "Mass and balance count as it flies, with everything in it.",
  "tracker-before-shut-range": "Its signal is heard while there is quiet, before the rocket is carried out.",
  "name-brings-it-back": "A rocket that drifts away comes back only if it says to whom.",
  "officer-decides": "The range safety officer decides, and looks at the rocket as it will fly.",
  "weather-has-aged": "Odds and checks hold for the wind that was read: read it again.",
  "dead-before-pad": "Nobody goes to a pad whose circuit could fire.",
  "guide-holds-it": "From here on the guide holds it, pointed where nothing can be hit.",
  "people-before-power": "Those who are not needed are gone before anything is armed.",
  "power-upright": "Moving it could look like a flight: electronics come on when it stands, before the igniter.",
  "igniter-last": "It is the last thing that goes in: all before it is done without a motor that can light.",
  "leads-after-igniter": "They join motor and circuit: clipped on when nothing else is left to do here.",
  "clear-before-key": "The key goes in when nobody is near any more.",
  "key-in-last": "From here one button lights it.",
  "launch-after-all": "With everything above signed, and the officer's word.",
  "dead-before-range-opens": "Nobody walks out while the button still works.",
  "see-where-it-lies": "Where it fell, and what it fell on, tells how to come near.",
  "side-on": "Charges fire along the tube, so both ends point away from you.",
  "power-before-hands": "Its charges cannot fire without power: it goes off before anything is touched.",
  "fired-or-live": "Only a charge that is seen to have fired is spent.",
  "each-charge-counts": "That the rocket opened tells of one charge, not of the other.",
  "cool-and-fired": "It is taken out last, cool and spent.",
  "dead-before-wait": "The wait counts only while the circuit cannot fire.",
  "wait-it-may-light": "It may be smouldering; the safety code sets the wait.",
  "out-as-it-went-in": "Last in, first out: without it nothing can light the motor.",
  "off-while-hands-near": "What is done next is done with hands near its charges.",
  "down-when-dead": "It leaves the pad when nothing in it can be fired.",
});

const hindrances: Readonly<Record<PrepHindrance, string>> = Object.freeze({
  "instructions-not-confirmed":
    "Not before you have confirmed in the motor's document that its own instructions allow a cut, and with which tool.",
  "does-not-hold": "No delay that can be cut holds: do not cut for this plan.",
  "reading-not-written":
    "Write the depth down with the motor in hand; this can be signed once it says what the plan asks for.",
  "check-says-stop": "A check says stop.",
  "igniter-in": "An igniter may be in the motor: scrub, and take it out first.",
  "electronics-on": "Electronics may be on: scrub, and switch them off first.",
  flown: "It has flown: this was not signed before.",
});

const causes: Readonly<Record<DueCause, string>> = Object.freeze({
  changed: "what it rested on has changed",
  unsigned: "it was taken back",
  scrub: "the flight was called off",
  misfire: "the motor did not light",
  "before-it": "a step before it was done again, or must be",
  "too-early": "the wait was not over",
});

const refusals: Readonly<Record<PrepRefusal, string>> = Object.freeze({
  "no-initials": "Sign with your initials.",
  "not-on-this-sheet": "This plan has no such step.",
  "already-signed": "It is signed already.",
  "not-signed": "It is not signed.",
  blocked: "Something comes before it.",
  "too-early": "The wait is not over.",
  "no-reason": "Say why.",
  flown: "It has flown: what was signed before stays as it is.",
  "not-armed": "Nothing was armed: there was no button to press.",
  "nothing-to-scrub": "Nothing at the pad is signed: there is nothing to take back.",
});

/** Why a step stands where it does. */
export function prepReasonWords(reason: PrepReason): string {
  return reasons[reason];
}

/** What hinders a signature, beside the steps before it. */
export function prepHindranceWords(hindrance: PrepHindrance): string {
  return hindrances[hindrance];
}

/** Why a signature counts no more, to follow "due again:". */
export function prepDueWords(cause: DueCause): string {
  return causes[cause];
}

/** Why something could not be written down. */
export function prepRefusalWords(refusal: PrepRefusal): string {
  return refusals[refusal];
}
