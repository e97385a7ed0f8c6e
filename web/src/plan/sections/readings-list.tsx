import type { Reading } from "@delaywright/documents";
import { readingPieces } from "./reading-words.js";

/** Every reading of a motor in hand, oldest first; none is ever taken away. */
export function ReadingsList({ readings }: { readonly readings: readonly Reading[] }) {
  if (readings.length === 0) return null;
  return (
    <table className="sheet-readings">
      <caption className="quiet">Readings, as they were recorded</caption>
      <thead>
        <tr>
          <th scope="col">when</th>
          <th scope="col">before</th>
          <th scope="col">after</th>
          <th scope="col">with</th>
        </tr>
      </thead>
      <tbody>
        {readings.map((reading) => (
          <tr key={`${reading.when} ${reading.before ?? ""} ${reading.after ?? ""} ${reading.note ?? ""}`}>
            <td>{reading.when.replace("T", " ").slice(0, 16)}</td>
            <td>{reading.before ?? ""}</td>
            <td>{reading.after ?? ""}</td>
            <td>
              {readingPieces(reading)}
              {reading.note !== undefined && <small>Note: {reading.note}</small>}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
