import { type FormPart, field } from "./model.js";

/** One ring of equal fins. */
export const finParts: readonly FormPart[] = [
  field("count", "How many"),
  field("at", "Root's leading edge", { aside: "from the tip" }),
  {
    part: "either",
    label: "Shape",
    at: "",
    branches: [
      {
        id: "trapezoid",
        label: "trapezoid",
        keys: ["shape", "root", "tip", "span", "sweep"],
        matches: (ring) => ring["shape"] === undefined || ring["shape"] === "trapezoid",
        parts: [
          field("root", "Root chord", { aside: "at the tube" }),
          field("tip", "Tip chord"),
          field("span", "Span", { aside: "tube to tip" }),
          field("sweep", "Sweep", { aside: "set-back", hint: "How far the tip's leading edge is set back." }),
        ],
      },
      {
        id: "ellipse",
        label: "ellipse",
        keys: ["root", "span"],
        start: { shape: "ellipse" },
        matches: (ring) => ring["shape"] === "ellipse",
        parts: [field("root", "Root chord", { aside: "at the tube" }), field("span", "Span", { aside: "tube to tip" })],
      },
      {
        id: "polygon",
        label: "other outline",
        keys: ["points"],
        start: { shape: "polygon" },
        matches: (ring) => ring["shape"] === "polygon",
        parts: [
          {
            part: "rows",
            field: "points",
            label: "Corners",
            one: "corner",
            start: [],
            flat: true,
            hint: "From the root's leading edge; the first and the last lie on the root.",
            parts: [field("[0]", "aft"), field("[1]", "outward")],
          },
        ],
      },
    ],
  },
  field("thickness", "Thickness"),
  field("leadingEdge", "Leading edge", { leftOut: "round" }),
  field("trailingEdge", "Trailing edge", { leftOut: "square" }),
  field("cant", "Cant", { leftOut: "0 deg", hint: "Makes the rocket roll." }),
];
