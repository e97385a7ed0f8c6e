import { Command, CommanderError, Option } from "commander";
import { EXIT, type Io } from "../io/io.js";
import { addCard } from "./add-card.js";
import { addCharge } from "./add-charge.js";
import { addDebrief } from "./add-debrief.js";
import { addPrep } from "./add-prep.js";
import { addShortlist } from "./add-shortlist.js";
import { addWindow } from "./add-window.js";
import { examples } from "./help.js";
import {
  addDrawing,
  drawingOf,
  flag,
  given,
  jsonOption,
  MOST_SEED,
  modelOption,
  type PlanOptions,
  seedOption,
} from "./options.js";
import { refuseRepeats } from "./repeats.js";
import { together } from "./usage.js";

interface CutOptions {
  readonly json?: boolean;
  readonly longest: string;
  readonly mostRemoved?: string;
  readonly leastLeft?: string;
  readonly to?: string;
  readonly before?: string;
  readonly after?: string;
  readonly depthPerSecond?: string;
}

function addDecide(program: Command, run: (act: () => Promise<number>) => Promise<void>, io: Io): void {
  const command = program
    .command("decide")
    .summary("the delay to cut, with its odds and its cut")
    .description("From a plan to the delay to cut: the flight, the odds of every setting, the cut, the checks.")
    .argument("<plan>", "the plan's file")
    .addOption(new Option("--all-checks", "list every rule: those within limits, and those not checked and why"))
    .addOption(new Option("--flights <folder>", "learn from the flight documents in this folder"));
  addDrawing(command)
    .addHelpText("after", examples.decide)
    .action((plan: string, options: PlanOptions & { readonly flights?: string }) =>
      run(async () => {
        const args = {
          plan,
          ...(await drawingOf(options)),
          ...flag("allChecks", options.allChecks),
          ...given("flights", options.flights, String),
        };
        return (await import("../commands/decide.js")).decide(args, io);
      }),
    );
}

function addFly(program: Command, run: (act: () => Promise<number>) => Promise<void>, io: Io): void {
  program
    .command("fly")
    .summary("one flight: its events, or the whole trajectory")
    .description("Flies a plan once and tells its events; with --csv or --json the whole trajectory.")
    .argument("<plan>", "the plan's file")
    .addOption(jsonOption().conflicts("csv"))
    .addOption(new Option("--csv", "the trajectory as CSV, in SI units"))
    .addOption(modelOption())
    .addOption(new Option("--draw <n>", "fly this draw of the plan's spread, counted from 0"))
    .addOption(seedOption())
    .addOption(new Option("--delay <time>", "delay after which the charge fires, for example 10s"))
    .addOption(
      new Option("--every <time>", "time between rows, for example 0.05s; left out: the integrator's own steps"),
    )
    .addHelpText("after", examples.fly)
    .action((plan: string, options: PlanOptions) =>
      run(async () => {
        const { everyOf, modelOf, positiveOf, wholeOf } = await import("./values.js");
        const args = await together(
          () => ({ plan, ...flag("json", options.json), ...flag("csv", options.csv) }),
          () => given("model", options.model, modelOf),
          () => given("draw", options.draw, (text) => wholeOf("--draw", text, 0, 10_000_000)),
          () => given("seed", options.seed, (text) => wholeOf("--seed", text, 0, MOST_SEED)),
          () => given("delay", options.delay, (text) => positiveOf("--delay", text, "time", "10s")),
          () => given("every", options.every, everyOf),
        );
        return (await import("../commands/fly.js")).fly(args, io);
      }),
    );
}

