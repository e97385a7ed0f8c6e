import type { Raw } from "@delaywright/documents";
import { useBrief } from "../compute/index.js";
import { outlineProps, thrustProps } from "../pictures/from-answer.js";
import { Outline } from "../pictures/outline.js";
import { ThrustCurve } from "../pictures/thrust-curve.js";
import { type Entry, useSettings } from "../store/index.js";

interface DocumentPicturesProps {
  readonly entry: Entry;
  readonly users: readonly Entry[];
}

/** The picture of a document, to see slips in what was measured. It is drawn from a plan that uses it. */
export function DocumentPictures({ entry, users }: DocumentPicturesProps) {
  const { kind } = entry;
  if (kind !== "rocket" && kind !== "motor") return null;
  const plans = users.filter((user) => user.kind === "plan" && user.raw !== null);
  const plan = plans.find(({ raw }) => draws(raw, kind, entry.path)) ?? plans[0];
  return (
    <section className="page-panel">
      <h2>{kind === "rocket" ? "Outline" : "Thrust curve"}</h2>
      {plan === undefined ? (
        <p className="quiet">It is drawn once a plan uses this {kind === "rocket" ? "rocket" : "motor type"}.</p>
      ) : (
        <Drawn plan={plan} kind={kind} />
      )}
    </section>
  );
}

/** Whether a plan flies a document itself: a rocket that it names, or a motor type. */
function draws(raw: Raw | null, kind: "rocket" | "motor", path: string): boolean {
  return raw?.[kind] === path;
}

function Drawn({ plan, kind }: { readonly plan: Entry; readonly kind: "rocket" | "motor" }) {
  const { told, state } = useBrief(plan.path);
  const [{ units }] = useSettings();
  if (told === null)
    return (
      <p className="quiet">
        {state === "waiting" ? "It is being drawn …" : `It is drawn once ${plan.name} has all that it needs.`}
      </p>
    );
  return (
    <>
      {kind === "rocket" ? (
        <Outline {...outlineProps(told)} units={units} />
      ) : (
        <ThrustCurve {...thrustProps(told.facts)} units={units} />
      )}
      <p className="quiet">
        {kind === "rocket" ? `With the motor of ${plan.name}.` : `As ${plan.name} flies it.`}
        {state === "settled" ? "" : " With its last right values."}
      </p>
    </>
  );
}
