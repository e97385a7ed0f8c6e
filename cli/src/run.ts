import { runProgram } from "./args/program.js";
import { UsageError } from "./args/usage.js";
import { EXIT, type Io } from "./io/io.js";

/** How the process was started, beside its words. */
export interface Start {
  readonly version: string;
  /** Show where a defect happened. */
  readonly debug: boolean;
}

/** Runs a command and turns whatever goes wrong into a line and an exit code. */
export async function run(words: readonly string[], io: Io, { version, debug }: Start): Promise<number> {
  try {
    return await runProgram(words, io, version);
  } catch (error) {
    io.progress.end();
    if (error instanceof UsageError) {
      io.err(`${error.message}\n`);
      return EXIT.wrongInput;
    }
    const inputIssues = engineIssues(error);
    if (inputIssues !== undefined) {
      io.err(inputIssues);
      return EXIT.wrongInput;
    }
    const word = error instanceof Error ? error.message : String(error);
    io.err(
      `A defect in delaywright, not in your documents: ${firstLine(word)}. Please report it with the plan that shows it.\n`,
    );
    if (debug && error instanceof Error) io.err(`${error.stack ?? ""}\n`);
    return EXIT.defect;
  }
}

function firstLine(text: string): string {
  return (text.split("\n")[0] ?? "").slice(0, 200);
}

/** What the engine refuses; known by its name, so that nothing but the engine's own bundle needs the engine. */
function engineIssues(error: unknown): string | undefined {
  if (!(error instanceof Error) || error.name !== "InputError") return undefined;
  return `${error.message}\n`;
}
