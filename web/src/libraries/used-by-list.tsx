import { addressOf } from "../app/router.js";
import { addressOfDocument, wordOfKind } from "../parts/index.js";
import type { Entry } from "../store/index.js";

/** What uses a document. */
export function UsedBy({ users }: { readonly users: readonly Entry[] }) {
  return (
    <section className="page-panel">
      <h2>Used by</h2>
      {users.length === 0 && <p className="quiet">No plan uses it yet. Choose it in a plan's sheet.</p>}
      <ul className="document-users">
        {users.map(({ path, name, kind }) => (
          <li key={path}>
            <a href={(kind && addressOfDocument(kind, path)) ?? addressOf({ page: "bench" })}>{name}</a>
            <span className="quiet">{kind === null ? "" : wordOfKind(kind)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
