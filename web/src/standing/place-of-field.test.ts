import { fieldAt, type Kind, missingFacts } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import { inventedDocuments, inventedPart } from "./invented.js";
import { placeOfField, placeToFill } from "./place-of-field.js";

const PLAN = "demo.plan.json";
const rocket = inventedPart(PLAN, { name: "Demo rocket 76" }, "rocket");
const flyer = inventedPart("me.flyer.json", { name: "Me" });

describe("placeOfField()", () => {
  test("leads into the plan, into a document of its own, and into one inside the plan", () => {
    const documents = inventedDocuments({ rocket, flyer });
    expect(placeOfField("plan: site.cloudCover", documents)).toEqual({ path: PLAN, field: "site.cloudCover" });
    expect(placeOfField("flyer: age", documents)).toEqual({ path: "me.flyer.json", field: "age" });
    expect(placeOfField("rocket: bay.friction", documents)).toEqual({ path: PLAN, field: "rocket.bay.friction" });
  });

  test("leads to where a document is chosen that the plan has not, and nowhere for what no plan writes", () => {
    const documents = inventedDocuments();
    expect(placeOfField("field: distances.road", documents)).toEqual({ path: PLAN, field: "field" });
    for (const named of ["", "log: apogee", "plan"]) expect(placeOfField(named, documents)).toBeNull();
  });
});

describe("placeToFill()", () => {
  const weather = missingFacts([{ missing: ["weatherAge"] }])[0]?.fields ?? [];

  test("takes the first of the fields that is empty", () => {
    expect(weather).toEqual(["plan: weather.taken", "plan: site.launchAt"]);
    const at = (plan: Record<string, unknown>) => placeToFill(weather, inventedDocuments({}, plan))?.field;
    expect(at({})).toBe("weather.taken");
    expect(at({ weather: { taken: "10:40" } })).toBe("site.launchAt");
    expect(at({ weather: { taken: "10:40" }, site: { launchAt: "11:30" } })).toBe("weather.taken");
    expect(placeToFill([], inventedDocuments())).toBeNull();
  });

  test("names fields that there are", () => {
    for (const name of ["cloudBase", "age", "retention", "makerMostLiftOffMass", "uninvolvedDistance"] as const) {
      const [kind = "", field = ""] = missingFacts([{ missing: [name] }])[0]?.fields[0]?.split(": ") ?? [];
      expect(fieldAt(kind as Kind, field), name).toBeDefined();
    }
  });
});
