import "./sections.css";
import "./cut.css";
import "./tables.css";
import { basisLines } from "@delaywright/documents";
import { type ComponentType, memo, useState } from "react";
import { CardSection } from "../../card/card-section.js";
import { DebriefSection } from "../../debrief/debrief-section.js";
import { FoldedLater, useNarrow, useSame } from "../../parts/index.js";
import { PrepSection } from "../../prep/prep-section.js";
import { type SectionId, sectionIds } from "../../standing/next-act.js";
import { ChecksSection } from "./checks-section.js";
import { CutSection } from "./cut-section.js";
import { HeightPart, heightPlace, WeatherAndDrivers, weatherPlace } from "./delay-pictures.js";
import { DelaySection } from "./delay-section.js";
import { FieldSection } from "./field-section.js";
import { type Drawn, drawnAt, lastStep } from "./filling.js";
import { followed } from "./followed.js";
import { MotorSection } from "./motor-section.js";
import { PackingSection } from "./packing-section.js";
import { RocketSection } from "./rocket-section.js";
import type { SectionProps, SectionsProps } from "./section-props.js";
import { useNear } from "./use-near.js";

type Part = ComponentType<SectionProps>;
type Parts = readonly (readonly [SectionId, Part])[];
/** What fills by itself: a section, or a picture that a wide sheet shows beside it. */
type Place = SectionId | typeof heightPlace | typeof weatherPlace;

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

/** What is seen first comes first: a wide sheet shows the heads of both columns, a phone the section that is open on it. */
const wideOrder: readonly Place[] = [
  "rocket",
  "delay",
  "motor",
  "cut",
  heightPlace,
  "field",
  weatherPlace,
  "packing",
  "checks",
  "prep",
  "card",
  "debrief",
];
const narrowOrder: readonly Place[] = ["delay", ...sectionIds.filter((id) => id !== "delay")];

const orderOf = (narrow: boolean): readonly Place[] => (narrow ? narrowOrder : wideOrder);

/** Steps of filling after which all of a sheet is drawn. */
export function stepsOf(narrow: boolean): number {
  return lastStep(orderOf(narrow).length, narrow);
}

/** Everything that the sheet is drawn from, as it is now and as it was when it last came to rest. */
export interface SheetProps {
  readonly now: SectionsProps;
  readonly calm: SectionsProps;
}

interface FollowingProps extends SheetProps {
  readonly id: SectionId;
  readonly part: Part;
  /** Element that must be in view. */
  readonly place: string;
  readonly drawn: Drawn;
}

/** A part of the sheet: it follows every change while it is in view, else once the changes have come to rest. */
function Following({ id, place, part: Part, drawn, now, calm }: FollowingProps) {
  const near = useNear(place, drawn !== "none" && now.answer.told !== null);
  const [last, keep] = useState(now);
  const shown = followed(last, { near, now, calm });
  if (shown !== last) keep(shown);
  const { order: _, states, next: act, ...rest } = shown;
  // a step elsewhere is no reason to draw this anew
  const state = useSame(states.find((each) => each.id === id) ?? null);
  if (state === null || drawn === "none") return null;
  return (
    <FoldedLater value={drawn === "open"}>
      <Part {...rest} next={id === "delay" ? act : null} state={state} />
    </FoldedLater>
  );
}

export interface SectionsOfSheetProps extends SheetProps {
  /** Steps of filling that were taken. */
  readonly step: number;
}

/** The sections of a plan: what was measured beside what follows from it, then the way down and the checks. */
export function Sections({ now, calm, step }: SectionsOfSheetProps) {
  const narrow = useNarrow();
  const order = orderOf(narrow);
  const drawOne = (id: SectionId, part: Part, place: Place = id) => {
    const drawn = drawnAt(order.indexOf(place), step, order.length, narrow);
    return <Following key={place} id={id} part={part} place={place} drawn={drawn} now={now} calm={calm} />;
  };
  const draw = (parts: Parts) => parts.map(([id, part]) => drawOne(id, part));
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
          {!narrow && drawOne("delay", Height, heightPlace)}
        </div>
        {!narrow && drawOne("delay", Weather, weatherPlace)}
        {draw(last)}
        <div className="sheet-wide">{draw(toTheField)}</div>
        <div className="sheet-after">{draw(afterwards)}</div>
      </div>
    </>
  );
}
