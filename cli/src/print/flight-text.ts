import {
  amount,
  cautions,
  decimals,
  delayWords,
  type PlanContext,
  placeWords,
  speedOf,
  warningSentences,
} from "@delaywright/documents";
import type { FlightResult, Kinematics } from "@delaywright/engine";
import type { Flown } from "./answer.js";
import { stabilityText } from "./stability-text.js";
import { table } from "./table.js";
import { bullet, wrap } from "./wrap.js";

const heads = [
  { head: "event", align: "left" as const },
  { head: "time\ns" },
  { head: "height\nm AGL" },
  { head: "over ground\nm/s" },
  { head: "through air\nm/s" },
  { head: "Mach" },
  { head: "east\nm" },
  { head: "north\nm" },
];

const ends: Readonly<Record<FlightResult["ended"], string>> = Object.freeze({
  landed: "",
  "never-lifted": "STOP: the thrust never carries the weight: it does not lift off.",
  "never-left-guide": "STOP: it falls back before it leaves the guide.",
  "time-limit": "It had not come down by the end of the time that is followed.",
  "not-finite": "The flight could not be followed to its end: a figure ran out of bounds.",
  "step-too-small": "The flight could not be followed to its end: its steps became too small.",
  "too-many-steps": "The flight could not be followed to its end: it took too many steps.",
});

function row(name: string, at: Kinematics): string[] {
  return [
    name,
    decimals(at.time, 2),
    decimals(at.position[2], 1),
    decimals(speedOf(at), 1),
    decimals(at.airspeed, 1),
    decimals(at.mach, 2),
    decimals(at.position[0], 0),
    decimals(at.position[1], 0),
  ];
}

function eventRows({ result, descent, fired }: Flown): string[][] {
  const { liftOff, guideExit, lastFitting, burnout, apogee, landing } = result.events;
  const rows: [number, string[]][] = [];
  const add = (name: string, at: Kinematics | null): void => {
    if (at !== null) rows.push([at.time, row(name, at)]);
  };
  const before = (at: Kinematics | null): Kinematics | null =>
    at !== null && (descent === null || fired === null || at.time <= fired.opens) ? at : null;
  add("lift-off", liftOff);
  add("guide exit", guideExit);
  add("last fitting", lastFitting);
  add("burnout", before(burnout));
  add("top", before(apogee));
  if (fired !== null && descent !== null) add("opening", result.at(fired.opens));
  else add("landing, unopened", landing);
  return rows.sort((a, b) => a[0] - b[0]).map(([, cells]) => cells);
}

function openingWords({ fired, descent }: Flown): string[] {
  if (fired === null) return ["Nothing opens it: no delay was given. --delay 9s opens it."];
  const by =
    fired.delay === null ? "The electronics fires" : `With a delay of ${delayWords(fired.delay)} the charge fires`;
  const line = `${by} after ${amount(fired.fires, "s", 1)}; lines are stretched after ${amount(fired.opens, "s", 1)}.`;
  if (descent === null) return [line, "It lands before that."];
  const down = descent.openings.map(
    ({ which, height, airspeed, fill }) =>
      `${which} opens at ${amount(height, "m")} AGL and ${amount(airspeed, "m/s", 1)}, full after ${amount(fill, "s", 1)}`,
  );
  const { landing } = descent;
  const lands =
    landing === null
      ? ""
      : ` Lands after ${amount(landing.time, "s", 1)} at ${amount(landing.descentSpeed, "m/s", 1)} down and ${amount(landing.groundSpeed, "m/s", 1)} in all, ${placeWords(landing.position[0], landing.position[1])}.`;
  return [line, `On the way down: ${down.join("; ")}.${lands}`];
}

/** One flight for a person: its events, and how it comes down. */
export function flightText(flown: Flown, context: PlanContext): string {
  const { result, draw, seed } = flown;
  const which = draw === null ? "as planned" : `draw ${draw} of seed ${seed}`;
  const { fastest, hardest } = result.peaks();
  const ended = ends[result.ended];
  const sections = [
    ...(ended === "" ? [] : [wrap(ended)]),
    wrap(`One flight, ${which}: ${context.rocket} on ${context.motor}, ${result.options.model} model.`),
    table(heads, eventRows(flown)),
    wrap(
      `Fastest ${amount(fastest.speed, "m/s")} (Mach ${decimals(fastest.mach, 2)}) after ${amount(fastest.time, "s", 1)}; hardest ${amount(hardest.acceleration, "m/s²")} after ${amount(hardest.time, "s", 1)}.`,
    ),
    ...(flown.warnings.length === 0
      ? []
      : [["What to look out for", ...warningSentences(flown.warnings).map(bullet)].join("\n")]),
    stabilityText(result, flown.leastMargin),
    ...(result.ended === "landed"
      ? [
          openingWords(flown)
            .map((line) => wrap(line))
            .join("\n"),
        ]
      : []),
    ["One flight says nothing of the odds: delaywright decide does.", ...cautions["late-charge"].map(bullet)].join(
      "\n",
    ),
    wrap(cautions.authority.join(" ")),
  ];
  return `${sections.join("\n\n")}\n`;
}
