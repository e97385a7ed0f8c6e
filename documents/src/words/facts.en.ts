import type { FactName } from "@delaywright/engine";
import { own } from "./own.js";

/** A fact in words, and the field that says it: the document's kind and the path in it; empty where it is reckoned. */
interface FactWords {
  readonly name: string;
  readonly field: string;
}

const fact = (name: string, field = ""): FactWords => ({ name, field });

const facts: Readonly<Record<FactName, FactWords> & Record<string, FactWords>> = Object.freeze({
  adultInCharge: fact("an adult in charge", "plan: site.adultInCharge"),
  age: fact("the flyer's age", "flyer: age"),
  airportDistance: fact("the distance to the nearest airport", "field: distances.airport"),
  authorised: fact("an authorisation", "plan: site.authorised"),
  bestHolds: fact("the odds that it holds"),
  buildingDistance: fact("the distance to the nearest building", "field: distances.building"),
  ceiling: fact("the field's ceiling", "plan: field"),
  certification: fact("the flyer's certification", "flyer: certification"),
  certifiedAverageThrust: fact("the certified average thrust", "motor: designation"),
  charge: fact("the mass of the ejection charge", "motor: delay.charge"),
  chargeFactor: fact("the bay that the charge must part, or what holds it shut", "rocket: bay.diameter"),
  choice: fact("your own setting", "plan: choice"),
  clean: fact("the odds of a clean opening"),
  clearedDiameter: fact("the cleared ground", "field: clearedDiameter"),
  cloudBase: fact("the lowest cloud", "plan: site.cloudBase"),
  cloudCover: fact("the cloud cover", "plan: site.cloudCover"),
  complex: fact("how many motors there are"),
  controlledAirspace: fact("whether the airspace is controlled", "field: controlledAirspace"),
  cuts: fact("whether anything is to be cut"),
  daylight: fact("whether it is daylight", "plan: site.daylight"),
  delayFixed: fact("whether the delay is fixed", "motor: delay"),
  descentTime: fact("the time of descent"),
  drawsNotFlown: fact("draws that could not be flown"),
  electronics: fact("whether electronics opens it", "rocket: recovery.electronics"),
  fieldHours: fact("the field's hours as clock times", "field: hours"),
  fireMeans: fact("means to control a fire", "plan: site.fireMeans"),
  firesFirst: fact("the odds that the charge fires first"),
  guideExitSpeed: fact("the speed leaving the guide"),
  hasCharge: fact("whether the motor has a charge", "motor: delay"),
  height95: fact("the height of the top"),
  highPower: fact("whether it is a high-power rocket"),
  highestAllowed: fact("the height allowed at the field", "field: ceiling"),
  instructionsConfirmed: fact("what the motor's instructions allow", "motor: delay.instructions.allowCutting"),
  keepOffOpened: fact("how often it lands in a keep-off zone", "field: keepOff"),
  keepOffUnopened: fact("how often it lands in a keep-off zone", "field: keepOff"),
  landingEnergy: fact("the landing energy"),
  landingSpeed: fact("the landing speed"),
  leastClean: fact("the least odds of a clean opening", "plan: limits.leastClean"),
  leastHolds: fact("the least odds that it holds", "plan: limits.leastHolds"),
  liftOffMass: fact("the lift-off mass"),
  lightMaterials: fact("the rocket's materials", "rocket: materials"),
  makerMostLiftOffMass: fact("the maker's highest lift-off mass", "motor: mostLiftOffMass"),
  marginAtBurnout: fact("the margin at burnout"),
  marginAtGuideExit: fact("the margin leaving the guide"),
  marginInFlight: fact("the margin on the way up"),
  metalSponge: fact("whether the propellant throws sparks", "motor: metalSponge"),
  mostRemoved: fact("the most that may be taken out", "motor: delay.mostRemoved"),
  motorCertified: fact("who certified the motor", "motor: certified"),
  motorClass: fact("the motor's class"),
  noticeBefore: fact("the notice to air traffic control", "plan: site.noticeGiven"),
  openingSpeed90: fact("the speed of the openings"),
  openingSpeedLimit: fact("the highest opening speed", "plan: limits.openingSpeed"),
  outsideOpened: fact("how often it lands outside the field", "field: boundary"),
  outsideUnopened: fact("how often it lands outside the field", "field: boundary"),
  overCut: fact("what was cut"),
  peopleDistance: fact("the distance to the nearest person", "plan: site.people"),
  propellantMass: fact("the propellant's mass"),
  reachableDelays: fact("the delays that can be made"),
  removed: fact("what is taken out"),
  retention: fact("what keeps the motor in", "rocket: mount.retention"),
  roadDistance: fact("the distance to the nearest road", "field: distances.road"),
  siteEdgeDistance: fact("the distance to the field's edge", "field: boundary"),
  siteSmallest: fact("the field's smallest dimension", "field: smallest"),
  strengthRated: fact("the recovery's strength", "rocket: recovery.main.strength"),
  thrustToWeight: fact("thrust to weight"),
  tilt: fact("the lean of the guide", "plan: guide.tilt"),
  tiltSector: fact("where the guide may lean", "plan: field"),
  timeOfDay: fact("the time of the launch", "plan: site.launchAt"),
  tool: fact("the tool at hand", "plan: tool"),
  toolNamed: fact("the tool that the instructions name", "motor: delay.instructions.tool"),
  totalImpulse: fact("the total impulse"),
  toward: fact("where the guide leans to", "plan: guide.toward"),
  uninvolvedDistance: fact("the distance to people with no part in it", "field: distances.uninvolved"),
  validity: fact("what the models were held against"),
  visibility: fact("the visibility", "plan: site.visibility"),
  wantedDelay: fact("the delay that would be best"),
  weatherAge: fact("the age of the weather", "plan: weather.taken and site.launchAt"),
  wellHolds: fact("what the motor's well holds", "motor: delay.wellHolds"),
  windSpeed: fact("the wind", "plan: weather.wind"),
});

/** A fact in words; a name that may be newer than these words speaks for itself. */
export function wordForFact(name: string): string {
  return own(facts, name)?.name ?? name;
}

/**
 * The field that would say a fact; null where it is reckoned.
 *
 * @example
 * fieldOfFact("cloudBase"); // "plan: site.cloudBase"
 */
export function fieldOfFact(name: string): string | null {
  const field = own(facts, name)?.field ?? "";
  return field === "" ? null : field;
}
