import { debriefedFlight, type FlightDocument, type UnitSystem } from "@delaywright/documents";
import type { EventName } from "@delaywright/engine";
import { useDeferredValue } from "react";
import { Button } from "react-aria-components";
import type { DebriefTold, Moved } from "../compute/debrief/protocol.js";
import type { Entry } from "../store/index.js";
import { EventTable } from "./event-table.js";
import { ExcludePart } from "./exclude-part.js";
import { FindingsPart } from "./findings-part.js";
import { FlownView } from "./flown-view.js";
import { isKept } from "./kept.js";
import { LearnedPart } from "./learned-part.js";
import { changeFlight } from "./log-store.js";
import { useRemembered } from "./remembered.js";

export interface DebriefedProps {
  /** Path of the plan. */
  readonly plan: string;
  readonly flight: Entry;
  readonly told: DebriefTold;
  readonly units: UnitSystem;
  /** A newer answer is under way. */
  readonly busy: boolean;
  readonly onMoved: (moved: Moved) => void;
}

/** A flight debriefed: plot, events, what was found, what it teaches. */
export function Debriefed({ plan, flight, told, units, busy, onMoved }: DebriefedProps) {
  const { data, plot, findings, forecast } = told;
  const [chosen, choose] = useRemembered<EventName | null>(`${flight.path} in hand`, null);
  // what happened is drawn first, then what it teaches: both at once hold a phone up
  const learnedComes = useDeferredValue(true, false);
  const settled = told.settled && !busy;
  const kept = flight.raw !== null && isKept(flight.raw, told);
  const move = (name: EventName, time: number | null): void => {
    if (plot === null) return;
    const { [name]: _, ...others } = plot.moved;
    onMoved(time === null ? others : { ...others, [name]: time + plot.zero });
  };
  const keep = (): void =>
    changeFlight(flight.path, "what was found of the flight", (raw) => ({
      ...debriefedFlight(raw, { findings, forecast }),
      ...(typeof raw["plan"] === "string" ? { plan: told.plan, planFile: raw["plan"] } : {}),
    }));
  return (
    <div aria-busy={busy}>
      {plot !== null && (
        <FlownView
          flight={flight.path}
          told={told}
          plot={plot}
          units={units}
          chosen={chosen}
          onChoose={choose}
          onMove={move}
        />
      )}
      <div className="debrief-columns">
        <section className="section">
          <h3>What happened</h3>
          <FindingsPart data={data} units={units} />
          {data.events.length > 0 && <EventTable data={data} units={units} onChoose={plot === null ? null : choose} />}
          <div className="debrief-acts">
            {kept ? (
              <p role="status">What was found is kept with the flight.</p>
            ) : (
              <Button className="act debrief-do" isDisabled={!settled} onPress={keep}>
                {plot === null ? "Keep what was seen" : "Accept the events and keep what was found"}
              </Button>
            )}
          </div>
          <ExcludePart path={flight.path} excluded={data.flight.excluded} />
          <FrozenLine flight={flight} />
        </section>
        {learnedComes && <LearnedPart plan={plan} told={told} units={units} settled={settled} kept={kept} />}
      </div>
    </div>
  );
}

/** Against which plan the flight is held, once it is kept as it was flown. */
function FrozenLine({ flight }: { readonly flight: Entry }) {
  const { plan, planFile } = (flight.raw ?? {}) as Partial<Pick<FlightDocument, "plan" | "planFile">>;
  if (typeof plan === "string" || planFile === undefined) return null;
  return (
    <p className="quiet debrief-frozen">
      The flight is held against the plan as it was flown; what you change in the plan since does not touch it.{" "}
      <Button
        className="act"
        onPress={() =>
          changeFlight(flight.path, "the plan as it stands now", ({ planFile: _, ...raw }) => ({
            ...raw,
            kind: "flight",
            version: 1,
            plan: planFile,
          }))
        }
      >
        Take the plan as it stands now
      </Button>
    </p>
  );
}
