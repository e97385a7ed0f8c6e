import type { MissingFact } from "@delaywright/documents";
import { Fragment, type ReactNode } from "react";
import { Button } from "react-aria-components";
import { revealField } from "../../parts/index.js";
import { placeToFill } from "../../standing/place-of-field.js";
import type { PlanDocuments } from "../../standing/plan-documents.js";

interface ToFieldProps {
  /** Fields that say it, with the kind of their document: `rocket: bay.friction`. */
  readonly named: readonly string[];
  readonly documents: PlanDocuments;
  readonly children: ReactNode;
}

/** Leads to the field where a thing is said; plain words where nothing is typed for it. */
export function ToField({ named, documents, children }: ToFieldProps) {
  const place = placeToFill(named, documents);
  if (place === null) return children;
  return (
    <Button className="plan-link" onPress={() => revealField(place.path, place.field)}>
      {children}
    </Button>
  );
}

/** Facts that are not known, each leading to where it is said, within a line. */
export function FactLinks({
  facts,
  documents,
}: {
  readonly facts: readonly MissingFact[];
  readonly documents: PlanDocuments;
}) {
  return facts.map(({ name, words, fields }, index) => (
    <Fragment key={name}>
      {index > 0 && ", "}
      <ToField named={fields} documents={documents}>
        {words}
      </ToField>
    </Fragment>
  ));
}
