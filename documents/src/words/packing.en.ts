import type { LoadedPart } from "@delaywright/engine";
import type { DecisionData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { bayChargeSentences, motorChargeSentences, staticPortSentence } from "./charge.en.js";
import { decimals, figureWords, glued, percent, rangeWords } from "./numbers.en.js";

/** The findings about a rocket's packing, as an answer carries them. */
export type PackingData = DecisionData["packing"];

const parts: Readonly<Record<LoadedPart, string>> = Object.freeze({
  canopy: "the canopy",
  harness: "the harness",
  fittings: "the fittings",
  pins: "the pins of the joint that must stay shut",
});

/** The size of a canopy or the length of a harness. */
export const sizeWords = (value: number, units: UnitSystem): string =>
  units === "metric" ? glued(String(Number(value.toPrecision(3))), "m") : figureWords(value, "distance", units, 0, 1);

/** Load of every opening against the weakest part that is rated for it. */
export function loadSentences(
  { openings, firstOpeningAt }: Pick<PackingData, "openings" | "firstOpeningAt">,
  units: UnitSystem = "metric",
): string[] {
  const force = (value: number): string => figureWords(value, "force", units);
  return openings.map(({ which, airspeed, greatest, weakest, margin }, i) => {
    const speed = figureWords(airspeed, "speed", units, 0);
    const at = i === 0 && firstOpeningAt === "p95" ? `${speed}, which 19 in 20 openings stay below` : speed;
    const bears =
      weakest === null || margin === null
        ? "; nothing is rated for it"
        : `; ${parts[weakest.part]}, the weakest that is rated, bears ${force(weakest.strength)}, ${glued(decimals(margin, 1), "times")} that`;
    return `The ${which} opens with up to ${force(greatest)} at ${at}${bears}.`;
  });
}

/** What lands it at the speed that is wanted, and the energy. */
export function landingSentences(
  { canopy, landing, options }: Pick<PackingData, "canopy" | "landing" | "options">,
  units: UnitSystem = "metric",
): string[] {
  const { sections, limit, of, speed } = landing;
  const hardest = Math.max(...sections.map(({ energy }) => energy));
  const what = of === "sections" ? "its hardest section" : "the whole rocket";
  const fast = (value: number): string => figureWords(value, "speed", units, 1, 1);
  const energy = (value: number): string => figureWords(value, "energy", units);
  return [
    `Under the main it comes down at ${fast(canopy.descentSpeed)}; one of its type with ${sizeWords(canopy.diameterForSpeed, units)} would at ${fast(options.landingSpeed)}.`,
    `At ${fast(speed)} ${what} lands with ${energy(hardest)}; a student competition allows ${energy(limit)} each.`,
  ];
}

/** Length of the harness against what is usual. */
export function harnessSentence({ harness }: Pick<PackingData, "harness">, units: UnitSystem = "metric"): string {
  const { usual, length, code } = harness;
  const taken = `${rangeWords(usual.least, usual.most, "distance", units, 1, 0)} (common practice, no source)`;
  if (length === null) return `The harness's length is not known; flyers take ${taken}.`;
  const words = {
    "shorter-than-usual": "shorter than usual",
    "longer-than-usual": "longer than usual",
    usual: "as usual",
  };
  return `The harness of ${sizeWords(length, units)} is ${words[code ?? "usual"]}: ${taken}.`;
}

/** How often it lands where it should not, opened and unopened; empty where the field has neither edge nor zones. */
export function landedSentences({ landings }: Pick<PackingData, "landings">): string[] {
  return [["Opened", landings.opened] as const, ["If nothing opens", landings.unopened] as const].flatMap(
    ([head, landed]) => {
      if (landed === null) return [];
      const { outside, keepOff, draws, notFollowed } = landed;
      const lost =
        notFollowed === 0
          ? []
          : [
              `${head}, of ${draws + notFollowed} flights ${notFollowed} could not be followed to the ground: where they land is not known.`,
            ];
      const where = [
        outside === null ? [] : [`${percent(outside)} outside the field`],
        keepOff === null ? [] : [`${percent(keepOff)} in a keep-off zone`],
      ].flat();
      const counted = where.length === 0 || draws === 0 ? [] : [`${head}, of ${draws} flights: ${where.join(", ")}.`];
      return [...counted, ...lost];
    },
  );
}

/** Everything to settle about the packing, a sentence each: openings, charge, ports, canopy, landing, harness. */
export function packingSentences(
  { packing }: Pick<DecisionData, "packing">,
  units: UnitSystem = "metric",
): readonly string[] {
  const { bay, staticPorts, harness } = packing;
  return [
    ...loadSentences(packing, units),
    ...landingSentences(packing, units),
    ...landedSentences(packing),
    ...(harness.code === "usual" ? [] : [harnessSentence(packing, units)]),
    ...(bay === null ? [] : [...bayChargeSentences(bay, units), ...motorChargeSentences(bay, units)]),
    ...(staticPorts?.of === "electronicsBay" ? [staticPortSentence(staticPorts, units)] : []),
  ];
}
