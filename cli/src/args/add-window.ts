import { type Command, Option } from "commander";
import type { Io } from "../io/io.js";
import { examples } from "./help.js";
import { type Act, addDrawing, given, type PlanOptions, quickDrawingOf } from "./options.js";
import { together } from "./usage.js";

/** `delaywright window`. */
export function addWindow(program: Command, run: Act, io: Io): void {
  const command = program
    .command("window")
    .summary("odds over wind and lean of the guide, for the motor as cut")
    .description(
      "Up to which wind, and at which lean of the guide, odds and checks stay good for the motor as it is cut.",
    )
    .argument("<plan>", "the plan's file")
    .addOption(new Option("--cut <time>", "the delay as it is cut, for example 10s"));
  addDrawing(command, "flights to draw at each point of the map, 512 unless given")
    .addHelpText("after", examples.window)
    .action((plan: string, options: PlanOptions & { readonly cut?: string }) =>
      run(async () => {
        const { positiveOf } = await import("./values.js");
        const args = await together(
          () => ({ plan }),
          () => given("cut", options.cut, (text) => positiveOf("--cut", text, "time", "10s")),
          () => quickDrawingOf(options),
        );
        return (await import("../commands/window.js")).window(args, io);
      }),
    );
}
