import { More, PickField, Section, SwitchRow } from "../parts/index.js";
import { useEntries } from "../store/index.js";
import {
  canopyShapes,
  finFields,
  guideFields,
  labelFields,
  moreLabelFields,
  noseShapes,
  rocketFields,
  type TypedField as Typed,
} from "./desk-form.js";
import { TypedField } from "./typed-field.js";
import type { Desk } from "./use-desk.js";

/** A card as it is typed off, in the order in which cards say it. */
export function TypedCard({ desk }: { readonly desk: Desk }) {
  const motors = useEntries("motor");
  const fields = (list: readonly Typed[]) => list.map((each) => <Line key={each.field} desk={desk} {...each} />);
  const needs = (list: readonly Typed[]) => {
    const count = desk.issues.filter(({ path, code }) => {
      return code === "missing" && list.some(({ field }) => field === path);
    }).length;
    return count === 0 ? undefined : `${count} needed`;
  };
  return (
    <>
      <Section title="The rocket" part>
        <div className="form">
          {fields(rocketFields)}
          <More title="Shape, as measured" aside="instead of a stated CP" call={needs(finFields)}>
            {fields(finFields)}
            <Shape desk={desk} field="noseShape" label="Nose" shapes={noseShapes} leftOut="ogive" />
            {fields([{ field: "noseLength", label: "Length of the nose", leftOut: "four diameters" }])}
          </More>
        </div>
      </Section>
      <Section title="Its motor and delay" part>
        <div className="form">
          <PickField
            label="Motor"
            items={[
              { id: "", word: "as its label says" },
              ...motors.map(({ path, name }) => ({ id: path, word: name })),
            ]}
            chosen={desk.motor}
            aside={desk.motorWrong ? "this motor cannot be read: mend it in the library" : undefined}
            onChoose={desk.setMotor}
          />
          {desk.motor === "" && (
            <>
              {fields(labelFields)}
              <More title="More of the label" aside="masses, size">
                {fields(moreLabelFields)}
              </More>
            </>
          )}
          {fields([{ field: "delay", label: "Delay as set" }])}
          <SwitchRow
            label="Electronics opens it at the top"
            hint="The motor's charge then stands behind."
            on={desk.electronics}
            onTurn={desk.setElectronics}
          />
        </div>
      </Section>
      <Section title="Its parachute and the guide" part>
        <div className="form">
          {fields([{ field: "canopy", label: "Parachute, diameter" }])}
          <Shape desk={desk} field="canopyShape" label="Parachute" shapes={canopyShapes} leftOut="flat circular" />
          {fields(guideFields)}
        </div>
      </Section>
    </>
  );
}

function Line({ desk, ...each }: Typed & { readonly desk: Desk }) {
  return (
    <TypedField
      {...each}
      value={desk.typed[each.field] ?? ""}
      issue={desk.issues.find(({ path }) => path === each.field)}
      onType={(text) => desk.type(each.field, text)}
    />
  );
}

interface ShapeProps {
  readonly desk: Desk;
  readonly field: "noseShape" | "canopyShape";
  readonly label: string;
  readonly shapes: readonly string[];
  readonly leftOut: string;
}

function Shape({ desk, field, label, shapes, leftOut }: ShapeProps) {
  return (
    <PickField
      label={`${label}, shape`}
      items={[{ id: "", word: `not said: ${leftOut}` }, ...shapes.map((id) => ({ id, word: id }))]}
      chosen={desk.typed[field] ?? ""}
      onChoose={(id) => desk.type(field, id)}
    />
  );
}
