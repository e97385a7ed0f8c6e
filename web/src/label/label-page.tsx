import "./label.css";
import type { Raw } from "@delaywright/documents";
import { useState } from "react";
import { Button } from "react-aria-components";
import { flushSync } from "react-dom";
import { addressOf } from "../app/router.js";
import { PageTop } from "../chrome/page-top.js";
import { type Entry, useEntries, useEntry } from "../store/index.js";
import { labelText, labelWords } from "./label-data.js";
import { LabelSheet } from "./label-sheet.js";
import { bytesOf, codePath, MOST_BYTES } from "./qr.js";

function rawAt(value: unknown, entries: readonly Entry[]): Raw | null {
  if (typeof value === "object" && value !== null && !Array.isArray(value)) return value as Raw;
  return entries.find((entry) => entry.path === value)?.raw ?? null;
}

/** The tool of a plan that flies this motor: its depth per second counts where the motor names none. */
function toolOf(path: string, entries: readonly Entry[]): Raw | null {
  const plan = entries.find(({ kind, raw }) => kind === "plan" && raw?.["motor"] === path);
  return rawAt(plan?.raw?.["tool"], entries);
}

/** The label for the bag of a motor in hand, to be printed. */
export function LabelPage({ path }: { readonly path: string }) {
  const entry = useEntry(path);
  const entries = useEntries();
  const back = { href: addressOf({ page: "document", shelf: "hands", path }), word: entry?.name ?? "Motors in hand" };
  if (entry?.raw == null || entry.kind !== "motor-in-hand")
    return (
      <div className="page">
        <PageTop title="There is no such motor in hand" back={{ href: addressOf({ page: "bench" }), word: "Bench" }} />
        <main id="main" className="page-panel" tabIndex={-1}>
          <p>A label belongs to one motor in hand. It may have been deleted; undo brings back what was just deleted.</p>
        </main>
      </div>
    );
  const words = labelWords(entry.raw, rawAt(entry.raw["type"], entries), toolOf(path, entries));
  const text = labelText(entry.raw);
  return (
    <div className="page label-page">
      <PageTop title="Label for the bag" back={back} aside={entry.name} />
      <main id="main" className="label-main" tabIndex={-1}>
        <Printing words={words} text={text} />
      </main>
    </div>
  );
}

interface PrintingProps {
  readonly words: ReturnType<typeof labelWords>;
  readonly text: string;
}

function Printing({ words, text }: PrintingProps) {
  const [paper, setPaper] = useState<"label" | "sheet">("label");
  const code = codePath(text);
  const printOn = (chosen: "label" | "sheet") => {
    flushSync(() => setPaper(chosen));
    print();
  };
  return (
    <>
      <LabelSheet words={words} code={code} paper={paper} />
      <div className="label-acts">
        <Button className="next-act" onPress={() => printOn("label")}>
          Print on a label of 62 by 40 mm
        </Button>
        <Button className="act" onPress={() => printOn("sheet")}>
          Print on a sheet
        </Button>
      </div>
      {code === null ? (
        <p className="caution">
          <b>The label has no code.</b>A label's code holds {MOST_BYTES} bytes, and what it would say takes{" "}
          {bytesOf(text)}. Shorten the motor's name, label or lot, or put its type into the library.
        </p>
      ) : (
        <>
          <p className="second">
            The code holds this motor's name, type, label, lot and the state of its cut as text. On another device, read
            it with the camera and paste the text on the Import page; the motor type comes by an export.
          </p>
          <details>
            <summary>What the code says</summary>
            <p className="label-text">{text}</p>
          </details>
        </>
      )}
    </>
  );
}
