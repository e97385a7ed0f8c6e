import { type Command, Option } from "commander";
import type { Io } from "../io/io.js";
import { examples } from "./help.js";
import { type Act, addDrawing, drawingOf, given, type PlanOptions } from "./options.js";
import { together, UsageError } from "./usage.js";

interface CardOptions extends PlanOptions {
  readonly output?: string;
  readonly paper?: string;
  readonly units?: string;
  readonly read?: string;
}

/** `delaywright card`. */
export function addCard(program: Command, run: Act, io: Io): void {
  const command = program
    .command("card")
    .summary("the flight card: one page, to print and to sign")
    .description("The flight card of a plan as one self-contained page; or a card's code back into its plan.")
    .argument("[plan]", "the plan's file")
    .addOption(new Option("-o, --output <file>", "file to write; left out: standard output"))
    .addOption(new Option("--paper <size>", "a5 (unless given), a4 or letter"))
    .addOption(new Option("--units <system>", "metric (unless given) or imperial: feet and inches"))
    .addOption(new Option("--read <file>", "the text of a card's code, to be turned back into its plan"));
  addDrawing(command)
    .addHelpText("after", examples.card)
    .action((plan: string | undefined, options: CardOptions) =>
      run(async () => {
        const { card, readCard } = await import("../commands/card.js");
        const output = given("output", options.output, (text) => text);
        if (options.read !== undefined) {
          if (plan !== undefined) throw new UsageError("card: either a plan or --read is accepted, not both");
          return readCard({ read: options.read, ...output }, io);
        }
        if (plan === undefined)
          throw new UsageError("card: a plan's file is missing, for example delaywright card plan.json -o card.html");
        const { choiceOf } = await import("./values.js");
        const args = await together(
          () => ({ plan, version: program.version() ?? "", ...output }),
          () =>
            given("paper", options.paper, (text) => choiceOf("--paper", text.toLowerCase(), ["a5", "a4", "letter"])),
          () => given("units", options.units, (text) => choiceOf("--units", text, ["metric", "imperial"])),
          () => drawingOf(options),
        );
        return card(args, io);
      }),
    );
}
