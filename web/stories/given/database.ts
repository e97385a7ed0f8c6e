import type { Page } from "@playwright/test";

/** Puts rows into the app's database past the app, as only a defect or a damaged disk would. */
export function putDocuments(page: Page, rows: readonly unknown[]): Promise<void> {
  return page.evaluate(
    (given) =>
      new Promise<void>((resolve, reject) => {
        const request = indexedDB.open("delaywright");
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const writing = request.result.transaction("documents", "readwrite");
          for (const row of given) writing.objectStore("documents").put(row);
          writing.onabort = () => reject(writing.error);
          writing.oncomplete = () => {
            request.result.close();
            resolve();
          };
        };
      }),
    rows,
  );
}

/** All documents of the app's database, as they lie there. */
export function keptDocuments(page: Page): Promise<readonly unknown[]> {
  return page.evaluate(
    () =>
      new Promise<unknown[]>((resolve, reject) => {
        const request = indexedDB.open("delaywright");
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const reading = request.result.transaction("documents").objectStore("documents").getAll();
          reading.onerror = () => reject(reading.error);
          reading.onsuccess = () => {
            request.result.close();
            resolve(reading.result);
          };
        };
      }),
  );
}

/** What can happen to a write of a document. */
type Fault = "none" | "quota" | "abort";

/** Makes every write of a document go wrong, or right again. */
export async function writesGo(page: Page, fault: Fault): Promise<void> {
  await page.evaluate((wanted) => {
    const prototype = IDBObjectStore.prototype as IDBObjectStore & { whole?: IDBObjectStore["put"] };
    prototype.whole ??= prototype.put;
    const whole = prototype.whole;
    prototype.put = function (this: IDBObjectStore, ...given: Parameters<IDBObjectStore["put"]>) {
      if (wanted === "none" || this.name !== "documents") return whole.apply(this, given);
      if (wanted === "quota") throw new DOMException("the device is full", "QuotaExceededError");
      const request = whole.apply(this, given);
      this.transaction.abort();
      return request;
    };
  }, fault);
}
