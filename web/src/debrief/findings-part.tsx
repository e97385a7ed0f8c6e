import {
  coastFlownSentence,
  type DebriefData,
  debriefHead,
  fittedClimbSentence,
  flawSentences,
  noteSentences,
  oddsGivenSentence,
  openingRangeSentence,
  recordSentence,
  setSentence,
  topBandSentence,
  type UnitSystem,
} from "@delaywright/documents";

/** What was found out of a flight, a sentence each, the one that sums it up first. */
export function FindingsPart({ data, units }: { readonly data: DebriefData; readonly units: UnitSystem }) {
  const lines = [
    topBandSentence(data, units),
    openingRangeSentence(data),
    setSentence(data),
    coastFlownSentence(data),
    oddsGivenSentence(data),
    fittedClimbSentence(data, units),
  ].filter((line) => line !== null);
  const { record } = data;
  const worth = record === null ? [] : [recordSentence(record, units), ...flawSentences(record)];
  return (
    <>
      <p className="lead debrief-head">{debriefHead(data, units)}</p>
      <ul className="sheet-lines">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
        {noteSentences(data).map((line) => (
          <li key={line}>
            <b>{line}</b>
          </li>
        ))}
      </ul>
      <ul className="sheet-lines quiet">
        {worth.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}
