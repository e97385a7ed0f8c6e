/** Most workers that are started, however many cores there are. */
const MOST_WORKERS = 4;

let ahead: Worker[] | null = null;

function spawn(): Worker[] {
  const count = Math.max(1, Math.min(MOST_WORKERS, navigator.hardwareConcurrency || 2));
  return Array.from(
    { length: count },
    () => new Worker(new URL("./engine.worker.ts", import.meta.url), { type: "module" }),
  );
}

/** Starts the workers of the first crew: they load and compile while the page still loads its own code. */
export function spawnAhead(): void {
  ahead ??= spawn();
}

/** Workers for a crew, one for each core up to four: those that were started ahead, or new ones. */
export function takeWorkers(): Worker[] {
  const workers = ahead ?? spawn();
  ahead = null;
  return workers;
}
