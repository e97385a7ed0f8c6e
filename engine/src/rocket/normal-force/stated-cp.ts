import { keepingLast } from "../../math/keeping-last.js";
import type { Rocket } from "../rocket.js";
import { cpOf, normalForceParts, type Part } from "./parts.js";

/** Where fins that nobody measured act, as a fraction of the length; judgement, no source. */
const USUAL_FIN_STATION = 0.93;

function shifted(part: Part, by: number): Part {
  return { ...part, at: part.at + by, cpAt: (mach) => part.cpAt(mach) + by };
}

/** Fins that nobody measured: as strong as it takes to bring the centre of pressure to where it was stated. */
function impliedFins(rocket: Rocket, others: readonly Part[], cp: number): Part {
  const at = Math.max(USUAL_FIN_STATION * rocket.length, (cp + rocket.length) / 2);
  const moment = others.reduce((sum, part) => sum + part.slope * (cp - part.at), 0);
  const slope = Math.max(0, moment / (at - cp));
  return { kind: "fins", slope, at, slopeAt: () => slope, cpAt: () => at };
}

const movedParts = keepingLast((rocket: Rocket): readonly Part[] => {
  const computed = normalForceParts(rocket);
  const { statedCp } = rocket;
  if (statedCp === undefined) return computed;
  const measured = computed.some((part) => part.kind === "fins" && part.slope > 0);
  const body = computed.filter((part) => part.kind !== "fins");
  const parts = measured ? computed : [...body, impliedFins(rocket, body, statedCp)];
  const by = statedCp - cpOf(parts, 0);
  return parts.map((part) => shifted(part, by));
});

/**
 * The parts that make normal force, brought to the stated centre of pressure where there is one.
 *
 * Computed parts are all moved by the same way, so that slope and damping stay. Without fins that count (none, or fewer than
 * three in a set) the fins are implied: they act at 93 % of the length, or half-way from the stated point to the tail where that
 * is further aft, as strong as the stated point asks; this is a guess.
 *
 * @param rocket without issues (see `rocketIssues`)
 * @returns as `normalForceParts`; `cpOf` at Mach 0 gives `rocket.statedCp` where it is stated
 * @example
 * cpOf(partsWithStatedCp({ ...exampleRocket, statedCp: 1.15 }), 0); // 1.15
 */
export function partsWithStatedCp(rocket: Rocket): readonly Part[] {
  return movedParts(rocket);
}
