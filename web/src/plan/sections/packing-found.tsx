import type { PackingPart } from "@delaywright/documents";
import type { ReactNode } from "react";
import { Verdict } from "../../parts/index.js";
import type { PlanDocuments } from "../../standing/plan-documents.js";
import { ToField } from "./to-field.js";

interface PackingFoundProps {
  readonly part: PackingPart;
  readonly documents: PlanDocuments;
  /** Between the heading and what was found. */
  readonly before?: ReactNode;
  readonly children?: ReactNode;
}

/** One thing about the packing: what was found, what is left out of it, and what would have to be known. */
export function PackingFound({ part, documents, before, children }: PackingFoundProps) {
  const { title, stop, sentences, caveats, gaps } = part;
  return (
    <>
      <h3 className="sheet-part">{title}</h3>
      {before}
      {stop !== null && (
        <p className="sheet-line">
          <Verdict word="stop" /> <b>{stop}</b>
        </p>
      )}
      {sentences.length + gaps.length > 0 && (
        <ul className="sheet-lines">
          {sentences.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
          {gaps.map(({ words, field }) => (
            <li key={words} className="sheet-gap">
              <ToField named={[field]} documents={documents}>
                {words} <u>Enter it</u>
              </ToField>
            </li>
          ))}
        </ul>
      )}
      {caveats.length > 0 && <p className="quiet sheet-line">{caveats.join(" ")}</p>}
      {children}
    </>
  );
}
