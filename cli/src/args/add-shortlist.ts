import { type Command, Option } from "commander";
import type { Io } from "../io/io.js";
import { examples } from "./help.js";
import { type Act, addDrawing, given, type PlanOptions, quickDrawingOf } from "./options.js";
import { together } from "./usage.js";

interface ShortlistOptions extends PlanOptions {
  readonly motors: string;
  readonly aim?: string;
  readonly height?: string;
}

/** `delaywright shortlist`. */
export function addShortlist(program: Command, run: Act, io: Io): void {
  const command = program
    .command("shortlist")
    .summary("every motor in a folder: refused with value and limit, or ranked")
    .description(
      "Every motor of a folder against a plan: refused by reason, or ranked by the delay to cut and its odds.",
    )
    .argument("<plan>", "the plan's file")
    .requiredOption("--motors <folder>", "the folder with the motors' files")
    .addOption(new Option("--aim <aim>", "what they are ordered by: best-odds unless given"))
    .addOption(new Option("--height <height>", "the height that is wanted, for example 800m"));
  addDrawing(
    command,
    "flights to draw for each motor, 500 unless given",
    "threads that judge motors; the figures are the same with any number",
  )
    .addHelpText("after", examples.shortlist)
    .action((plan: string, options: ShortlistOptions) =>
      run(async () => {
        const { aboveZeroOf, aimNameOf, aimOf } = await import("./values.js");
        const wanted = () =>
          together(
            () => given("name", options.aim, aimNameOf),
            () => given("height", options.height, (text) => aboveZeroOf("--height", text, "length", "800m")),
          );
        const args = await together(
          () => ({ plan, motors: options.motors }),
          async () => ({ aim: aimOf(await wanted()) }),
          () => quickDrawingOf(options),
        );
        return (await import("../commands/shortlist.js")).shortlist(args, io);
      }),
    );
}
