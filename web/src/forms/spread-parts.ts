import { defaultSpread, formatQuantity } from "@delaywright/documents";
import { type FormPart, field, more } from "./model.js";

const sigma = { aside: "one sigma" };
const factor = { aside: "a factor" };

const values: readonly FormPart[] = [
  field("spread.dragScale", "Drag", { leftOut: String(defaultSpread.dragScale), percent: true, ...factor }),
  field("spread.totalImpulse", "Thrust", { leftOut: String(defaultSpread.totalImpulse), percent: true, ...factor }),
  field("spread.burnTime", "Time of the burn", { leftOut: String(defaultSpread.burnTime), percent: true, ...factor }),
  field("spread.mass", "Mass without motor", { leftOut: String(defaultSpread.mass), percent: true, ...factor }),
  field("spread.balance", "Balance point", {
    leftOut: formatQuantity(defaultSpread.balance, "length", "mm"),
    ...sigma,
  }),
  field("spread.inertia", "Moment of inertia", {
    percent: true,
    ...factor,
    hint: "Left out: 5 % measured, 25 % estimated.",
  }),
  more(
    "Delay and cut",
    [
      field("spread.delay.seconds", "Delay, in seconds", {
        leftOut: formatQuantity(defaultSpread.delay.seconds, "time", "s"),
        ...sigma,
      }),
      field("spread.delay.fraction", "Delay, as a fraction", {
        leftOut: String(defaultSpread.delay.fraction),
        percent: true,
        hint: "The greater of the two counts.",
      }),
      field("spread.cutDepth", "Depth of the cut", { leftOut: "the tool's", ...sigma }),
    ],
    "0.75 s or 10 %",
  ),
  more(
    "Wind, air and guide",
    [
      field("spread.windSpeed", "Wind speed", { leftOut: String(defaultSpread.windSpeed), percent: true, ...factor }),
      field("spread.windFloor", "Wind, at least", {
        leftOut: formatQuantity(defaultSpread.windFloor, "speed", "m/s"),
        wind: true,
        hint: "A calm has gusts too.",
      }),
      field("spread.windFrom", "Wind direction", {
        leftOut: formatQuantity(defaultSpread.windFrom, "angle", "deg"),
        ...sigma,
      }),
      field("spread.windExponent", "Exponent of the wind profile", {
        leftOut: String(defaultSpread.windExponent),
        ...sigma,
      }),
      field("spread.temperature", "Air temperature", {
        leftOut: formatQuantity(defaultSpread.temperature, "temperatureDifference", "degC"),
        ...sigma,
      }),
      field("spread.guideTilt", "Lean of the guide", {
        leftOut: formatQuantity(defaultSpread.guideTilt, "angle", "deg"),
        ...sigma,
      }),
    ],
    "gusts, lean",
  ),
];

/** How uncertain each input is. */
export const planSpreadParts: readonly FormPart[] = [
  {
    part: "either",
    label: "How far inputs may be off",
    at: "",
    hint: "Each at one sigma; what is left out has the figure shown. Without spread one flight decides.",
    branches: [
      {
        id: "values",
        label: "spread",
        keys: ["spread"],
        matches: ({ spread }) => spread !== "none",
        parts: values,
      },
      {
        id: "none",
        label: "none",
        keys: ["spread"],
        start: { spread: "none" },
        matches: ({ spread }) => spread === "none",
        parts: [],
      },
    ],
  },
];
