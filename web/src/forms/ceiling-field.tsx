import type { Raw } from "@delaywright/documents";
import { isKeyed, joinField, valueAt, withValue } from "../parts/field-path.js";
import { Alternatives, QuantityField } from "../parts/index.js";
import { changeDocuments, useEntry } from "../store/index.js";

export interface CeilingFieldProps {
  readonly path: string;
  readonly base: string;
}

/** How high one may fly, above the ground or above the sea. */
export function CeilingField({ path, base }: CeilingFieldProps) {
  const entry = useEntry(path);
  const at = joinField(base, "ceiling");
  const ceiling = valueAt(entry?.raw, at);
  const height = isKeyed(ceiling) ? ceiling["height"] : ceiling;
  const above = isKeyed(ceiling) && ceiling["above"] === "sea level" ? "sea level" : "ground";
  const choose = (next: string) => {
    if (next === above || entry === undefined) return;
    const tall = height === undefined ? {} : { height };
    const made = next === "ground" ? height : { ...tall, above: next };
    changeDocuments("Ceiling counts from", [{ path, raw: withValue(entry.raw ?? {}, at, made) as Raw }]);
  };
  return (
    <>
      <QuantityField
        path={path}
        field={isKeyed(ceiling) ? joinField(at, "height") : at}
        label="Ceiling"
        aside={above === "ground" ? "above ground" : "above sea"}
      />
      {ceiling !== undefined && (
        <Alternatives
          label="The ceiling counts from"
          items={[
            { id: "ground", label: "the ground" },
            { id: "sea level", label: "sea level" },
          ]}
          chosen={above}
          onChoose={choose}
        />
      )}
    </>
  );
}
