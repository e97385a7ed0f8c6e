import { DocumentScope } from "../parts/index.js";
import { DocumentForm, type FormProps } from "./form.js";
import { FormParts } from "./form-parts.js";
import type { FormPart } from "./model.js";
import { rocketParts } from "./rocket-parts.js";

const packing: readonly string[] = ["Recovery", "Bay"];
const isPacking = (part: FormPart): boolean => part.part === "more" && packing.includes(part.label);
const packingParts = rocketParts.filter(isPacking);
const bodyParts = rocketParts.filter((part) => !isPacking(part));

/** A rocket without what is packed into it, for a page that shows that elsewhere. */
export function RocketBodyForm(props: FormProps) {
  return <DocumentForm {...props} parts={bodyParts} />;
}

/** What is packed into a rocket: recovery and bay. */
export function RocketPackingForm({ path, within = "", issues, doubts }: FormProps) {
  return (
    <DocumentScope path={path} issues={issues} doubts={doubts}>
      <div className="form">
        <FormParts path={path} base={within} parts={packingParts} />
      </div>
    </DocumentScope>
  );
}
