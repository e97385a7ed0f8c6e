import type { DecisionData } from "@delaywright/documents";
import { isSettled, type Told } from "./told.js";

type Checks = DecisionData["checks"];
type Landings = DecisionData["packing"]["landings"];

/** As the checks stand in an answer: what weighs most first. */
const order: readonly Checks[number]["verdict"][] = ["stop", "look", "not-checked", "pass"];

/** Checks that a rough answer cannot make; what else it does not check, it was not given the facts for. */
const waitForDraws: ReadonlySet<string> = new Set(["landing-inside", "keep-off-zones", "element-over-cut"]);

/** What rests on draws that are not flown yet says nothing so far: what it said last stands. */
function checksHeldOver(rough: Checks, before: Checks): Checks {
  const said = new Map(before.filter(({ id }) => waitForDraws.has(id)).map((check) => [check.id, check]));
  const all = rough.map((check) => (check.verdict === "not-checked" ? (said.get(check.id) ?? check) : check));
  return order.flatMap((verdict) => all.filter((check) => check.verdict === verdict));
}

/** Of which edge and zones shares are told. */
function whatIsToldOf({ outside, keepOff, zones }: Landings["unopened"]): string {
  return `${outside !== null} ${keepOff !== null} ${zones.length}`;
}

function landingsHeldOver(rough: Landings, { opened }: Landings): Landings {
  // another edge or another zone: shares in the old ones would be read as shares in the new
  const sameField = opened !== null && whatIsToldOf(opened) === whatIsToldOf(rough.unopened);
  return rough.opened !== null || !sameField ? rough : { ...rough, opened };
}

function cutHeldOver(rough: DecisionData["toCut"], before: DecisionData["toCut"]): DecisionData["toCut"] {
  const isSame = (["delay", "removed", "end", "depth"] as const).every((what) => rough?.[what] === before?.[what]);
  // the cut at home belongs to the cut for the day
  return rough === null || before === null || !isSame
    ? rough
    : { ...rough, homeCut: before.homeCut, homeWeather: before.homeWeather };
}

/** What to do with an element goes on while it is the same one. */
function overCutHeldOver(rough: DecisionData, before: DecisionData): DecisionData["overCut"] {
  const [asItIs] = rough.settings;
  const [asItWas] = before.settings;
  return asItIs?.delay === asItWas?.delay && asItIs?.removed === asItWas?.removed ? before.overCut : null;
}

/**
 * A rough answer, with what its first draws cannot say yet as it was said last: where opened flights land and what checks make
 * of it, what drives the spread, the cut at home, what to do with an element that was cut too deep.
 *
 * Left out, it would go and come back with every key press, and meanwhile no check would say stop.
 *
 * @param told a settled one is returned as it is
 * @param before the answer that is shown, of the same plan; null: none yet
 */
export function heldOver(told: Told, before: Told | null): Told {
  if (before === null || isSettled(told)) return told;
  const { data } = told;
  const { packing, drivers, delayShareOfOdds, checks, toCut } = before.data;
  return {
    ...told,
    data: {
      ...data,
      packing: { ...data.packing, landings: landingsHeldOver(data.packing.landings, packing.landings) },
      drivers,
      delayShareOfOdds,
      checks: checksHeldOver(data.checks, checks),
      toCut: cutHeldOver(data.toCut, toCut),
      overCut: overCutHeldOver(data, before.data),
    },
  };
}