function addCut(program: Command, run: (act: () => Promise<number>) => Promise<void>, io: Io): void {
  program
    .command("cut")
    .summary("settings that a tool makes of a delay element; a depth back to its delay")
    .description(
      "The settings that a tool makes of a delay element; with --before and --after, the delay that a depth leaves.",
    )
    .argument("<tool>", "the tool's file")
    .requiredOption("--longest <time>", "delay of the uncut element, for example 14s")
    .option("--most-removed <time>", "most that may be taken out, for example 8s")
    .option("--least-left <time>", "least that must be left, for example 2s")
    .option("--to <time>", "the delay that is wanted, for example 9s")
    .option("--before <depth>", "depth from the rim to the grain's face before any cut, for example 22.2mm")
    .option("--after <depth>", "the same depth now")
    .option("--depth-per-second <depth>", "depth of the motor's grain for one second; left out: the tool's")
    .addOption(jsonOption())
    .addHelpText("after", examples.cut)
    .action((tool: string, options: CutOptions) =>
      run(async () => {
        const { aboveZeroOf, positiveOf } = await import("./values.js");
        const time = (option: string, example: string) => (text: string) => positiveOf(option, text, "time", example);
        const depth = (option: string) => (text: string) => positiveOf(option, text, "length", "22.2mm");
        const args = await together(
          () => ({ tool, ...flag("json", options.json) }),
          () => ({ longest: aboveZeroOf("--longest", options.longest, "time", "14s") }),
          () => given("mostRemoved", options.mostRemoved, time("--most-removed", "8s")),
          () => given("leastLeft", options.leastLeft, time("--least-left", "2s")),
          () => given("to", options.to, time("--to", "9s")),
          () => given("before", options.before, depth("--before")),
          () => given("after", options.after, depth("--after")),
          () =>
            given("depthPerSecond", options.depthPerSecond, (text) =>
              aboveZeroOf("--depth-per-second", text, "length", '"1/32 in"'),
            ),
        );
        return (await import("../commands/cut.js")).cut(args, io);
      }),
    );
}

function addCheck(program: Command, run: (act: () => Promise<number>) => Promise<void>, io: Io): void {
  program
    .command("check")
    .summary("are these documents right?")
    .description("Reads documents of any kind, with all that they refer to, and tells every issue at once.")
    .argument("<file...>", "documents")
    .addOption(jsonOption())
    .addHelpText("after", examples.check)
    .action((files: string[], options: { readonly json?: boolean }) =>
      run(async () => (await import("../commands/check.js")).check({ files, ...flag("json", options.json) }, io)),
    );
}

function addApp(program: Command, run: (act: () => Promise<number>) => Promise<void>, io: Io): void {
  program
    .command("app")
    .summary("the bench in a browser, served on this machine")
    .description("Serves the bench app on this machine until it is interrupted. What it keeps stays in the browser.")
    .addOption(new Option("--port <n>", "port to serve it on; left out: 4860, or the next that is free"))
    .addHelpText("after", examples.app)
    .action((options: { readonly port?: string }) =>
      run(async () => {
        const { wholeOf } = await import("./values.js");
        const args = given("port", options.port, (text) => wholeOf("--port", text, 0, 65_535));
        return (await import("../commands/app.js")).app(args, io);
      }),
    );
}

/**
 * The whole command line: parses the words after the program's name and runs the command.
 *
 * @param words for example `["decide", "plan.json"]`
 * @param io the outside
 * @param version what `--version` says
 * @returns the exit code
 */
export async function runProgram(words: readonly string[], io: Io, version: string): Promise<number> {
  let code: number = EXIT.done;
  const run = async (act: () => Promise<number>): Promise<void> => {
    code = await act();
  };
  const program = new Command("delaywright");
  program
    .description(
      "Which ejection delay to cut for this rocket, this motor, this field, today, and how good the odds are.",
    )
    .version(version, "--version", "tell the version")
    .helpOption("--help", "tell how it is used")
    .helpCommand("help [command]", "tell how a command is used")
    .configureHelp({ helpWidth: 100 })
    .configureOutput({
      writeOut: io.out,
      writeErr: io.err,
      outputError: (text) => io.err(kindly(text)),
      getOutHelpWidth: () => 100,
      getErrHelpWidth: () => 100,
    })
    .exitOverride()
    .addHelpText("after", examples.all);
  for (const add of [
    addDecide,
    addFly,
    addShortlist,
    addCut,
    addWindow,
    addCharge,
    addPrep,
    addCard,
    addDebrief,
    addCheck,
    addApp,
  ])
    add(program, run, io);
  program.commands.forEach(refuseRepeats);
  try {
    await program.parseAsync(words, { from: "user" });
    return code;
  } catch (error) {
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.wrongInput;
    throw error;
  }
}

/** What commander has to say, in this project's manner, and where to read on. */
function kindly(text: string): string {
  const plain = text
    .replace(/^error: /, "")
    .replace(/\n\(Did you mean/g, " (did you mean")
    .trimEnd();
  return `${plain}\nTry: delaywright --help\n`;
}
