import type { PrepFacts } from "./facts.js";
import type { StepText } from "./step.js";

/** An adjustable delay comes with its charge beside it; a fixed one with the charge already under its cap. */
const looseCharge = ({ delay }: PrepFacts): boolean => delay === "adjustable";
const motorCharge = ({ delay }: PrepFacts): boolean => delay !== "none";
const electronics = (facts: PrepFacts): boolean => facts.electronics;
const ownCharge = (facts: PrepFacts): boolean => facts.ownCharge;

/** At the bench still: charge, motor, canopy, and all that shuts the rocket. */
export const packingSteps: readonly StepText[] = [
  { id: "washer", why: "washer-on-cut-face", needs: ["instructions", "depth-after"], applies: looseCharge },
  {
    id: "motor-charge",
    why: "charge-late",
    hazards: ["loose-charge"],
    needs: ["instructions", "washer"],
    applies: looseCharge,
    restsOn: ["charge"],
  },
  {
    id: "charge-cap",
    why: "cap-holds-charge",
    hazards: ["loaded-charge"],
    needs: ["instructions", "depth-after", "motor-charge"],
    applies: motorCharge,
  },
  {
    id: "retention",
    why: "charge-pushes-motor",
    hazards: ["retention", "loaded-charge"],
    needs: ["instructions", "airframe", "depth-after", "charge-cap"],
  },
  { id: "electronics-test", why: "tested-without-charge", needs: ["airframe"], applies: electronics },
  {
    id: "electronics-off",
    why: "off-before-charge",
    hazards: ["electronics-fire"],
    needs: ["electronics-test"],
    applies: electronics,
  },
  {
    id: "bay-charge",
    why: "own-charge-late",
    hazards: ["loose-charge", "electronics-fire"],
    needs: ["ground-test", "electronics-off"],
    applies: ownCharge,
    restsOn: ["bay"],
  },
  {
    id: "canopy",
    why: "canopy-over-charge",
    hazards: ["loaded-charge"],
    needs: ["retention", "electronics-off", "bay-charge"],
    restsOn: ["recovery"],
  },
  {
    id: "drogue",
    why: "drogue-first-out",
    hazards: ["loaded-charge"],
    needs: ["retention", "electronics-off", "bay-charge"],
    applies: ({ drogue }) => drogue,
    restsOn: ["recovery"],
  },
  { id: "links", why: "links-last-seen", needs: ["canopy", "drogue"] },
  { id: "joints", why: "joints-part-once", hazards: ["retention"], needs: ["links"] },
  {
    id: "pins",
    why: "pins-shut-it",
    hazards: ["loaded-charge"],
    needs: ["joints"],
    applies: ({ shearPins }) => shearPins,
    restsOn: ["bay"],
  },
  { id: "balance", why: "weigh-as-flown", needs: ["joints", "pins"], restsOn: ["rocket", "motor"] },
  { id: "tracker", why: "tracker-before-shut-range", needs: ["joints"], undoneBy: ["scrub"] },
  { id: "name", why: "name-brings-it-back" },
  {
    id: "card",
    why: "officer-decides",
    needs: ["balance"],
    gates: ["tracker", "name"],
    restsOn: ["motor", "bag", "setting", "rocket", "recovery", "place", "guide"],
  },
];
