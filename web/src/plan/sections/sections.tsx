import "./sections.css";
import "./cut.css";
import "./tables.css";
import { basisLines } from "@delaywright/documents";
import type { ComponentType } from "react";
import { CardSection } from "../../card/card-section.js";
import { DebriefSection } from "../../debrief/debrief-section.js";
import { useNarrow } from "../../parts/index.js";
import { PrepSection } from "../../prep/prep-section.js";
import type { SectionId } from "../../standing/next-act.js";
import { ChecksSection } from "./checks-section.js";
import { CutSection } from "./cut-section.js";
import { HeightPart, WeatherAndDrivers } from "./delay-pictures.js";
import { DelaySection } from "./delay-section.js";
import { FieldSection } from "./field-section.js";
import { MotorSection } from "./motor-section.js";
import { PackingSection } from "./packing-section.js";
import { RocketSection } from "./rocket-section.js";
import type { SectionProps, SectionsProps } from "./section-props.js";

const measured: readonly (readonly [SectionId, ComponentType<SectionProps>])[] = [
  ["rocket", RocketSection],
  ["motor", MotorSection],
  ["field", FieldSection],
];
const follows: readonly (readonly [SectionId, ComponentType<SectionProps>])[] = [
  ["delay", DelaySection],
  ["cut", CutSection],
];
const last: readonly (readonly [SectionId, ComponentType<SectionProps>])[] = [
  ["packing", PackingSection],
  ["checks", ChecksSection],
];

const toTheField: typeof last = [
  ["prep", ({ documents, state }) => <PrepSection path={documents.plan.path} mark={state.mark} />],
  [
    "card",
    ({ documents, answer, state }) => (
      <CardSection
        path={documents.plan.path}
        answer={answer}
        flyer={documents.flyer?.name ?? null}
        mark={state.mark}
        aside={state.aside}
      />
    ),
  ],
];

const afterwards: typeof last = [
  [
    "debrief",
    ({ documents, answer, state }) => (
      <DebriefSection
        path={documents.plan.path}
        waits={answer.settling && answer.issues.length === 0}
        mark={state.mark}
        aside={state.aside}
      />
    ),
  ],
];

/** The sections of a plan: what was measured beside what follows from it, then the way down and the checks. */
export function Sections({ states, ...props }: SectionsProps) {
  const narrow = useNarrow();
  const draw = (list: typeof measured) =>
    list.map(([id, Part]) => {
      const state = states.find((each) => each.id === id);
      return state === undefined ? null : <Part key={id} {...props} state={state} />;
    });
  const delay = states.find(({ id }) => id === "delay");
  const { told } = props.answer;
  const day = props.documents.plan.raw?.["date"];
  return (
    <>
      {told !== null && (
        <div className="print-only sheet-basis">
          {typeof day === "string" && <p>Day of the flight: {day}.</p>}
          {basisLines(told.data, props.units).map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      )}
      <div className="sheet-columns">
        <div className="sheet-column">{draw(measured)}</div>
        <div className="sheet-column">
          {draw(follows)}
          {!narrow && delay !== undefined && <HeightPart {...props} state={delay} />}
        </div>
        {!narrow && delay !== undefined && <WeatherAndDrivers {...props} state={delay} />}
        {draw(last)}
        <div className="sheet-wide">{draw(toTheField)}</div>
        <div className="sheet-after">{draw(afterwards)}</div>
      </div>
    </>
  );
}
