import "./sections.css";
import "./cut.css";
import "./tables.css";
import { basisLines } from "@delaywright/documents";
import { type ComponentType, memo, useState } from "react";
import { CardSection } from "../../card/card-section.js";
import { DebriefSection } from "../../debrief/debrief-section.js";
import { useNarrow, useSame } from "../../parts/index.js";
import { PrepSection } from "../../prep/prep-section.js";
import type { SectionId } from "../../standing/next-act.js";
import { ChecksSection } from "./checks-section.js";
import { CutSection } from "./cut-section.js";
import { HeightPart, heightPlace, WeatherAndDrivers, weatherPlace } from "./delay-pictures.js";
import { DelaySection } from "./delay-section.js";
import { FieldSection } from "./field-section.js";
import { followed } from "./followed.js";
import { MotorSection } from "./motor-section.js";
import { PackingSection } from "./packing-section.js";
import { RocketSection } from "./rocket-section.js";
import type { SectionProps, SectionsProps } from "./section-props.js";
import { useNear } from "./use-near.js";

type Part = ComponentType<SectionProps>;
type Parts = readonly (readonly [SectionId, Part])[];

const measured: Parts = [
  ["rocket", memo(RocketSection)],
  ["motor", memo(MotorSection)],
  ["field", memo(FieldSection)],
];
const follows: Parts = [
  ["delay", memo(DelaySection)],
  ["cut", memo(CutSection)],
];
const Height = memo(HeightPart);
const Weather = memo(WeatherAndDrivers);
const last: Parts = [
  ["packing", memo(PackingSection)],
  ["checks", memo(ChecksSection)],
];

const Prep = memo(({ documents, answer, state }: SectionProps) => (
  <PrepSection path={documents.plan.path} answer={answer} mark={state.mark} />
));
const Card = memo(({ documents, answer, state }: SectionProps) => (
  <CardSection
    path={documents.plan.path}
    answer={answer}
    flyer={documents.flyer?.name ?? null}
    mark={state.mark}
    aside={state.aside}
  />
));
const toTheField: Parts = [
  ["prep", Prep],
  ["card", Card],
];

const Debrief = memo(({ documents, answer, state }: SectionProps) => (
  <DebriefSection
    path={documents.plan.path}
    waits={answer.settling && answer.issues.length === 0}
    mark={state.mark}
    aside={state.aside}
  />
));
const afterwards: Parts = [["debrief", Debrief]];

/** Everything that the sheet is drawn from, as it is now and as it was when it last came to rest. */
export interface SheetProps {
  readonly now: SectionsProps;
  readonly calm: SectionsProps;
}

interface FollowingProps extends SheetProps {
  readonly id: SectionId;
  /** Element that must be in view; left out: the section's own. */
  readonly place?: string;
  readonly part: Part;
}

/** A part of the sheet: it follows every change while it is in view, else once the changes have come to rest. */
function Following({ id, place = id, part: Part, now, calm }: FollowingProps) {
  const near = useNear(place, now.answer.told !== null);
  const [last, keep] = useState({ shown: now, calm });
  const next = followed(last, { near, now, calm });
  if (next !== last) keep(next);
  const { states, next: act, ...rest } = next.shown;
  // a step elsewhere is no reason to draw this anew
  const state = useSame(states.find((each) => each.id === id) ?? null);
  return state === null ? null : <Part {...rest} next={id === "delay" ? act : null} state={state} />;
}

/** The sections of a plan: what was measured beside what follows from it, then the way down and the checks. */
export function Sections({ now, calm }: SheetProps) {
  const narrow = useNarrow();
  const both = { now, calm };
  const draw = (parts: Parts) => parts.map(([id, part]) => <Following key={id} id={id} part={part} {...both} />);
  const { told } = calm.answer;
  const day = calm.documents.plan.raw?.["date"];
  return (
    <>
      {told !== null && (
        <div className="print-only sheet-basis">
          {typeof day === "string" && <p>Day of the flight: {day}.</p>}
          {basisLines(told.data, calm.units).map((line) => (
            <p key={line}>{line}</p>
          ))}
        </div>
      )}
      <div className="sheet-columns">
        <div className="sheet-column">{draw(measured)}</div>
        <div className="sheet-column">
          {draw(follows)}
          {!narrow && <Following id="delay" place={heightPlace} part={Height} {...both} />}
        </div>
        {!narrow && <Following id="delay" place={weatherPlace} part={Weather} {...both} />}
        {draw(last)}
        <div className="sheet-wide">{draw(toTheField)}</div>
        <div className="sheet-after">{draw(afterwards)}</div>
      </div>
    </>
  );
}
