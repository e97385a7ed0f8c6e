import { kindOfCut, piecesWords, takeOutWords, twoCutsSentence } from "@delaywright/documents";
import { Button } from "react-aria-components";
import { addressOf } from "../../app/router.js";
import type { Told } from "../../compute/index.js";
import { ToolForm } from "../../forms/index.js";
import { DocumentField, Fold, More, revealField } from "../../parts/index.js";
import { TheCut } from "../../pictures/the-cut.js";
import { depthOf, lastMeaning, type MotorCut, motorCutOf, timeOf } from "../../standing/motor-cut.js";
import { fieldWithin, type PlanDocuments } from "../../standing/plan-documents.js";
import { targetOf } from "../../standing/target.js";
import { answerHeadline } from "../answer-words.js";
import { Caution } from "./caution.js";
import { NameInHand } from "./name-in-hand.js";
import { meaningWords } from "./reading-words.js";
import { ReadingsList } from "./readings-list.js";
import { RecordReading } from "./record-reading.js";
import type { SectionProps } from "./section-props.js";

/** The cut of the motor in hand: cautions first, then how, then the reading that proves it. */
export function CutSection(props: SectionProps) {
  const { documents, answer, state } = props;
  const { plan, tool } = documents;
  const { told, issues } = answer;
  const wrong = tool !== null && issues.some(({ file }) => file === tool.path && tool.within === "");
  return (
    <Fold id={state.id} title={state.title} aside={state.aside} mark={state.mark}>
      <Caution topics={["cutting"]} />
      {told === null ? <p className="sheet-line">The cut comes with the answer.</p> : <Cut {...props} told={told} />}
      <DocumentField path={plan.path} field="tool" label="Cutting tool" leftOut="none: no cut is planned" />
      {tool !== null && (
        <More title={`The tool: ${tool.name}`} aside="ends, spacers" open={wrong}>
          <ToolForm path={tool.path} within={tool.within} issues={issues} doubts={told?.data.doubts} />
        </More>
      )}
    </Fold>
  );
}

type CutProps = SectionProps & { readonly told: Told };

function Cut(props: CutProps) {
  const { documents, told } = props;
  const { facts } = told;
  if (facts.element.kind !== "adjustable")
    return <p className="sheet-line">This motor's delay cannot be set: there is nothing to cut.</p>;
  if (!facts.cutAllowed) return <NotAllowed documents={documents} />;
  return <Allowed {...props} />;
}

/** No cut before the motor's own instructions are confirmed. */
function NotAllowed({ documents: { motor } }: { readonly documents: PlanDocuments }) {
  return (
    <div className="sheet-box">
      <p>
        No cut is shown until you confirm that this motor's own instructions allow it, and with the tool of this plan.
      </p>
      {motor !== null && (
        <Button
          className="act"
          onPress={() => revealField(motor.path, fieldWithin(motor, "delay.instructions.allowCutting"))}
        >
          Read them and confirm
        </Button>
      )}
    </div>
  );
}

function Allowed({ documents, told, units }: CutProps) {
  const { data, facts } = told;
  const { inHand } = documents;
  const target = targetOf(data);
  const cut = motorCutOf(documents);
  const done = facts.element.removedDepth > 0;
  const kind = target === null ? "uncut" : kindOfCut(target, data.given.removedDepth);
  const toMake = kind === "cut" ? target : null;
  const home = twoCutsSentence(data, units);
  return (
    <>
      {toMake !== null && (
        <p className="lead">
          {takeOutWords(toMake, data.given.removedDepth, units).replace(/^t/, "T")}.
          <span className="hidden"> Pieces: {piecesWords(toMake)}.</span>
        </p>
      )}
      {toMake === null && <p className="lead">{standsWords(data, units)}.</p>}
      <div className="sheet-cut">
        <TheCut
          element={facts.element}
          target={target}
          tool={facts.tool}
          reading={readingShown(cut)}
          state={done ? (data.overCut === null ? "cut" : "over-cut") : "not cut"}
          units={units}
        />
        {inHand === null || cut === null ? (
          <NameInHand documents={documents} />
        ) : (
          <RecordReading
            part={inHand}
            cut={cut}
            facts={facts}
            target={toMake}
            removedDepth={data.given.removedDepth}
            units={units}
          />
        )}
      </div>
      {cut !== null && <Standing cut={cut} units={units} />}
      {home !== null && (
        <p className="sheet-line">
          <b>Still at home?</b> {home}
        </p>
      )}
      {inHand !== null && cut !== null && (
        <>
          <ReadingsList readings={cut.readings} />
          <p className="sheet-line">
            <a className="act" href={addressOf({ page: "label", path: inHand.path })}>
              Label for the bag
            </a>
          </p>
        </>
      )}
    </>
  );
}

/** What stands where nothing is to be cut: `Leave it at 9.0 s, as it is now cut`. */
function standsWords(data: Told["data"], units: SectionProps["units"]): string {
  const { lead, detail } = answerHeadline(data, units);
  return detail === "" ? lead : `${lead}, ${detail}`;
}

function readingShown(cut: MotorCut | null): { readonly before: number; readonly after: number } | null {
  const [before, after] = [depthOf(cut?.before), depthOf(cut?.after)];
  return before === null || after === null ? null : { before, after };
}

/** What the last reading means. */
function Standing({ cut, units }: { readonly cut: MotorCut; readonly units: SectionProps["units"] }) {
  const means = lastMeaning(cut);
  const words = means === null ? null : meaningWords(means, units);
  if (words === null) return null;
  return (
    <p className="sheet-line">
      <b>By the reading{cut.readAt === undefined ? "" : ` of ${timeOf(cut.readAt)}`}</b> {words}
    </p>
  );
}
