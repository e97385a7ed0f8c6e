import { defaultLimits, defaultWeather, formatQuantity } from "@delaywright/documents";
import { type Branch, type FormPart, field, more } from "./model.js";

const reading = ["wind", "windFrom", "measuredAt", "terrain", "gradientHeight"];

const windBranches: readonly Branch[] = [
  {
    id: "reading",
    label: "read near the ground",
    keys: reading,
    matches: (weather) => !("aloft" in weather),
    parts: [
      field("weather.wind", "Wind", { wind: true }),
      field("weather.windFrom", "From", { aside: "degrees true" }),
      field("weather.measuredAt", "Read at a height of", {
        leftOut: formatQuantity(defaultWeather.measuredAt, "length", "m"),
      }),
    ],
  },
  {
    id: "aloft",
    label: "winds at several heights",
    keys: ["aloft"],
    matches: (weather) => !reading.some((key) => key in weather),
    parts: [
      {
        part: "rows",
        field: "weather.aloft",
        label: "Winds aloft",
        one: "height",
        start: {},
        flat: true,
        fixedOrder: true,
        hint: "Rising, above the pad. The first holds down to the ground.",
        parts: [field("height", "height"), field("wind", "wind", { wind: true }), field("from", "from")],
      },
    ],
  },
];

const pressureBranches: readonly Branch[] = [
  {
    id: "station",
    label: "here, as read",
    keys: ["pressure"],
    matches: (weather) => !("seaLevelPressure" in weather),
    parts: [field("weather.pressure", "Pressure here", { leftOut: "standard" })],
  },
  {
    id: "sea",
    label: "reduced to sea level",
    keys: ["seaLevelPressure"],
    matches: (weather) => !("pressure" in weather),
    parts: [field("weather.seaLevelPressure", "Pressure at sea level")],
  },
];

/** The weather at the field, and the weather that a cut at home must leave room for. */
export const planWeatherParts: readonly FormPart[] = [
  { part: "either", label: "Wind", at: "weather", branches: windBranches },
  field("weather.temperature", "Temperature", { leftOut: "standard" }),
  { part: "either", label: "Pressure", at: "weather", branches: pressureBranches },
  field("weather.taken", "Read at", { hint: "The time of the reading, for example 10:40." }),
  more(
    "Air and ground",
    [
      field("weather.humidity", "Humidity", { percent: true, leftOut: "dry" }),
      field("weather.motorTemperature", "Soaked motor", { leftOut: "as the air" }),
      field("weather.terrain", "The wind blows over", {
        leftOut: "open country",
        words: { open: "open country", rough: "rough country", wooded: "woods" },
        hint: "Goes with a wind read near the ground.",
      }),
      field("weather.gradientHeight", "Wind grows up to", {
        leftOut: formatQuantity(defaultWeather.gradientHeight, "length", "m"),
        hint: 'A height, or "none" where it never stops growing. Goes with a wind read near the ground.',
      }),
    ],
    "humidity, terrain",
  ),
  more(
    "Weather to leave room for",
    [
      field("weatherRange.wind[0]", "Least wind", { wind: true }),
      field("weatherRange.wind[1]", "Most wind", { wind: true }),
      field("weatherRange.temperature[0]", "Least temperature"),
      field("weatherRange.temperature[1]", "Most temperature"),
    ],
    "for a cut at home",
  ),
];

/** The launch guide. */
export const planGuideParts: readonly FormPart[] = [
  {
    part: "either",
    label: "Launch guide",
    at: "guide",
    branches: [
      {
        id: "rail",
        label: "rail and stop",
        keys: ["rail", "stop"],
        matches: (guide) => !("travel" in guide),
        parts: [
          field("guide.rail", "Length of the rail"),
          field("guide.stop", "Height of the stop", { aside: "above its end" }),
        ],
      },
      {
        id: "travel",
        label: "travel until free",
        keys: ["travel"],
        matches: (guide) => !("rail" in guide || "stop" in guide),
        parts: [field("guide.travel", "Travel until free")],
      },
    ],
  },
  field("guide.tilt", "Tilt", { leftOut: "0 deg", aside: "from vertical" }),
  field("guide.toward", "Leans toward", { aside: "degrees true" }),
];

/** What a clean opening is, and which odds are enough. */
export const planLimitsParts: readonly FormPart[] = [
  field("limits.openingSpeed", "Opens below", {
    leftOut: formatQuantity(defaultLimits.openingSpeed, "speed", "m/s"),
    aside: "airspeed",
  }),
  field("limits.openingHeight", "Opens above", {
    leftOut: formatQuantity(defaultLimits.openingHeight, "length", "m"),
    aside: "the pad",
  }),
  field("limits.leastClean", "Least odds, clean", { leftOut: String(defaultLimits.leastClean), percent: true }),
  field("limits.leastHolds", "Least odds, holds", { leftOut: String(defaultLimits.leastHolds), percent: true }),
];

/** The flyer's own setting, beside the suggestion. */
export const planChoiceParts: readonly FormPart[] = [
  field("choice.delay", "The delay that you choose"),
  field("choice.reason", "Why"),
];

/** A mass fixed to the airframe for this flight. */
export const planBallastParts: readonly FormPart[] = [
  field("ballast.mass", "Ballast"),
  field("ballast.at", "Fixed at", { aside: "from the tip" }),
];

/** When it is flown. */
export const planDayParts: readonly FormPart[] = [field("date", "Day of the flight", { day: true })];

/** What the plan is called, who flies, and what is worth remembering. */
export const planHeadParts: readonly FormPart[] = [
  field("name", "Name"),
  field("flyer", "Flyer", { kinds: ["flyer"] }),
  field("note", "Notes", { long: true }),
];

/** Who flies. */
export const flyerParts: readonly FormPart[] = [
  field("certification", "Certification level", { hint: "0 for none." }),
  field("age", "Age", { aside: "years" }),
  field("association", "Association"),
];
