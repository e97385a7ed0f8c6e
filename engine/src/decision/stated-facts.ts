import type { RuleFacts } from "../rules/facts.js";

/** Facts for the rules that documents state; each as in `RuleFacts`: left out is not known, null is known to be none. */
export interface StatedFacts
  extends Pick<
    RuleFacts,
    | "adultInCharge"
    | "age"
    | "airportDistance"
    | "authorised"
    | "buildingDistance"
    | "ceiling"
    | "certification"
    | "clearedDiameter"
    | "cloudBase"
    | "cloudCover"
    | "controlledAirspace"
    | "daylight"
    | "fieldHours"
    | "fireMeans"
    | "lightMaterials"
    | "makerMostLiftOffMass"
    | "metalSponge"
    | "motorCertified"
    | "noticeBefore"
    | "peopleDistance"
    | "roadDistance"
    | "siteSmallest"
    | "tiltSector"
    | "timeOfDay"
    | "uninvolvedDistance"
    | "visibility"
    | "weatherAge"
  > {
  /** False: no wind was read, so a calm was reckoned with; left out: it was. */
  readonly windRead?: boolean;
}
