import { InstructionsField } from "./instructions-field.js";
import { type Branch, type FormPart, field, more } from "./model.js";
import { ThrustField } from "./thrust-field.js";

const clock = field("delay.clock", "The delay burns from", {
  leftOut: "burnout",
  words: { burnout: "the end of the burn", ignition: "ignition" },
});
const charge: readonly FormPart[] = [
  field("delay.charge", "Ejection charge", { aside: "as delivered" }),
  field("delay.wellHolds", "The well holds", { aside: "at most" }),
];

const delayBranches: readonly Branch[] = [
  {
    id: "adjustable",
    label: "adjustable",
    keys: ["longest", "mostRemoved", "leastLeft", "depthPerSecond", "clock", "instructions", "charge", "wellHolds"],
    start: { kind: "adjustable" },
    matches: (delay) => delay["kind"] === "adjustable",
    parts: [
      field("delay.longest", "Longest delay", { aside: "uncut" }),
      field("delay.depthPerSecond", "Grain for one second", { aside: "depth" }),
      {
        part: "own",
        id: "instructions",
        fields: ["delay.instructions.allowCutting", "delay.instructions.tool"],
        show: (path, base) => <InstructionsField path={path} base={base} />,
      },
      more(
        "Limits, clock and charge",
        [
          field("delay.mostRemoved", "Most that may come out", { leftOut: "no limit" }),
          field("delay.leastLeft", "Least that must stay", { leftOut: "none" }),
          clock,
          ...charge,
        ],
        "as the maker gives them",
      ),
    ],
  },
  {
    id: "fixed",
    label: "fixed",
    keys: ["seconds", "clock", "charge", "wellHolds"],
    start: { kind: "fixed" },
    matches: (delay) => delay["kind"] === "fixed",
    parts: [field("delay.seconds", "Delay"), more("Clock and charge", [clock, ...charge])],
  },
  {
    id: "none",
    label: "none, plugged",
    keys: [],
    start: { kind: "none" },
    matches: (delay) => delay["kind"] === "none",
    parts: [],
  },
];

/** A motor type, as its label and its certification describe it. */
export const motorParts: readonly FormPart[] = [
  field("designation", "Designation", { hint: "As printed on the label; the thrust curve is checked against it." }),
  field("diameter", "Diameter"),
  field("length", "Length"),
  field("loadedMass", "Loaded mass"),
  field("propellantMass", "Propellant mass"),
  { part: "either", label: "Delay", at: "delay", branches: delayBranches, undecided: true },
  {
    part: "own",
    id: "thrust",
    fields: ["thrust", "thrust.time[]", "thrust.newtons[]"],
    show: (path, base) => <ThrustField path={path} base={base} />,
  },
  more("Maker, price and hazards", [
    field("maker", "Maker"),
    field("certified", "Certified by"),
    field("mostLiftOffMass", "Highest lift-off mass", {
      aside: "the maker's",
      hint: 'A mass, or "none" where the maker states none.',
    }),
    field("metalSponge", "Holds metal that throws sparks", { threeWay: true }),
    field("price", "Price", { hint: "In your own currency, to order a shortlist by." }),
    {
      part: "rows",
      field: "hazards",
      label: "Hazards that the label names",
      one: "hazard",
      start: "",
      flat: true,
      parts: [field("", "Hazard")],
    },
  ]),
];

/** One physical motor. What was cut from it is read and recorded elsewhere. */
export const motorInHandParts: readonly FormPart[] = [
  field("type", "Motor type"),
  field("label", "What you wrote on it"),
  field("lot", "Lot", { aside: "as printed" }),
  more("Age and storage", [field("made", "Made", { hint: "For example 2025-03." }), field("stored", "Stored")]),
];
