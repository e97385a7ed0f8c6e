import { addressOf, type Shelf, shelves } from "../app/router.js";
import { shelfOf, shelfTitles } from "../chrome/shelf-titles.js";
import { ExportAct } from "../exchange/export-act.js";
import { useUpdate } from "../offline/update.js";
import { type Entry, usePersistence, useSettings } from "../store/index.js";
import { exportedWords, promiseWords } from "./back-up-words.js";
import { WipeAct } from "./wipe-act.js";

interface SideProps {
  readonly entries: readonly Entry[];
  readonly now: Date;
}

/** Beside the plans: the libraries, and how all of it is kept. */
export function Side({ entries, now }: SideProps) {
  const [{ lastExport }] = useSettings();
  const persistence = usePersistence();
  const { offlineReady } = useUpdate();
  const counts = new Map<Shelf, number>();
  for (const entry of entries) {
    const shelf = shelfOf(entry);
    if (shelf !== null) counts.set(shelf, (counts.get(shelf) ?? 0) + 1);
  }
  return (
    <aside className="bench-side" aria-label="Libraries and back-up">
      <section>
        <h2>Libraries</h2>
        <ul>
          {shelves
            .filter((shelf) => shelf !== "others" || counts.has(shelf))
            .map((shelf) => (
              <li key={shelf}>
                <a href={addressOf({ page: "shelf", shelf })}>
                  {shelfTitles[shelf]} <span>{counts.get(shelf) ?? "none"}</span>
                </a>
              </li>
            ))}
        </ul>
      </section>
      <section>
        <h2>Back-up</h2>
        <p className="quiet">{exportedWords(lastExport, now.getTime())}</p>
        <p className="quiet">Clearing the browser's data would clear the bench.</p>
        <p className="quiet">{promiseWords(persistence)}</p>
        {offlineReady && <p className="quiet">The app is kept too: it opens without a network.</p>}
        <div className="bench-side-acts">
          <ExportAct />
          <a className="act" href={addressOf({ page: "import" })}>
            Import
          </a>
          {entries.length > 0 && <WipeAct count={entries.length} exported={exportedWords(lastExport, now.getTime())} />}
        </div>
      </section>
    </aside>
  );
}
