import { addressOf } from "../app/router.js";
import type { Entry } from "../store/index.js";
import { CardMenu } from "./card-menu.js";

interface UnreadableCardProps {
  readonly entry: Entry;
  readonly say: (word: string) => void;
}

/** A plan that cannot be read at all. */
export function UnreadableCard({ entry, say }: UnreadableCardProps) {
  const newer = entry.unreadable === "newer-record";
  return (
    <article className="bench-card broken" aria-label={entry.name}>
      <h2>
        <span>{entry.name}</span>
        <small>cannot be read</small>
      </h2>
      <p className="bench-made">All other plans are whole.</p>
      <p className="bench-lead">{newer ? "It is of a newer version" : "Its text is damaged"}</p>
      <p className="bench-why">
        {newer
          ? "Load the page again once the app was renewed; until then it stays as it is."
          : "It can be mended as text."}
      </p>
      <p className="bench-why">The plan is kept as it is; nothing was thrown away.</p>
      <div className="bench-do">
        <a className="act" href={addressOf({ page: "document", shelf: "others", path: entry.path })}>
          {newer ? "Next: look at it" : "Next: mend it"}
          <span className="hidden">, {entry.name}</span>
        </a>
        <CardMenu entry={entry} say={say} />
      </div>
    </article>
  );
}
