import { type Command, Option } from "commander";
import type { Io } from "../io/io.js";
import { examples } from "./help.js";
import {
  type Act,
  flag,
  given,
  jsonOption,
  MOST_DRAWS,
  MOST_SEED,
  modelOption,
  type PlanOptions,
  seedOption,
} from "./options.js";

/** `delaywright window`. */
export function addWindow(program: Command, run: Act, io: Io): void {
  program
    .command("window")
    .summary("odds over wind and lean of the guide, for the motor as cut")
    .description("Up to which wind, and at which lean of the guide, the odds hold for the motor as it is cut.")
    .argument("<plan>", "the plan's file")
    .addOption(new Option("--cut <time>", "the delay as it is cut, for example 10s"))
    .addOption(jsonOption())
    .addOption(modelOption())
    .addOption(new Option("--draws <n>", "flights to draw at each point of the map, 512 unless given"))
    .addOption(seedOption())
    .addOption(new Option("--workers <n>", "threads that fly the draws; the figures are the same with any number"))
    .addHelpText("after", examples.window)
    .action((plan: string, options: PlanOptions & { readonly cut?: string }) =>
      run(async () => {
        const { modelOf, positiveOf, wholeOf } = await import("./values.js");
        const args = {
          plan,
          ...given("cut", options.cut, (text) => positiveOf("--cut", text, "time", "10s")),
          ...flag("json", options.json),
          ...given("model", options.model, modelOf),
          ...given("draws", options.draws, (text) => wholeOf("--draws", text, 1, MOST_DRAWS)),
          ...given("seed", options.seed, (text) => wholeOf("--seed", text, 0, MOST_SEED)),
          ...given("workers", options.workers, (text) => wholeOf("--workers", text, 1, 32)),
        };
        return (await import("../commands/window.js")).window(args, io);
      }),
    );
}
