import type { LoadedPart } from "@delaywright/engine";
import type { DecisionData } from "../answer/decision-data.js";
import { bayChargeSentences, motorChargeSentences, staticPortSentence } from "./charge.en.js";
import { amount, decimals, glued, percent } from "./numbers.en.js";

type PackingData = DecisionData["packing"];

const parts: Readonly<Record<LoadedPart, string>> = Object.freeze({
  canopy: "the canopy",
  harness: "the harness",
  fittings: "the fittings",
  pins: "the pins of the joint that must stay shut",
});

const metres = (value: number): string => glued(String(Number(value.toPrecision(3))), "m");

/** Load of every opening against the weakest part that is rated for it. */
function openingSentences({ openings, firstOpeningAt }: PackingData): string[] {
  return openings.map(({ which, airspeed, greatest, weakest, margin }, i) => {
    const speed = amount(airspeed, "m/s");
    const at = i === 0 && firstOpeningAt === "p95" ? `${speed}, which 19 in 20 openings stay below` : speed;
    const bears =
      weakest === null || margin === null
        ? "; nothing is rated for it"
        : `; ${parts[weakest.part]}, the weakest that is rated, bears ${amount(weakest.strength, "N")}, ${glued(decimals(margin, 1), "times")} that`;
    return `The ${which} opens with up to ${amount(greatest, "N")} at ${at}${bears}.`;
  });
}

/** What lands it at the speed that is wanted, and the energy. */
function landingSentences({ canopy, landing, options }: PackingData): string[] {
  const { sections, limit, of, speed } = landing;
  const hardest = Math.max(...sections.map(({ energy }) => energy));
  const what = of === "sections" ? "its hardest section" : "the whole rocket";
  return [
    `Under the main it comes down at ${amount(canopy.descentSpeed, "m/s", 1)}; one of its type with ${metres(canopy.diameterForSpeed)} would at ${amount(options.landingSpeed, "m/s", 1)}.`,
    `At ${amount(speed, "m/s", 1)} ${what} lands with ${amount(hardest, "J")}; a student competition allows ${amount(limit, "J")} each.`,
  ];
}

/** Length of the harness against what is usual; null where it is as usual. */
function harnessSentence({ harness }: PackingData): string | null {
  const { usual, length, code } = harness;
  const range = `${decimals(usual.least, 1)} to ${amount(usual.most, "m", 1)}`;
  if (length === null) return `The harness's length is not known; flyers take ${range} (common practice, no source).`;
  if (code === "usual" || code === null) return null;
  const word = code === "shorter-than-usual" ? "shorter" : "longer";
  return `The harness of ${metres(length)} is ${word} than usual: ${range} (common practice, no source).`;
}

/** How often it lands where it should not, opened and unopened; empty where the field has neither edge nor zones. */
export function landedSentences({ landings }: PackingData): string[] {
  return [["Opened", landings.opened] as const, ["If nothing opens", landings.unopened] as const].flatMap(
    ([head, landed]) => {
      if (landed === null) return [];
      const { outside, keepOff, draws } = landed;
      const where = [
        outside === null ? [] : [`${percent(outside)} outside the field`],
        keepOff === null ? [] : [`${percent(keepOff)} in a keep-off zone`],
      ].flat();
      return where.length === 0 ? [] : [`${head}, of ${draws} flights: ${where.join(", ")}.`];
    },
  );
}

/** Everything to settle about the packing, a sentence each: openings, charge, ports, canopy, landing, harness. */
export function packingSentences({ packing }: Pick<DecisionData, "packing">): string[] {
  const { bay, staticPorts } = packing;
  const harness = harnessSentence(packing);
  return [
    ...openingSentences(packing),
    ...landingSentences(packing),
    ...landedSentences(packing),
    ...(harness === null ? [] : [harness]),
    ...(bay === null ? [] : [...bayChargeSentences(bay), ...motorChargeSentences(bay)]),
    ...(staticPorts?.of === "electronicsBay" ? [staticPortSentence(staticPorts)] : []),
  ];
}
