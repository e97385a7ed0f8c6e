import "./error-screen.css";
import { exportBench } from "../exchange/export-bench.js";
import { dayOf } from "../standing/day.js";

function wordsOf(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error);
  return text.slice(0, 300);
}

/** What stands in the place of the app where it met a defect of its own: the documents come first. */
export function ErrorScreen({ error }: { readonly error: unknown }) {
  return (
    <main className="error-screen">
      <h1>The bench met a defect of its own</h1>
      <p>
        Your documents were kept as they are: each change was saved as it was made. Export them first, then load the
        page again.
      </p>
      <p className="error-screen-acts">
        <button type="button" className="next-act" onClick={() => void exportBench(dayOf(new Date()))}>
          Export everything
        </button>
        <button type="button" className="act" onClick={() => location.reload()}>
          Load the page again
        </button>
        <button
          type="button"
          className="act"
          onClick={() => {
            location.hash = "#/";
            location.reload();
          }}
        >
          To the bench
        </button>
      </p>
      <details>
        <summary>What happened</summary>
        <p className="error-screen-words">{wordsOf(error)}</p>
      </details>
    </main>
  );
}
