import {
  delayLearnedSentence,
  dragSentence,
  impulseSentence,
  learnedBasis,
  nextSentence,
  nextTopSentence,
  type UnitSystem,
  untaughtSentences,
} from "@delaywright/documents";
import { useState } from "react";
import { Button } from "react-aria-components";
import { addressOf, go } from "../app/router.js";
import type { DebriefTold } from "../compute/debrief/protocol.js";
import { ConfirmDialog, More } from "../parts/index.js";
import { useEntryPart } from "../store/index.js";
import { LearnedTable } from "./learned-table.js";
import { NextTable } from "./next-table.js";
import { beginNextPlan, forgetLearned, reckonsWith, reckonWith } from "./reckon.js";

export interface LearnedPartProps {
  /** Path of the plan. */
  readonly plan: string;
  readonly told: DebriefTold;
  readonly units: UnitSystem;
  /** All draws are flown, and nothing newer is under way. */
  readonly settled: boolean;
  /** What was found is kept with the flight: before that, nothing is learned for good. */
  readonly kept: boolean;
}

/** What a flight taught, how the next odds change with it, and the act that makes a plan reckon with it. */
export function LearnedPart({ plan, told, units, settled, kept }: LearnedPartProps) {
  const { learned, next } = told.data;
  const [asks, ask] = useState(false);
  const before = useEntryPart(plan, (entry) => entry?.raw);
  const reckoned = before == null ? "no" : reckonsWith(before, told.learned);
  const delay = delayLearnedSentence(learned);
  const untaught = untaughtSentences(learned);
  return (
    <section className="section" aria-busy={!settled}>
      <h3>What was learned</h3>
      <ul className="sheet-lines">
        {untaught.map((line) => (
          <li key={line}>
            <b>{line}</b>
          </li>
        ))}
        <li>{dragSentence(learned)}</li>
        <li>{impulseSentence(learned)}</li>
        {delay !== null && <li>{delay}</li>}
        <li className="quiet">{learnedBasis(learned.after)}</li>
      </ul>
      <LearnedTable learned={learned} />
      <h3 className="sheet-part">What it changes</h3>
      <p className="lead debrief-next-words">{nextSentence(next)}</p>
      <p className="second">{nextTopSentence(next, units)}</p>
      {!settled && <p className="quiet">Rough odds, the whole of the draws is being flown.</p>}
      {next.after.settings.length > 0 && (
        <More title="Odds by delay, without this flight and with it">
          <NextTable next={next} />
        </More>
      )}
      <div className="debrief-acts">
        {reckoned !== "same" && (
          <Button className="act" isDisabled={!kept || !settled} onPress={() => ask(true)}>
            {reckoned === "no"
              ? "Reckon with it in this plan"
              : "Reckon with it in this plan, in place of what it knew"}
          </Button>
        )}
        {reckoned !== "no" && (
          <Button className="act" onPress={() => forgetLearned(plan)}>
            Take it out of this plan
          </Button>
        )}
        <Button
          className="act"
          isDisabled={!kept || !settled}
          onPress={() => go({ page: "plan", path: beginNextPlan(plan, told.learned) })}
        >
          Begin the next plan with it
        </Button>
      </div>
      <p className="quiet">
        {kept
          ? reckoned === "same"
            ? "This plan reckons with it: drag, thrust and delay, and how sure they are."
            : "Nothing changes a plan's odds until you say so."
          : "Keep what was found first: only then can a plan reckon with it."}{" "}
        <a href={addressOf({ page: "shelf", shelf: "flights" })}>All flights and their trends</a>
      </p>
      <ConfirmDialog
        isOpen={asks}
        title="Reckon with it in this plan?"
        act="Reckon with it"
        onAct={() => reckonWith(plan, told.learned)}
        onClose={() => ask(false)}
      >
        <p>{nextSentence(next)}</p>
        <p>The plan's answer, its card and its checks follow from it. Undo takes it back.</p>
      </ConfirmDialog>
    </section>
  );
}
