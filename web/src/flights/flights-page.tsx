import "./flights.css";
import { calibrationSentence, topsSentence } from "@delaywright/documents";
import { addressOf } from "../app/router.js";
import { PageTop } from "../chrome/page-top.js";
import { Notice, Section } from "../parts/index.js";
import { TrendCalibration } from "../pictures/trend-calibration.js";
import { useEntries, useSettings } from "../store/index.js";
import { FlightTable } from "./flight-table.js";
import { MotorTrends } from "./motor-trends.js";
import { RocketTrends } from "./rocket-trends.js";
import { inOrder } from "./trends.js";
import { useLibrary } from "./use-library.js";

/** All flights: how each went, what they say together of each rocket and motor type, and how the odds held. */
export function FlightsPage() {
  const entries = useEntries("flight");
  const [{ units }] = useSettings();
  const { library, failure } = useLibrary();
  const past = library === null ? [] : inOrder(library.past);
  const words = library === null ? null : calibrationSentence(library.calibration);
  const tops = library === null ? null : topsSentence(library.calibration);
  return (
    <div className="page">
      <PageTop
        title="Flights"
        back={{ href: addressOf({ page: "bench" }), word: "Bench" }}
        aside={entries.length === 0 ? undefined : `${entries.length} on this device`}
      >
        <a className="act" href={addressOf({ page: "import" })}>
          Import
        </a>
      </PageTop>
      <main className="page-panel flights" id="main" tabIndex={-1} aria-busy={library === null && failure === null}>
        {failure !== null && (
          <Notice urgent>
            <b>The flights could not be looked through</b> ({failure}). They are kept.
          </Notice>
        )}
        {entries.length === 0 && (
          <p>No flight yet. Begin one on a plan's prep sheet, or take its log in at the plan's Debrief.</p>
        )}
        {past.length > 0 && (
          <Section title="All flights" aside="the newest first">
            <FlightTable past={past.toReversed()} entries={entries} units={units} />
          </Section>
        )}
        {library !== null && past.length > 0 && (
          <>
            <RocketTrends past={past} />
            <MotorTrends past={past} />
            <Section title="How the odds held" aside="all flights that have odds and an outcome">
              <p className="second">{words}</p>
              {tops !== null && <p className="second">{tops}</p>}
              {library.calibration.bins.some(({ flights }) => flights > 0) && (
                <TrendCalibration bins={library.calibration.bins} sentence={words ?? ""} />
              )}
            </Section>
          </>
        )}
      </main>
    </div>
  );
}
