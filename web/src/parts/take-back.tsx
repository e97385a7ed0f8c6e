import "./take-back.css";
import { useCallback, useEffect, useState } from "react";
import { historyNow, redo, type Step, type UndoResult, undo } from "../store/index.js";
import { ConfirmDialog } from "./confirm-dialog.js";

const ASKED = "delaywright-take-back";

/** How long a word about what was undone stays [ms]. */
const WORD_STAYS = 6000;

function ask(what: "undo" | "redo"): void {
  dispatchEvent(new CustomEvent(ASKED, { detail: what }));
}

/** Takes the last change back; what must not go silently asks first. */
export function askUndo(): void {
  ask("undo");
}

/** Brings the change that was taken back again. */
export function askRedo(): void {
  ask("redo");
}

const refused: Readonly<Record<Extract<UndoResult, { ok: false }>["reason"], string>> = Object.freeze({
  nothing: "Nothing to undo",
  asks: "It needs your word first",
  "changed-elsewhere": "Not undone: the same field was changed since, here or in another tab",
  "reading-stays": "The reading stays on record: write a correction with its reason instead",
});

function wordsOf(what: "undo" | "redo", result: UndoResult): string {
  if (!result.ok) return refused[result.reason];
  return `${what === "undo" ? "Undone" : "Done again"}: ${result.step.label}`;
}

/** Carries out what `askUndo` and `askRedo` ask, and says what came of it. Stands once in the app. */
export function TakeBack() {
  const [word, setWord] = useState("");
  const [asking, setAsking] = useState<Step | null>(null);
  const take = useCallback((what: "undo" | "redo", confirmed: boolean) => {
    setWord(wordsOf(what, what === "undo" ? undo({ confirmed }) : redo()));
  }, []);
  useEffect(() => {
    const onAsked = (event: Event): void => {
      const what = (event as CustomEvent<"undo" | "redo">).detail;
      const step = historyNow()[what];
      if (step === null) setWord(what === "undo" ? "Nothing to undo" : "Nothing to do again");
      else if (what === "undo" && step.asks) setAsking(step);
      else take(what, false);
    };
    addEventListener(ASKED, onAsked);
    return () => removeEventListener(ASKED, onAsked);
  }, [take]);
  useEffect(() => {
    if (word === "") return;
    const timer = setTimeout(() => setWord(""), WORD_STAYS);
    return () => clearTimeout(timer);
  }, [word]);
  return (
    <>
      <div className={word === "" ? "take-back-word empty" : "take-back-word"} role="status">
        {word}
      </div>
      <ConfirmDialog
        isOpen={asking !== null}
        title="Take a reading back?"
        act="It was never read"
        back="Keep it"
        onAct={() => take("undo", true)}
        onClose={() => setAsking(null)}
      >
        <p>{asking?.label}.</p>
        <p>
          What is cut stays cut. Take the reading back only if it was never made. If it was read wrongly, record a
          correction with its reason instead: both then stay on record.
        </p>
      </ConfirmDialog>
    </>
  );
}
