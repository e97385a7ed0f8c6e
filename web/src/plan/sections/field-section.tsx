import { type Issue, shownQuantity, type UnitSystem, unopenedSentences } from "@delaywright/documents";
import { Button } from "react-aria-components";
import {
  FieldForm,
  FlyerForm,
  PlanDayForm,
  PlanGuideForm,
  PlanHeadForm,
  PlanSiteForm,
  PlanWeatherForm,
} from "../../forms/index.js";
import { DocumentField, Fold, More, Section } from "../../parts/index.js";
import { landingProps } from "../../pictures/from-answer.js";
import { Landing } from "../../pictures/landing.js";
import type { PartOfPlan } from "../../standing/plan-documents.js";
import { readNow, readWords } from "../../standing/weather-age.js";
import { setField } from "../../store/index.js";
import { Caution } from "./caution.js";
import { landingSentences } from "./landing-words.js";
import { flightState, type SectionProps } from "./section-props.js";

/** Where it is flown from, in which weather, and where it comes down. */
export function FieldSection(props: SectionProps) {
  const { documents, answer, age, state, units } = props;
  const { plan, field, flyer } = documents;
  const { issues, told } = answer;
  return (
    <Fold id={state.id} title={state.title} aside={state.aside} mark={state.mark}>
      <PlanDayForm path={plan.path} issues={issues} doubts={told?.data.doubts} />
      <PlanWeatherForm path={plan.path} issues={issues} doubts={told?.data.doubts} />
      <div className="sheet-read">
        <p>
          {age === null
            ? "No time of the reading is given."
            : `The weather was read ${readWords(age)}.${age.stale ? " That is over an hour: read it again." : ""}`}
        </p>
        <Button className="act" onPress={() => noteReading(props)}>
          Read just now
        </Button>
      </div>
      <DocumentField path={plan.path} field="field" label="Field" leftOut="none: sea level, 45 deg" />
      {field !== null && <FieldParts field={field} {...props} />}
      <More title="Launch guide" aside={guideWords(plan.raw?.["guide"], units)}>
        <PlanGuideForm path={plan.path} issues={issues} doubts={told?.data.doubts} />
      </More>
      <More title="What the rules also ask" aside="clouds, people, who is in charge">
        <PlanSiteForm path={plan.path} issues={issues} doubts={told?.data.doubts} />
      </More>
      <More title="Name, flyer and notes of this plan" open={isWrong(issues, plan.path)}>
        <PlanHeadForm path={plan.path} issues={issues} doubts={told?.data.doubts} />
        {flyer !== null && (
          <More title={`The flyer: ${flyer.name}`} aside="certification, age" level={4}>
            <FlyerForm path={flyer.path} within={flyer.within} issues={issues} doubts={told?.data.doubts} />
          </More>
        )}
      </More>
      <Lands {...props} />
    </Fold>
  );
}

/** Something of the plan's own head is wrong or missing. */
function isWrong(issues: readonly Issue[], plan: string): boolean {
  return issues.some(({ file, path }) => file === plan && ["name", "flyer", "note"].includes(path));
}

function FieldParts({ field, answer }: SectionProps & { readonly field: PartOfPlan }) {
  const { issues, told } = answer;
  const wrong = issues.some((issue) => issue.file === field.path && issue.path.startsWith(field.within));
  return (
    <More
      title={`The field: ${field.name}`}
      aside="elevation, ceiling, edge, neighbours"
      open={wrong && field.within === ""}
    >
      <FieldForm path={field.path} within={field.within} issues={issues} doubts={told?.data.doubts} />
    </More>
  );
}

function noteReading({ documents }: Pick<SectionProps, "documents">): void {
  const { path, raw } = documents.plan;
  for (const [name, value] of Object.entries(readNow(raw ?? {}, new Date())))
    setField(path, name, value, "time of the reading");
}

function guideWords(guide: unknown, units: UnitSystem): string {
  const { rail, travel, tilt } = (guide as Readonly<Record<string, unknown>> | undefined) ?? {};
  const long = (typed: string): string => shownQuantity(typed, "length", units, { digits: 3 });
  const along =
    typeof rail === "string"
      ? `rail ${long(rail)}`
      : typeof travel === "string"
        ? `travel ${long(travel)}`
        : "not given";
  return typeof tilt === "string" && Number.parseFloat(tilt) !== 0 ? `${along}, leaning ${tilt}` : along;
}

/** Where it lands, opened and unopened, with what must not be under it. */
function Lands(props: SectionProps) {
  const { answer, units } = props;
  const { told, pictures } = answer;
  if (told === null) return null;
  const state = flightState(props);
  return (
    <Section title="Where it lands" aside="inner line 50 %, outer 95 % of flights" part>
      <Landing {...landingProps(told.facts, pictures)} units={units} state={state} />
      {pictures !== null && (
        <ul className={state === "settling" ? "sheet-lines settling" : "sheet-lines"}>
          {landingSentences(pictures, told.facts.zones).map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      <h4 className="sheet-part">If nothing opens</h4>
      <p className="second">{unopenedSentences(told.data, units).join(" ")}</p>
      <Caution topics={["late-charge"]} />
    </Section>
  );
}
