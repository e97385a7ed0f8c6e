import "./debrief.css";
import type { UnitSystem } from "@delaywright/documents";
import { useDeferredValue, useEffect } from "react";
import { Button } from "react-aria-components";
import type { Moved } from "../compute/debrief/protocol.js";
import { IssueList, Notice, PickField } from "../parts/index.js";
import { flightsOf } from "../prep/flights.js";
import { type Entry, useEntries, useEntryPart, useSettings } from "../store/index.js";
import { Debriefed } from "./debriefed.js";
import { flightWords } from "./flight-words.js";
import { type IntakeHold, noIntake } from "./intake.js";
import { LogIntake } from "./log-intake.js";
import { dropLog, flightFor, logOf } from "./log-store.js";
import { SeenForm } from "./seen-form.js";
import { type Debriefing, useDebrief } from "./use-debrief.js";
import { useIntake } from "./use-intake.js";

/** Which flight of a plan is looked at. */
export interface DebriefShown {
  /** Its path; null: none was picked. */
  readonly flight: string | null;
  /** Path of a log's file that only this page holds; null: none. */
  readonly unkept: string | null;
}

export interface DebriefBodyProps {
  /** Of the plan. */
  readonly path: string;
  /** The plan's own answer is under way, and comes first. */
  readonly waits: boolean;
  /** By flight: events that were moved and are not accepted yet. */
  readonly moves: Readonly<Record<string, Moved>>;
  readonly onMoved: (flight: string, moved: Moved | null) => void;
  readonly hold: IntakeHold;
  readonly shown: DebriefShown;
  readonly onShown: (change: (last: DebriefShown) => DebriefShown) => void;
}

/** What happened on a flight of the plan, and what it changes. */
export function DebriefBody({ path, waits, moves, onMoved, hold, shown, onShown }: DebriefBodyProps) {
  const there = useEntryPart(path, (entry) => entry !== undefined);
  const entries = useEntries("flight");
  const [{ units }] = useSettings();
  const { flight: picked, unkept } = shown;
  const flights = flightsOf(path, entries);
  const flight = flights.find((each) => each.path === picked) ?? flights[0] ?? null;
  const entry = entries.find((each) => each.path === flight?.path) ?? null;
  const own = flight?.path ?? null;
  const pick = (other: string): void => {
    onShown((last) => ({ ...last, flight: other }));
    // a log that was being taken in was for the flight before
    if (picked !== null && picked !== other) hold.set(noIntake);
  };
  // a flight that is looked at stays, also where another comes to stand before it
  // biome-ignore lint/correctness/useExhaustiveDependencies: another flight is looked at
  useEffect(() => {
    if (own !== null && own !== picked) pick(own);
  }, [own]);
  if (!there) return null;
  return (
    <div className="debrief">
      {flights.length > 1 && (
        <PickField
          frame="debrief-choice"
          label="Which flight"
          items={flights.map((each) => ({ id: each.path, word: flightWords(each.raw, each.name) }))}
          chosen={flight?.path ?? null}
          onChoose={pick}
        />
      )}
      <FlightDebrief
        key={flight?.path ?? ""}
        plan={path}
        flight={entry}
        units={units}
        waits={waits}
        moved={moves[flight?.path ?? ""] ?? null}
        onMoved={onMoved}
        hold={hold}
        unkept={unkept}
        onUnkept={(source) => onShown((last) => ({ ...last, unkept: source }))}
      />
    </div>
  );
}

interface FlightDebriefProps {
  /** Path of the plan. */
  readonly plan: string;
  readonly flight: Entry | null;
  readonly units: UnitSystem;
  readonly waits: boolean;
  /** Null: as it was kept. */
  readonly moved: Moved | null;
  readonly onMoved: (flight: string, moved: Moved | null) => void;
  readonly hold: IntakeHold;
  /** Path of a log's file that only this page holds; null: none. */
  readonly unkept: string | null;
  readonly onUnkept: (source: string | null) => void;
}

function FlightDebrief(props: FlightDebriefProps) {
  const { plan, flight, units, waits, moved, onMoved, hold, unkept, onUnkept } = props;
  const logs = useEntries("log");
  const { intake } = hold;
  const acts = useIntake(hold, onUnkept);
  const log = flight?.raw == null ? null : logOf(flight.raw, logs);
  const flights = useEntries("flight");
  // fields are much to draw: what was just pressed is answered first
  const formComes = useDeferredValue(true, false);
  // while columns are being put right the worker has another file open
  const debriefing = useDebrief(plan, flight, moved, waits || intake.state !== "none");
  const own = (): string => flightFor(plan, flight?.path ?? null);
  return (
    <>
      {log === null ? (
        <>
          <p className="sheet-line">
            Take in the altimeter's log: the tool finds lift-off, burnout, top and opening in it, and holds them against
            the prediction.
          </p>
          <LogIntake intake={intake} acts={acts} flight={own} units={units} />
        </>
      ) : (
        <p className="debrief-log">
          Log: <b>{log.name}</b>{" "}
          <Button
            className="act"
            onPress={() => {
              if (flight === null) return;
              onMoved(flight.path, null);
              dropLog(flight.path, flights);
            }}
          >
            Take the log away
          </Button>
        </p>
      )}
      {log !== null && log.source === unkept && (
        <Notice urgent>
          <b>No room left on this device for the log's file.</b> It is here until this page is closed. What is found in
          it is kept. Export the bench now to have the file too.
        </Notice>
      )}
      {flight === null
        ? intake.state === "none" && (
            <p className="sheet-line">
              <Button className="act" onPress={() => own()}>
                No log: say what was seen
              </Button>
            </p>
          )
        : formComes && <SeenForm path={flight.path} logged={log !== null} />}
      <DebriefState debriefing={debriefing} />
      {flight !== null && debriefing.told !== null && (
        <Debriefed
          plan={plan}
          flight={flight}
          told={debriefing.told}
          units={units}
          busy={debriefing.state === "reading" || debriefing.state === "flying"}
          onMoved={(next) => onMoved(flight.path, next)}
        />
      )}
    </>
  );
}

function DebriefState({ debriefing }: { readonly debriefing: Debriefing }) {
  const { state, told, issues, failure } = debriefing;
  return (
    <>
      <p className="hidden" role="status">
        {state === "settled" ? "The debrief is ready." : ""}
      </p>
      {state === "reading" && told === null && <p className="sheet-line">Reading the log …</p>}
      {state === "wrong" && (
        <>
          <p className="sheet-line">
            <b>The flight cannot be debriefed yet.</b>
          </p>
          <IssueList issues={issues} />
        </>
      )}
      {state === "no-record" && (
        <Notice urgent>
          <b>The log's file is not on this device.</b> What was kept of the flight still teaches. Take the log away here
          and choose its file again, or import the export that it came with.
        </Notice>
      )}
      {state === "failed" && (
        <Notice urgent>
          <b>The debrief met a defect of the app</b> ({failure}). Your documents are kept. It tries again with your next
          change.
        </Notice>
      )}
    </>
  );
}
