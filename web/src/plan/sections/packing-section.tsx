import { amountIn, delayWords, descentSentence, strengthSentence } from "@delaywright/documents";
import type { ReactNode } from "react";
import type { Told } from "../../compute/index.js";
import { RocketPackingForm } from "../../forms/rocket-halves.js";
import { Fold } from "../../parts/index.js";
import type { PartOfPlan } from "../../standing/plan-documents.js";
import { Caution } from "./caution.js";
import type { SectionProps } from "./section-props.js";

/** What is packed, and how it opens and lands. */
export function PackingSection({ documents, answer, state, units }: SectionProps) {
  const { rocket } = documents;
  const { told, issues } = answer;
  return (
    <Fold id={state.id} title={state.title} aside={state.aside} mark={state.mark}>
      <Caution topics={["charge", "retention"]} />
      {told !== null && <Facts told={told} rocket={rocket} units={units} />}
      {told?.data.opened != null && (
        <p className="second sheet-line print-only">{descentSentence(told.data.opened, units)}</p>
      )}
      {told !== null && <p className="quiet sheet-line">{strengthSentence(told.data, units)}</p>}
      {rocket !== null && (
        <RocketPackingForm path={rocket.path} within={rocket.within} issues={issues} doubts={told?.data.doubts} />
      )}
    </Fold>
  );
}

interface FactsProps {
  readonly told: Told;
  readonly rocket: PartOfPlan | null;
  readonly units: SectionProps["units"];
}

function Facts({ told, rocket, units }: FactsProps) {
  const { opened, choice, toCut } = told.data;
  if (opened === null) return <p className="sheet-line">Nothing opens in the expected flight.</p>;
  const delay = choice?.setting.delay ?? toCut?.delay;
  const { openings, landing } = opened;
  const harness = harnessOf(rocket);
  return (
    <table className="sheet-facts">
      <caption className="quiet">
        The expected flight{delay === undefined ? "" : `, opened at ${delayWords(delay)}`}
      </caption>
      <tbody>
        {openings.map(({ which, height, airspeed, fill }) => (
          <Fact
            key={which}
            name={which === "main" ? "Main opens" : "Drogue opens"}
            note={`full after ${amountIn(fill, "time", units)}`}
          >
            {amountIn(height, "distance", units)}, {amountIn(airspeed, "speed", units)}
          </Fact>
        ))}
        {landing !== null && (
          <>
            <Fact name="Lands at" note="downward">
              {amountIn(landing.descentSpeed, "speed", units)}
            </Fact>
            <Fact name="Over ground" note="with the wind">
              {amountIn(landing.groundSpeed, "speed", units)}
            </Fact>
            <Fact name="Energy" note="at landing">
              {amountIn(landing.energy, "energy", units)}
            </Fact>
          </>
        )}
        {harness !== null && (
          <Fact name="Harness" note={harness.note}>
            {harness.length}
          </Fact>
        )}
      </tbody>
    </table>
  );
}

interface FactProps {
  readonly name: string;
  readonly note: string;
  readonly children: ReactNode;
}

function Fact({ name, note, children }: FactProps) {
  return (
    <tr>
      <th scope="row">
        {name} <small>{note}</small>
      </th>
      <td>{children}</td>
    </tr>
  );
}

function harnessOf(rocket: PartOfPlan | null): { readonly length: string; readonly note: string } | null {
  const recovery = rocket?.raw["recovery"] as
    | { readonly harness?: { readonly length?: unknown; readonly strength?: unknown } }
    | undefined;
  const { length, strength } = recovery?.harness ?? {};
  if (typeof length !== "string") return null;
  return { length, note: typeof strength === "string" ? `bears ${strength}` : "strength not entered" };
}
