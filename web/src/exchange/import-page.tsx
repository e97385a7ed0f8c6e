import "./import-page.css";
import { useState } from "react";
import { Button, Label, TextArea, TextField } from "react-aria-components";
import { addressOf } from "../app/router.js";
import { PageTop } from "../chrome/page-top.js";
import { FileDrop } from "../parts/index.js";
import { importFilesIn, importText, useImport } from "./import-box.js";
import { ImportReportView } from "./import-report.js";

/** Takes documents in: from files, dropped or chosen, or from a pasted text. */
export function ImportPage() {
  const state = useImport();
  const [pasted, setPasted] = useState("");
  return (
    <div className="page">
      <PageTop title="Import" back={{ href: addressOf({ page: "bench" }), word: "Bench" }} />
      <main id="main" tabIndex={-1} className="import">
        <section className="page-panel">
          <h2>From files</h2>
          <p className="second">
            Single documents, a whole back-up, or a thrust curve as CSV with a time and a thrust column. What is on the
            bench already stays as it is. An altimeter's log is taken in at the Debrief of its plan.
          </p>
          <FileDrop
            label="Choose files"
            hint="or drop them here"
            multiple
            onFiles={(files) => void importFilesIn(files)}
          />
        </section>
        <section className="page-panel">
          <h2>From text</h2>
          <TextField className="import-text" value={pasted} onChange={setPasted} autoComplete="off">
            <Label>What the code on a bag's label says, or any document as text</Label>
            <TextArea className="import-area" spellCheck={false} rows={5} />
          </TextField>
          <Button
            className="act"
            isDisabled={pasted.trim() === ""}
            onPress={async () => {
              if (await importText(pasted)) setPasted("");
            }}
          >
            Take this text in
          </Button>
        </section>
        <ImportReportView state={state} />
      </main>
    </div>
  );
}
