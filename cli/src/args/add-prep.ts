import { type Command, Option } from "commander";
import type { Io } from "../io/io.js";
import { examples } from "./help.js";
import { type Act, addDrawing, drawingOf, given, type PlanOptions } from "./options.js";
import { together } from "./usage.js";

/** `delaywright prep`. */
export function addPrep(program: Command, run: Act, io: Io): void {
  const command = program
    .command("prep")
    .summary("the prep sheet: what is done in which order, and why")
    .description("The plan's prep sheet: every step in its order, with its reason and its hazard, to be signed.")
    .argument("<plan>", "the plan's file")
    .option("--flight <file>", "a flight of this plan: the sheet stands as it was signed there")
    .addOption(new Option("--units <system>", "metric (unless given) or imperial: feet and inches"));
  addDrawing(command)
    .addHelpText("after", examples.prep)
    .action((plan: string, options: PlanOptions & { readonly flight?: string; readonly units?: string }) =>
      run(async () => {
        const { choiceOf } = await import("./values.js");
        const args = await together(
          () => ({ plan }),
          () => given("units", options.units, (text) => choiceOf("--units", text, ["metric", "imperial"])),
          () => given("flight", options.flight, (path) => path),
          () => drawingOf(options),
        );
        return (await import("../commands/prep.js")).prep(args, io);
      }),
    );
}
