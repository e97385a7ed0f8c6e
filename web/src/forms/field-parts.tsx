import { CeilingField } from "./ceiling-field.js";
import { type FormPart, field, more } from "./model.js";

const corners = (label: string, one: string, hint?: string): FormPart => ({
  part: "rows",
  field: "points",
  label,
  one,
  start: [],
  flat: true,
  parts: [field("[0]", "east"), field("[1]", "north")],
  ...(hint === undefined ? {} : { hint }),
});

const orNone = 'A distance, or "none" where there is none near.';
const origin = "East and north of the field's origin; west and south are negative.";

/** A place to fly from. */
export const fieldParts: readonly FormPart[] = [
  field("elevation", "Elevation", { aside: "above sea" }),
  {
    part: "own",
    id: "ceiling",
    fields: ["ceiling", "ceiling.height", "ceiling.above"],
    show: (path, base) => <CeilingField path={path} base={base} />,
  },
  field("latitude", "Latitude", { leftOut: "45 deg", aside: "north +" }),
  more("Boundary", [
    {
      part: "either",
      label: "The field's edge",
      at: "",
      branches: [
        {
          id: "none",
          label: "not entered",
          keys: ["boundary"],
          matches: (place) => place["boundary"] === undefined,
          parts: [],
        },
        {
          id: "circle",
          label: "circle",
          keys: ["boundary"],
          start: { boundary: { shape: "circle" } },
          matches: ({ boundary }) => (boundary as { shape?: unknown } | undefined)?.shape === "circle",
          parts: [field("boundary.radius", "Radius", { hint: "About the field's origin." })],
        },
        {
          id: "polygon",
          label: "outline",
          keys: ["boundary"],
          start: { boundary: { shape: "polygon", points: [] } },
          matches: ({ boundary }) => (boundary as { shape?: unknown } | undefined)?.shape === "polygon",
          parts: [
            {
              part: "rows",
              field: "boundary.points",
              label: "Corners",
              one: "corner",
              start: [],
              flat: true,
              hint: origin,
              parts: [field("[0]", "east"), field("[1]", "north")],
            },
          ],
        },
      ],
    },
  ]),
  more(
    "Keep-off zones and people",
    [
      {
        part: "rows",
        field: "keepOff",
        label: "Where nothing may come down",
        one: "zone",
        start: { points: [] },
        hint: origin,
        parts: [field("name", "What is there"), corners("Corners", "corner")],
      },
      {
        part: "rows",
        field: "people",
        label: "Where people stand",
        one: "line",
        start: { points: [] },
        parts: [field("name", "Who"), corners("Points of the line", "point")],
      },
    ],
    "cars, people",
  ),
  more("Pad and tilt", [
    field("pad.east", "Pad, east of the origin", { leftOut: "0 m" }),
    field("pad.north", "Pad, north of the origin", { leftOut: "0 m" }),
    field("tiltSector.from", "Guide may lean from", { aside: "azimuth", hint: "From here clockwise to the next." }),
    field("tiltSector.to", "to", { aside: "azimuth" }),
  ]),
  more(
    "Neighbours and ground",
    [
      field("smallest", "Smallest dimension", { hint: "Left out: the diameter of an edge that is a circle." }),
      field("clearedDiameter", "Ground cleared of what burns", { aside: "diameter, about the pad" }),
      field("distances.building", "Nearest occupied building", { aside: "from the pad", hint: orNone }),
      field("distances.road", "Nearest busy public road", {
        aside: "from the pad",
        hint: `With more than ten vehicles an hour. ${orNone}`,
      }),
      field("distances.airport", "Nearest airport", { aside: "from the pad", hint: orNone }),
      field("distances.uninvolved", "Nearest who have no part in it", {
        aside: "from the pad",
        hint: `Persons and property. ${orNone}`,
      }),
      field("controlledAirspace", "Flights enter controlled airspace", { threeWay: true }),
    ],
    "buildings, roads, airspace",
  ),
  more("Hours", [field("hours", "When one may fly", { hint: "For example 9:00 to 18:00." })]),
];
