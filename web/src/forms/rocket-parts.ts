import { defaultRocket, formatQuantity } from "@delaywright/documents";
import { finParts } from "./fin-parts.js";
import { type Branch, type FieldPart, type FormPart, field, more } from "./model.js";
import { pinRows, recoveryParts } from "./recovery-parts.js";

const withoutMotor = ["massWithoutMotor", "balanceWithoutMotor"];
const ready = ["massReady", "balanceReady", "readyWith"];

const massBranches: readonly Branch[] = [
  {
    id: "without",
    label: "without motor",
    keys: withoutMotor,
    matches: (rocket) => !ready.some((key) => key in rocket),
    parts: [
      field("massWithoutMotor", "Mass without motor", { aside: "weighed" }),
      field("balanceWithoutMotor", "Balance from the tip", { aside: "no motor" }),
    ],
  },
  {
    id: "ready",
    label: "with a motor in it",
    keys: ready,
    matches: (rocket) => !withoutMotor.some((key) => key in rocket),
    parts: [
      field("massReady", "Mass with motor", { aside: "weighed" }),
      field("balanceReady", "Balance from the tip", { aside: "with motor" }),
      field("readyWith", "Motor that was in it"),
    ],
  },
];

const inertiaBranches: readonly Branch[] = [
  {
    id: "estimated",
    label: "estimated",
    keys: ["inertiaWithoutMotor"],
    matches: (rocket) => rocket["inertiaWithoutMotor"] === undefined,
    parts: [],
  },
  {
    id: "value",
    label: "a figure",
    keys: ["inertiaWithoutMotor"],
    matches: (rocket) => ["undefined", "string"].includes(typeof rocket["inertiaWithoutMotor"]),
    parts: [field("inertiaWithoutMotor", "Moment of inertia", { aside: "transverse" })],
  },
  {
    id: "swing",
    label: "from a swing",
    keys: ["inertiaWithoutMotor"],
    matches: (rocket) => ["undefined", "object"].includes(typeof rocket["inertiaWithoutMotor"]),
    parts: [
      field("inertiaWithoutMotor.swing.strings", "Length of the two strings", { aside: "measured" }),
      field("inertiaWithoutMotor.swing.apart", "Strings apart", {
        aside: "measured",
        hint: "Half of it on each side of the balance point.",
      }),
      field("inertiaWithoutMotor.swing.period", "Time of one whole swing", { aside: "to and fro" }),
    ],
  },
];

const scale = (from: string) =>
  field("drag.scale", "Multiplied by", { leftOut: "1", hint: "What flights taught.", along: { from } });

const dragBranches: readonly Branch[] = [
  {
    id: "build-up",
    label: "built up from the shape",
    keys: ["scale"],
    start: { from: "build-up" },
    matches: (drag) => drag["from"] === undefined || drag["from"] === "build-up",
    parts: [scale("build-up")],
  },
  {
    id: "constant",
    label: "one coefficient",
    keys: ["cd", "scale"],
    start: { from: "constant" },
    matches: (drag) => drag["from"] === "constant",
    parts: [field("drag.cd", "Drag coefficient"), scale("constant")],
  },
  {
    id: "table",
    label: "table over Mach",
    keys: ["mach", "coasting", "thrusting", "scale"],
    start: { from: "table" },
    matches: (drag) => drag["from"] === "table",
    parts: [
      {
        part: "columns",
        field: "drag",
        label: "Drag over Mach number",
        columns: [
          { key: "mach", label: "Mach" },
          { key: "coasting", label: "coasting" },
          { key: "thrusting", label: "under thrust" },
        ],
      },
      scale("table"),
    ],
  },
];

const nose = (id: string, label: string, key?: FieldPart): Branch => ({
  id,
  label,
  keys: key === undefined ? [] : [key.field.replace("nose.", "")],
  start: { shape: id },
  matches: ({ shape }) => shape === id,
  parts: key === undefined ? [] : [key],
});

const noseBranches: readonly Branch[] = [
  nose("ogive", "tangent ogive"),
  nose("cone", "cone"),
  nose("parabola", "tangent parabola"),
  nose("ellipsoid", "ellipsoid"),
  nose("haack", "Haack", field("nose.c", "C", { leftOut: "0", hint: "0 is von Karman." })),
  nose("power", "power", field("nose.exponent", "Exponent", { hint: "1 is a cone." })),
];

