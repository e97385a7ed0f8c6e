import "./forms.css";
import { DocumentScope } from "../parts/index.js";
import type { FormProps } from "./form.js";
import { FormParts } from "./form-parts.js";
import { headParts } from "./head-parts.js";
import type { FormPart } from "./model.js";
import { rocketParts } from "./rocket-parts.js";

const packing: readonly string[] = ["Recovery", "Bay", "Sections as they land"];
const folded = rocketParts.filter(({ part }) => part === "more");
const isPacking = (part: FormPart): boolean => part.part === "more" && packing.includes(part.label);

const measuredParts = rocketParts.filter(({ part }) => part !== "more");
const shapeParts = [...folded.filter((part) => !isPacking(part)), ...headParts];
const packingParts = folded.filter(isPacking);

function Piece({ path, within = "", issues, doubts, parts }: FormProps & { readonly parts: readonly FormPart[] }) {
  return (
    <DocumentScope path={path} issues={issues} doubts={doubts}>
      <div className="form">
        <FormParts path={path} base={within} parts={parts} />
      </div>
    </DocumentScope>
  );
}

/** What is measured first of a rocket: masses, balance, diameter, length. */
export function RocketMeasuredForm(props: FormProps) {
  return <Piece {...props} parts={measuredParts} />;
}

/** The rest of a rocket, without what is packed into it. */
export function RocketShapeForm(props: FormProps) {
  return <Piece {...props} parts={shapeParts} />;
}

/** What is packed into a rocket: recovery, bay, sections. */
export function RocketPackingForm(props: FormProps) {
  return <Piece {...props} parts={packingParts} />;
}
