import { type Command, Option } from "commander";
import type { Io } from "../io/io.js";
import { examples } from "./help.js";
import { type Act, addDrawing, drawingOf, given, type PlanOptions } from "./options.js";
import { together } from "./usage.js";

interface DebriefOptions extends PlanOptions {
  readonly set?: string;
  readonly flight?: string;
  readonly flights?: string;
  readonly column?: readonly string[];
  readonly outcome?: string;
  readonly exclude?: string;
  readonly output?: string;
  readonly units?: string;
}

/** Each time that an option is given adds to it. */
const collected = (text: string, before: readonly string[] = []): readonly string[] => [...before, text];

/** `delaywright debrief`. */
export function addDebrief(program: Command, run: Act, io: Io): void {
  const command = program
    .command("debrief")
    .summary("what happened in a flight, what was learned, and what it changes")
    .description(
      "An altimeter's record against the plan: events, prediction against flight, what it teaches, the next odds.",
    )
    .argument("<plan>", "the plan's file")
    .argument("<log>", "the altimeter's record as CSV, or a log or flight document")
    .addOption(new Option("--set <time>", "the delay as it was set, for example 10s"))
    .addOption(new Option("--flight <n>", "which flight of the record, from 1; left out: the highest"))
    .addOption(new Option("--flights <folder>", "the folder with the documents of all flights, to learn from"))
    .addOption(
      new Option(
        "--column <what=column:unit>",
        "what a column holds, for example height=3:ft; again for more",
      ).argParser(collected),
    )
    .addOption(new Option("--outcome <how>", "how it came in: clean, fast, low or grounded; left out: by the record"))
    .addOption(new Option("--exclude <reason>", "learn nothing from it, for this reason"))
    .addOption(new Option("-o, --output <file>", "flight document to write, with what was found"))
    .addOption(new Option("--units <system>", "metric (unless given) or imperial: feet and inches"));
  addDrawing(command)
    .addHelpText("after", examples.debrief)
    .action((plan: string, log: string, options: DebriefOptions) =>
      run(async () => {
        const { choiceOf, positiveOf, wholeOf } = await import("./values.js");
        const { columnsOf } = await import("./columns.js");
        const args = await together(
          () => ({ plan, log }),
          () => given("set", options.set, (text) => positiveOf("--set", text, "time", "10s")),
          () => given("number", options.flight, (text) => wholeOf("--flight", text, 1, 1000)),
          () => given("flights", options.flights, String),
          async () => (options.column === undefined ? {} : { columns: await columnsOf(options.column) }),
          () =>
            given("outcome", options.outcome, (text) =>
              choiceOf("--outcome", text, ["clean", "fast", "low", "grounded"]),
            ),
          () => given("exclude", options.exclude, String),
          () => given("output", options.output, String),
          () => given("units", options.units, (text) => choiceOf("--units", text, ["metric", "imperial"])),
          () => drawingOf(options),
        );
        return (await import("../commands/debrief.js")).debrief(args, io);
      }),
    );
}
