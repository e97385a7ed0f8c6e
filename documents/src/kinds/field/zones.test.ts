import { describe, expect, test } from "vitest";
import { field } from "../../../test/fixtures.js";
import { readValue } from "../../read.js";
import type { FieldDocument } from "./schema.js";
import { fieldZones } from "./zones.js";

const larkmoor = field as unknown as FieldDocument;

describe("fieldZones()", () => {
  test("gives everything east and north of the pad", () => {
    const zones = fieldZones({ ...larkmoor, pad: { east: "20 m", north: "-10 m" } });
    expect(zones.origin).toEqual({ east: -20, north: 10 });
    expect(zones.boundary).toEqual({ kind: "circle", east: -20, north: 10, radius: 400 });
    expect(zones.keepOff[0]).toEqual({
      name: "car park",
      points: [
        { east: 100, north: -30 },
        { east: 160, north: -30 },
        { east: 160, north: 20 },
      ],
    });
  });

  test("takes a polygon, lines of people, and a field of which nothing is said", () => {
    const points: [string, string][] = [
      ["0 m", "0 m"],
      ["300 ft", "0 m"],
      ["0 m", "100 m"],
    ];
    const people = [{ name: "flight line", points: points.slice(0, 2) }, { points: points.slice(2) }];
    const document = { ...field, boundary: { shape: "polygon", points }, people };
    expect(readValue(document, { file: "field.json" }).issues).toEqual([]);
    const zones = fieldZones(document as unknown as FieldDocument);
    expect(zones.boundary).toMatchObject({ kind: "polygon" });
    expect(zones.boundary?.kind === "polygon" && zones.boundary.points[1]?.east).toBeCloseTo(91.44, 9);
    expect(zones.people.map((each) => each.name)).toEqual(["flight line", ""]);
    const bare = { kind: "field", version: 1, name: "Bare", elevation: "0 m" } as FieldDocument;
    expect(fieldZones(bare)).toEqual({ origin: { east: 0, north: 0 }, boundary: null, keepOff: [], people: [] });
  });
});
