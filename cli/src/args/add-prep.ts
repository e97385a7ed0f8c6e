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

/** `delaywright prep`. */
export function addPrep(program: Command, run: Act, io: Io): void {
  program
    .command("prep")
    .summary("the prep sheet: what is done in which order, and why")
    .description("The plan's prep sheet: every step in its order, with its reason and its hazard, to be signed.")
    .argument("<plan>", "the plan's file")
    .option("--flight <file>", "a flight of this plan: the sheet stands as it was signed there")
    .addOption(new Option("--units <system>", "metric (unless given) or imperial: feet and inches"))
    .addOption(jsonOption())
    .addOption(modelOption())
    .addOption(new Option("--draws <n>", "flights to draw, 10000 unless given"))
    .addOption(seedOption())
    .addOption(new Option("--workers <n>", "threads that fly the draws; the figures are the same with any number"))
    .addHelpText("after", examples.prep)
    .action((plan: string, options: PlanOptions & { readonly flight?: string; readonly units?: string }) =>
      run(async () => {
        const { choiceOf, modelOf, wholeOf } = await import("./values.js");
        const args = {
          plan,
          ...given("units", options.units, (text) => choiceOf("--units", text, ["metric", "imperial"])),
          ...given("flight", options.flight, (path) => path),
          ...flag("json", options.json),
          ...given("model", options.model, modelOf),
          ...given("draws", options.draws, (text) => wholeOf("--draws", text, 1, MOST_DRAWS)),
          ...given("seed", options.seed, (text) => wholeOf("--seed", text, 0, MOST_SEED)),
          ...given("workers", options.workers, (text) => wholeOf("--workers", text, 1, 32)),
        };
        return (await import("../commands/prep.js")).prep(args, io);
      }),
    );
}
