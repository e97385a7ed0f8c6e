import { type SteadinessData, steadinessData } from "@delaywright/documents";
import { type DecisionInputs, fly, leastMarginOf } from "@delaywright/engine";

/**
 * Flies a plan once by the quick model of the odds, once as a rigid body in the mean wind and once as one in turbulence.
 *
 * @param seed of the turbulence
 * @param step awaited between the flights; rejects to call everything off
 */
export async function steadinessOf(
  inputs: DecisionInputs,
  seed: number,
  step: () => Promise<void>,
): Promise<SteadinessData> {
  await step();
  const quick = fly(inputs);
  await step();
  const rigid = fly(inputs, { model: "rigid" });
  await step();
  const rough = fly(inputs, { model: "rigid", turbulence: seed });
  await step();
  const leastMargin = leastMarginOf(inputs.ruleSet ?? "association");
  return steadinessData({ quick, rigid, rough, seed, leastMargin });
}
