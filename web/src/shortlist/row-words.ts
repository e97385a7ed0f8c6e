import {
  amountIn,
  decimals,
  GLUE,
  type MotorRowData,
  motorCutWords,
  oddsWords,
  type RankedData,
  rowNotes,
  type UnitSystem,
  upperFirst,
} from "@delaywright/documents";

/**
 * What to cut, and its odds: `Cut to 9 s · 91 % clean, holds 99.6 %`.
 *
 * @param draws that the odds rest on
 */
export function leadWords({ toCut }: Pick<MotorRowData, "toCut">, draws: number): string {
  const cut = upperFirst(motorCutWords(toCut));
  if (toCut === null) return cut;
  const odds = oddsWords(toCut, draws).replace(/ \(±[^)]*\)/, "");
  return `${cut} · ${odds}`;
}

/** The figures that tell motors apart, a sentence each; what is not known is left out. */
export function figureSentences(
  { height, launch, thrustToWeight, toCut, price }: MotorRowData,
  units: UnitSystem,
): string[] {
  const fast = toCut?.openingSpeed.p90 ?? null;
  const top =
    height === null
      ? null
      : `Top ${amountIn(height.p50, "distance", units)}; 95${GLUE}% stay below ${amountIn(height.p95, "distance", units)}.`;
  const leaves =
    launch === null
      ? `Thrust to weight ${decimals(thrustToWeight, 1)}.`
      : `Leaves the guide at ${amountIn(launch.guideExitSpeed, "speed", units)}, thrust to weight ${decimals(thrustToWeight, 1)}.`;
  const opens = fast === null ? null : `Opens below ${amountIn(fast, "speed", units)} in 9${GLUE}of${GLUE}10 flights.`;
  const costs = price === null ? null : `Price${GLUE}${price}.`;
  return [top, leaves, opens, costs].filter((sentence) => sentence !== null);
}

/** What asks for a look or could not be checked and is not shared with all others, a sentence each. */
export function noteSentences(row: RankedData, shared: ReadonlySet<string>, units: UnitSystem): string[] {
  const own = rowNotes(row, units).filter((note) => !shared.has(note));
  return own.map((note) => `${upperFirst(note)}.`);
}

/** Notes that every motor of several bears, a clause each: they are said once, the others stand with their motors. */
export function sharedNotes(rows: readonly RankedData[], units: UnitSystem): ReadonlySet<string> {
  const [first, ...others] = rows.map((row) => rowNotes(row, units));
  if (first === undefined || others.length === 0) return new Set();
  return new Set(first.filter((note) => others.every((notes) => notes.includes(note))));
}
