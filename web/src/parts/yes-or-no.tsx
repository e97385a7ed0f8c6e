import { Alternatives } from "./choice-field.js";
import { fieldId } from "./field-id.js";
import type { FieldProps } from "./field-props.js";
import { useField } from "./use-field.js";

const items = [
  { id: "not said", label: "not said" },
  { id: "yes", label: "yes" },
  { id: "no", label: "no" },
];

/** Yes, no, or not said: where what is not said is not known. */
export function YesOrNo({ path, field, label, hint, along }: FieldProps) {
  const { value, send, clear } = useField(path, field, label, along);
  const chosen = value === true ? "yes" : value === false ? "no" : "not said";
  return (
    <>
      <Alternatives
        id={fieldId(path, field)}
        label={label}
        items={items}
        chosen={chosen}
        onChoose={(id) => (id === "not said" ? clear() : send(id === "yes"))}
      />
      {hint !== undefined && <p className="field-notes">{hint}</p>}
    </>
  );
}
