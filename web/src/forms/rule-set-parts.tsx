import { type FormPart, field, more } from "./model.js";
import { RuleLimitsField } from "./rule-limits-field.js";

/** A club's own rules. */
export const ruleSetParts: readonly FormPart[] = [
  field("base", "Where it says nothing", {
    leftOut: "the association's codes",
    words: {
      association: "the association's codes and the aviation rule",
      none: "no code: physics and own defaults only",
    },
  }),
  field("source", "Written in", { hint: "Left out: the name above." }),
  field("edition", "Edition or date"),
  {
    part: "own",
    id: "limits",
    fields: ["limits"],
    show: (path, base) => <RuleLimitsField path={path} base={base} />,
  },
  more(
    "Distances by total impulse",
    [
      {
        part: "rows",
        field: "distances",
        label: "Least distances of people from the pad",
        one: "row",
        start: {},
        fixedOrder: true,
        hint: "In place of the safety code's table; total impulse rises from row to row.",
        parts: [
          field("upTo", "Up to a total impulse of", { aside: "inclusive" }),
          field("single", "One motor"),
          field("complex", "More than one motor"),
          field("cleared", "Ground cleared of what burns", { leftOut: "no rule", aside: "diameter" }),
        ],
      },
    ],
    "in place of the code's",
  ),
];
