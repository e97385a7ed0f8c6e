import "./chrome.css";
import type { ReactNode } from "react";
import { Button } from "react-aria-components";
import { askUndo } from "../parts/index.js";
import { useStepLabel } from "../store/index.js";
import { SavingLine } from "./saving-line.js";

/** Takes the last change back, for who has no keyboard; it is there once something can be taken back. */
export function UndoButton() {
  const undo = useStepLabel("undo");
  if (undo === undefined) return null;
  return (
    <Button className="act" onPress={askUndo} aria-label={`Undo: ${undo}`}>
      Undo
    </Button>
  );
}

interface PageTopProps {
  readonly title: string;
  /** Where one comes from. */
  readonly back: { readonly href: string; readonly word: string };
  readonly aside?: ReactNode;
  /** At its end. */
  readonly children?: ReactNode;
}

/** The head of a page: the way back, what it is, and what can be done with it. */
export function PageTop({ title, back, aside, children }: PageTopProps) {
  return (
    <header className="page-top">
      <a className="page-back" href={back.href}>
        {back.word}
      </a>
      <div className="page-head">
        <h1>{title}</h1>
        {aside !== undefined && <p>{aside}</p>}
        <SavingLine />
        <span className="page-push" />
        <span className="page-acts">
          <UndoButton />
          {children}
        </span>
      </div>
    </header>
  );
}
