/** A database as an earlier version of the app left it. */
export interface SavedDatabase {
  readonly name: string;
  /** Of the browser's database: ten times that of the app. */
  readonly version: number;
  readonly stores: readonly {
    readonly name: string;
    readonly keyPath: string;
    readonly rows: readonly unknown[];
  }[];
}

/**
 * Puts a saved database into the browser. Stands by itself, so that it can be handed to a page as it is.
 *
 * @param saved what was saved
 * @param name another name than it had
 */
export function restoreDatabase({ saved, name = saved.name }: { saved: SavedDatabase; name?: string }): Promise<void> {
  /** Bytes stand in a saved database as texts. */
  const alive = (row: unknown): unknown => {
    const gzip = (row as { readonly gzip?: { readonly base64: string } }).gzip;
    if (gzip === undefined) return row;
    return { ...(row as object), gzip: Uint8Array.from(atob(gzip.base64), (char) => char.charCodeAt(0)) };
  };
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(name, saved.version);
    const fail = () => reject(request.error ?? request.transaction?.error ?? new Error("blocked"));
    request.onerror = fail;
    request.onblocked = fail;
    request.onupgradeneeded = () => {
      for (const { name: store, keyPath, rows } of saved.stores) {
        const made = request.result.createObjectStore(store, { keyPath });
        for (const row of rows) made.put(alive(row));
      }
    };
    request.onsuccess = () => {
      request.result.close();
      resolve();
    };
  });
}
