import { type Command, Option } from "commander";
import type { Io } from "../io/io.js";
import { examples } from "./help.js";
import { type Act, addDrawing, type PlanOptions, quickDrawingOf } from "./options.js";

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
        const { aboveZeroOf, aimOf } = await import("./values.js");
        const height =
          options.height === undefined ? undefined : aboveZeroOf("--height", options.height, "length", "800m");
        const args = {
          plan,
          motors: options.motors,
          aim: aimOf(options.aim, height),
          ...(await quickDrawingOf(options)),
        };
        return (await import("../commands/shortlist.js")).shortlist(args, io);
      }),
    );
}
