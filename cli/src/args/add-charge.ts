import type { Command } from "commander";
import type { Io } from "../io/io.js";
import { examples } from "./help.js";
import { flag, given, jsonOption } from "./options.js";

/** Adds `delaywright charge ROCKET`. */
export function addCharge(program: Command, run: (act: () => Promise<number>) => Promise<void>, io: Io): void {
  program
    .command("charge")
    .summary("ejection charge, shear pins, static ports")
    .description("The ejection charge that a rocket's bay needs, what its shear pins bear, and its static ports.")
    .argument("<rocket>", "the rocket's file")
    .option("--motor <file>", "a motor or a motor in hand, whose own charge is held against it")
    .addOption(jsonOption())
    .addHelpText("after", examples.charge)
    .action((rocket: string, options: { readonly motor?: string; readonly json?: boolean }) =>
      run(async () => {
        const args = { rocket, ...given("motor", options.motor, String), ...flag("json", options.json) };
        return (await import("../commands/charge.js")).charge(args, io);
      }),
    );
}
