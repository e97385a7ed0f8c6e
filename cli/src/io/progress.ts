import type { Progress } from "./io.js";

const silent: Progress = { update: () => {}, end: () => {} };

/** Runs shorter than this show nothing [ms]. */
const PATIENCE = 400;

/** A line that fills on standard error, where that is a terminal; nothing elsewhere. */
export function terminalProgress(stream: NodeJS.WriteStream): Progress {
  if (!stream.isTTY) return silent;
  const start = Date.now();
  let bar: { update(done: number): void; setTotal(total: number): void; stop(): void } | undefined;
  let asked = false;
  let ended = false;
  const open = async (total: number, what: string): Promise<void> => {
    const { SingleBar } = (await import("cli-progress")).default;
    if (ended) return;
    const made = new SingleBar({
      stream,
      format: `{bar} {value} of {total} ${what}`,
      barCompleteChar: "#",
      barIncompleteChar: "-",
      barsize: 40,
      hideCursor: false,
      clearOnComplete: true,
    });
    made.start(total, 0);
    bar = made;
  };
  return {
    update(done, total, what = "flights") {
      if (ended || Date.now() - start < PATIENCE) return;
      if (!asked) void open(total, what);
      asked = true;
      bar?.setTotal(total);
      bar?.update(done);
    },
    end() {
      ended = true;
      bar?.stop();
    },
  };
}
