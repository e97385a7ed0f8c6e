/** Most workers that are started, however many cores there are. */
const MOST_WORKERS = 4;

/** One desk, and flyers for the cores that are left. */
export interface Workers {
  readonly desk: Worker;
  readonly flyers: readonly Worker[];
}

let ahead: Workers | null = null;

function spawn(): Workers {
  const count = Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency || 2));
  return {
    desk: new Worker(new URL("./desk.worker.ts", import.meta.url), { type: "module" }),
    flyers: Array.from(
      { length: count - 1 },
      () => new Worker(new URL("./flyer.worker.ts", import.meta.url), { type: "module" }),
    ),
  };
}

/** Starts the workers of the first crew: they load and compile while the page still loads its own code. */
export function spawnAhead(): void {
  ahead ??= spawn();
}

/** Workers for a crew, one for each core up to four: those that were started ahead, or new ones. */
export function takeWorkers(): Workers {
  const workers = ahead ?? spawn();
  ahead = null;
  return workers;
}
