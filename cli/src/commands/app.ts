import { EXIT, type Io } from "../io/io.js";

/** Where the bench is served unless a port is asked for. */
const USUAL_PORT = 4860;

/** What `delaywright app` was asked. */
export interface AppArgs {
  /** 0 takes any that is free; left out: the usual one, or the next that is free. */
  readonly port?: number;
}

/** Serves the bench app on this machine until it is interrupted. */
export async function app({ port }: AppArgs, io: Io): Promise<number> {
  const served = await io.serveApp(port ?? USUAL_PORT, port !== undefined);
  if (!served.ok) {
    io.err(
      served.reason === "not-built"
        ? "The bench app is not here: in a checkout run npm ci, then npm run build.\n"
        : `No port is free for the bench app (${served.reason}). Ask for one: delaywright app --port 5000\n`,
    );
    return EXIT.wrongInput;
  }
  io.out(`\nThe bench: http://127.0.0.1:${served.port}/\nIt runs on this machine alone. Ctrl+C ends it.\n`);
  await served.ended;
  return EXIT.done;
}
