import type { Raw } from "@delaywright/documents";
import { addressOf } from "../app/router.js";
import { momentWords } from "../standing/day.js";

function text(value: unknown): string {
  return typeof value === "string" && value !== "" ? value : "–";
}

/** What was read on a motor in hand, oldest first. Readings are recorded in a plan's Cut section. */
export function Readings({ raw, path }: { readonly raw: Raw; readonly path: string }) {
  const { readings } = raw;
  const rows = Array.isArray(readings) ? (readings as readonly (Readonly<Record<string, unknown>> | null)[]) : [];
  return (
    <section className="page-panel">
      <h2>Readings of its cut</h2>
      {rows.length === 0 ? (
        <p className="quiet">None yet. They are recorded in the Cut section of a plan that uses this motor.</p>
      ) : (
        <table className="document-readings">
          <thead>
            <tr>
              <th scope="col">When</th>
              <th scope="col">Before</th>
              <th scope="col">After</th>
              <th scope="col">End, note</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((reading, index) => (
              <tr key={index.toString()}>
                <td>{momentWords(text(reading?.["when"]))}</td>
                <td>{text(reading?.["before"])}</td>
                <td>{text(reading?.["after"])}</td>
                <td>{[reading?.["end"], reading?.["note"]].filter((each) => typeof each === "string").join("; ")}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      <p className="quiet">
        A cut never becomes shallower. A wrong reading stays, and a correction with its reason comes after it.{" "}
        <a href={addressOf({ page: "label", path })}>Print the label</a>
      </p>
    </section>
  );
}
