import { cautions, type UnitSystem } from "@delaywright/documents";
import { Button } from "react-aria-components";
import { addressOf } from "../app/router.js";
import { shownWind } from "../standing/shown-wind.js";
import type { Entry } from "../store/index.js";
import { writeWind } from "./pad-wind.js";
import type { PadWords } from "./pad-words.js";

interface PadFootProps {
  readonly words: PadWords;
  readonly plan: Entry;
  /** The screen is held on. */
  readonly awake: boolean;
  /** Fields that are wrong or missing. */
  readonly problems: number;
  /** The answer is that of the documents as they are. */
  readonly fresh: boolean;
  readonly units: UnitSystem;
}

/** What to do if it is not good, and the caution of the place. */
export function PadFoot({ words, plan, awake, problems, fresh, units }: PadFootProps) {
  const { note, act } = words;
  const [igniter, misfire] = cautions.igniter;
  const wind = (plan.raw?.["weather"] as { readonly wind?: unknown } | undefined)?.wind;
  return (
    <section className="pad-foot" aria-label="Before you go on">
      {awake && <p className="pad-awake">screen stays on</p>}
      {!fresh && problems > 0 && (
        <p className="pad-note">
          <b>A field of the plan is wrong.</b> These are the figures of its last right value.
        </p>
      )}
      {note !== null && (
        <p className="pad-note">
          <b>{note.lead}</b> {note.text}
        </p>
      )}
      {act === "read" && (
        <Button className="next-act" onPress={() => writeWind(plan, {})}>
          It still blows {wind === undefined ? "the same" : shownWind(String(wind), units)}
        </Button>
      )}
      {act === "plan" && (
        <a className="next-act" href={addressOf({ page: "plan", path: plan.path })}>
          Back to the plan
        </a>
      )}
      <div className="caution" role="note">
        <b>{igniter}</b>
        {misfire}
      </div>
      <p className="pad-authority">{cautions.authority.join(" ")}</p>
    </section>
  );
}
