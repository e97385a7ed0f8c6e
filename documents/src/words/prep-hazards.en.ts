import type { PrepHazard } from "@delaywright/engine";

const hazards: Readonly<Record<PrepHazard, string>> = Object.freeze({
  "motor-burns": "The motor burns: no smoking, flame, spark or heat near it. Igniters stay packed, and away from it.",
  cutting: "Eye protection. Only by hand, only with the tool named for this motor. What is cut cannot be put back.",
  shavings: "Shavings are propellant: gather them and deal with them as the maker's instructions say.",
  "loose-charge": "Black powder maims: eye protection, no spark or static, no electronics with power near it.",
  "loaded-charge": "A charge is loaded: keep it pointed away from people and from yourself.",
  retention: "The charge pushes the motor out of the tube too, and drag can part the rocket at burnout.",
  "electronics-fire": "Electronics can fire a charge when power comes or goes. Hands and faces out of the way.",
  igniter: "From here the motor can light. Face and body to the side, radios and phones off or away.",
  "circuit-live": "A live circuit lights whatever is clipped to it. The key stays with you.",
  "lifts-off": "It may lift off, or burst on the pad: everybody behind the line, on their feet, looking.",
  "late-charge": "A charge can still fire, on the ground or in a hand. Assume that it is live.",
  "not-lit": "A motor that did not light may light late. Nobody goes near.",
  "hot-motor": "Case and nozzle are hot. A motor whose charge did not fire is live.",
});

/** What can hurt somebody at a step, and what keeps it from doing so. */
export function prepHazardWords(hazard: PrepHazard): string {
  return hazards[hazard];
}