const shape: readonly FormPart[] = [
  { part: "either", label: "Nose", at: "nose", branches: noseBranches, undecided: true },
  field("nose.length", "Length of the nose", { aside: "measured" }),
  {
    part: "rows",
    field: "sections",
    label: "Changes of diameter",
    one: "transition",
    start: { shape: "transition" },
    hint: "From the nose on.",
    parts: [
      field("at", "Starts at", { aside: "from the tip" }),
      field("length", "Length"),
      field("aftDiameter", "Diameter behind it"),
    ],
  },
  field("materials", "Built of", {
    words: { light: "paper, wood or breakable plastic", other: "other, or with substantial metal parts" },
  }),
  field("roughness", "Surface roughness", { leftOut: formatQuantity(defaultRocket.roughness, "length", "um") }),
  field("statedCp", "CP as somebody stated it", {
    aside: "from the tip",
    hint: "Replaces the computed one. Leave it out for a rocket that you measured.",
  }),
];

const fittings: readonly FormPart[] = [
  {
    part: "rows",
    field: "fittings",
    label: "What runs on the guide",
    one: "fitting",
    start: {},
    parts: [field("kind", "Kind"), field("at", "Place", { aside: "from the tip" })],
  },
];

const mount: readonly FormPart[] = [
  field("mount.diameter", "Inner diameter"),
  field("mount.motorAftAt", "Aft end of the motor", { aside: "from the tip" }),
  field("mount.length", "Length of the mount"),
  field("mount.retention", "Kept in by", {
    words: { positive: "positive retention", friction: "friction", none: "nothing" },
  }),
  field("mount.thrustLine.angle", "Thrust off the axis by", { leftOut: "0 deg" }),
  field("mount.thrustLine.offset", "Thrust beside the axis by", { leftOut: "0 mm", aside: "at the aft end" }),
  field("mount.thrustLine.toward", "Both towards", { leftOut: "0 deg", aside: "on the pad" }),
];

const bay: readonly FormPart[] = [
  field("bay.diameter", "Inner diameter"),
  field("bay.length", "Free length", { hint: "What the charge fills." }),
  field("bay.pressure", "Pressure wanted"),
  field("bay.friction", "Pulls apart at", {
    aside: "without pins",
    hint: "Pull the joint with a spring balance. It tells whether the charge parts it.",
  }),
  pinRows("bay.shearPins", "Shear pins"),
  field("electronicsBay.diameter", "Electronics bay, across", { aside: "inside" }),
  field("electronicsBay.length", "Electronics bay, long", {
    aside: "inside",
    hint: "Its static ports are for this volume.",
  }),
];

const sections: readonly FormPart[] = [
  {
    part: "rows",
    field: "sectionMasses",
    label: "Masses of the sections",
    one: "section",
    start: "",
    flat: true,
    fixedOrder: true,
    hint: "Tethered, as they land, the burnt-out motor with its own. Left out: the whole rocket lands as one.",
    parts: [field("", "Mass")],
  },
];

/** A rocket: what most people enter, then the rest in the trade's order. */
export const rocketParts: readonly FormPart[] = [
  { part: "either", label: "Weighed", at: "", branches: massBranches },
  field("diameter", "Diameter", { aside: "measured" }),
  field("length", "Length", { aside: "measured" }),
  more("Shape", shape, "nose, transitions, surface"),
  more("Moment of inertia", [
    { part: "either", label: "Moment of inertia without motor", at: "", branches: inertiaBranches },
    field("rollInertiaWithoutMotor", "Moment of inertia about the axis", {
      leftOut: "estimated",
      aside: "without motor",
    }),
  ]),
  more("Fins", [
    { part: "rows", field: "fins", label: "Rings of equal fins", one: "ring", start: {}, parts: finParts },
  ]),
  more("Guide fittings", fittings, "buttons, lugs"),
  more("Motor mount", mount),
  more("Recovery", recoveryParts, "canopy, harness, electronics"),
  more("Bay", bay, "charge, shear pins, electronics"),
  more("Sections as they land", sections, "for the landing energy"),
  more("Drag", [{ part: "either", label: "Drag", at: "drag", branches: dragBranches }]),
];
