import { amountIn, delayWords, descentSentence, packingParts, strengthSentence } from "@delaywright/documents";
import type { ReactNode } from "react";
import type { Told } from "../../compute/index.js";
import { PlanPackingForm } from "../../forms/index.js";
import { RocketPackingForm } from "../../forms/rocket-halves.js";
import { Fold, More } from "../../parts/index.js";
import { CanopySizes } from "./canopy-sizes.js";
import { Caution } from "./caution.js";
import { PackingFound } from "./packing-found.js";
import type { SectionProps } from "./section-props.js";

/** What is packed: the charge, what it parts, and how all of it opens and lands; each with what is missing to reckon it. */
export function PackingSection({ documents, answer, state, units }: SectionProps) {
  const { rocket, plan } = documents;
  const { told, issues } = answer;
  const doubts = told?.data.doubts;
  return (
    <Fold id={state.id} title={state.title} aside={state.aside} mark={state.mark}>
      {told === null ? <ChargeCaution /> : <Facts told={told} units={units} />}
      {told?.data.opened != null && <p className="second sheet-line print-only">{descentSentence(told.data, units)}</p>}
      {told !== null && (
        <>
          <p className="quiet sheet-line">{strengthSentence(told.data, units)}</p>
          {packingParts(told.data, units).map((part) => (
            <PackingFound
              key={part.topic}
              part={part}
              documents={documents}
              before={part.topic === "charge" && <ChargeCaution />}
            >
              {part.topic === "landing" && <CanopySizes packing={told.data.packing} units={units} />}
            </PackingFound>
          ))}
        </>
      )}
      <More title="What you want of the packing" aside="charge, landing speed">
        <PlanPackingForm path={plan.path} issues={issues} doubts={doubts} />
      </More>
      {rocket !== null && (
        <RocketPackingForm path={rocket.path} within={rocket.within} issues={issues} doubts={doubts} />
      )}
    </Fold>
  );
}

/** Said where the charge is, whatever else is known. */
function ChargeCaution() {
  return <Caution topics={["charge", "retention"]} />;
}

interface FactsProps {
  readonly told: Told;
  readonly units: SectionProps["units"];
}

function Facts({ told, units }: FactsProps) {
  const { opened, choice, toCut } = told.data;
  if (opened === null) return null;
  const delay = choice?.setting.delay ?? toCut?.delay;
  const { openings, landing } = opened;
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
            <Fact name="In all" note="with the drift">
              {amountIn(landing.groundSpeed, "speed", units)}
            </Fact>
            <Fact name="Energy" note="at landing">
              {amountIn(landing.energy, "energy", units)}
            </Fact>
          </>
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
