import { defaultDepthError, formatQuantity } from "@delaywright/documents";
import { type FormPart, field, more } from "./model.js";

const stops = ["ends", "spacers"];

/** A tool that shortens a delay. */
export const toolParts: readonly FormPart[] = [
  {
    part: "either",
    label: "Kind of tool",
    at: "",
    branches: [
      {
        id: "ends",
        label: "ends with fixed stops",
        keys: stops,
        matches: (tool) => !("stop" in tool),
        parts: [
          {
            part: "rows",
            field: "ends",
            label: "Ends",
            one: "end",
            start: {},
            parts: [
              field("name", "Marked"),
              field("removes", "Takes out", { aside: "s or depth", hint: "A cut right down to the stop." }),
            ],
          },
          {
            part: "rows",
            field: "spacers",
            label: "Spacers",
            one: "spacer",
            start: {},
            parts: [
              field("name", "Name"),
              field("keepsBack", "Keeps back", { aside: "s or depth" }),
              field("count", "How many", { leftOut: "1" }),
            ],
          },
        ],
      },
      {
        id: "stop",
        label: "depth stop, turned by hand",
        keys: ["stop"],
        matches: (tool) => !stops.some((key) => key in tool),
        parts: [
          field("stop.from", "Shallowest setting"),
          field("stop.to", "Deepest setting"),
          field("stop.step", "Step"),
        ],
      },
    ],
  },
  field("depthPerSecond", "Made for a grain of", { aside: "per second" }),
  more("How exact", [
    field("depthError", "A cut strays by", {
      leftOut: formatQuantity(defaultDepthError.cut, "length", "mm"),
      aside: "one sigma",
    }),
  ]),
];
