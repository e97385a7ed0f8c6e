export { defaultPackingOptions } from "@delaywright/engine";
export type {
  ClimbData,
  DebriefCurves,
  DebriefData,
  DebriefEvent,
  DebriefNote,
  FindingsData,
  FlownDelayData,
  FlownEventData,
  FlownOutcome,
  FlownTopData,
  KnowledgeData,
  LearnedData,
  NextData,
  NextOddsData,
  PastFlightData,
  PredictedData,
  RecordData,
  SetFrom,
  UntaughtCode,
} from "./answer/debrief-data.js";
export {
  type Answer,
  type CutData,
  cutData,
  type DecisionData,
  decisionData,
  type SettingData,
  settingData,
  type ToCutData,
} from "./answer/decision-data.js";
export type { FactorData } from "./answer/factor-data.js";
export { type DescentData, descentData, type FlightData, flightData, speedOf } from "./answer/flight-data.js";
export type { GivenData, WindData } from "./answer/given-data.js";
export {
  type PrepBrief,
  type PrepBriefInputs,
  type PrepData,
  type PrepFigures,
  type PrepTarget,
  prepBrief,
  prepData,
} from "./answer/prep-data.js";
export {
  type MotorCutData,
  type MotorRowData,
  motorRowData,
  type RankedData,
  type RefusedData,
  type ShortlistData,
  shortlistData,
  type UnjudgedData,
} from "./answer/shortlist-data.js";
export {
  type StabilityColumns,
  type StabilityData,
  type StabilityMoment,
  type StabilityWhich,
  stabilityData,
} from "./answer/stability-data.js";
export {
  type LargestSwing,
  type SteadinessData,
  type SteadinessFlights,
  type SwingData,
  steadinessData,
} from "./answer/steadiness-data.js";
export { type WindowData, windowData } from "./answer/window-data.js";
export { type CardCode, cardCode, type ReadCardCode, readCardCode } from "./card/card-code.js";
export { type CardData, type CardDelay, type CardInputs, cardData } from "./card/card-data.js";
export { type DeskPlan, deskIssue, deskPlan } from "./card/card-desk.js";
export { type CardPage, type CardPageOptions, cardPage } from "./card/card-page.js";
export { type CardPaper, cardPapers } from "./card/card-style.js";
export type { DeskAssumption, DeskEntry, DeskField, DeskFields } from "./card/desk-entry.js";
export { isCard } from "./card/is-card.js";
export { type CodePath, codePath } from "./card/qr-path.js";
export { type Checked, checkLoaded } from "./check.js";
export { type CsvThrust, type ReadThrust, readThrust, readThrustFile } from "./csv/thrust.js";
export { type Debriefed, debrief, type PreparedDebrief, prepareDebrief } from "./debrief/debrief.js";
export type { DebriefInputs, DebriefRecord } from "./debrief/debrief-inputs.js";
export { debriefedFlight, flightOfPlan, type RecordNamed } from "./debrief/flight-document.js";
export { flownParts } from "./debrief/flown-parts.js";
export type { OpenedFlight } from "./debrief/open-flown.js";
export {
  eventHints,
  flightNumber,
  type OpenedRecord,
  openRecord,
  type RecordChoice,
} from "./debrief/open-record.js";
export { type PastFlight, type PastFlightFacts, pastFlight, pastFlightOf } from "./debrief/past-flight.js";
export { pastOdds } from "./debrief/past-odds.js";
export { hasOtherDrag, type Learner, learnerOf, learnFrom } from "./debrief/teach.js";
export { type Decoded, decodeText, LARGEST_FILE } from "./decode.js";
export {
  defaultDepthError,
  defaultInertiaSpread,
  defaultLimits,
  defaultRocket,
  defaultSpread,
  defaultWeather,
} from "./defaults.js";
export type {
  Drafts,
  ExportEntry,
  ExportRecord,
  GivenFile,
  Imported,
  ImportedCurve,
  ImportedEntry,
  ImportedRecord,
  ImportOptions,
} from "./exchange/exchange.js";
export { exportLibraries, exportLibrary } from "./exchange/export-library.js";
export { flatPath, Paths } from "./exchange/flat-path.js";
export { importFiles } from "./exchange/import-files.js";
export { recordPath } from "./exchange/records.js";
export type { FileFailure } from "./file-failure.js";
export { type FileSource, memoryFiles, resolvePath } from "./file-source.js";
export { checkField } from "./forms/check-field.js";
export { fieldAt } from "./forms/field-at.js";
export { type FieldPath, stepsOf } from "./forms/field-path.js";
export type { FieldShape, Holds } from "./forms/field-shape.js";
export { spellings } from "./forms/spellings.js";
export type { Fault, Issue } from "./issue.js";
export type { FieldDocument } from "./kinds/field/schema.js";
export { type Boundary, type FieldZones, fieldZones, type Place } from "./kinds/field/zones.js";
export type { FlightDocument } from "./kinds/flight/schema.js";
export {
  newFlight,
  prepEvents,
  type SignedFlight,
  type SigningHand,
  type SigningInputs,
  type SignOff,
  signMisfire,
  signOff,
  signScrub,
  takeBackSignOff,
} from "./kinds/flight/sign-offs.js";
export type { FlyerDocument } from "./kinds/flyer/schema.js";
export {
  type Document,
  type Documents,
  isKind,
  type Kind,
  type KindOfDocument,
  kindNames,
  kinds,
  pathIn,
} from "./kinds/kinds.js";
export type { LibraryDocument } from "./kinds/library/schema.js";
export type { LogDocument } from "./kinds/log/schema.js";
export type { MotorDocument } from "./kinds/motor/schema.js";
export { chargeToEngine, motorToEngine } from "./kinds/motor/to-engine.js";
export {
  type Reading,
  type ReadingInputs,
  type ReadingMeans,
  readingMeans,
  withReading,
} from "./kinds/motor-in-hand/readings.js";
export type { MotorInHandDocument } from "./kinds/motor-in-hand/schema.js";
export { cutSoFar } from "./kinds/motor-in-hand/to-engine.js";
export type { LearnedDocument } from "./kinds/plan/learned.js";
export {
  type LearnedOf,
  learnedFor,
  learnedNames,
  learnedToDocument,
  learnedToEngine,
} from "./kinds/plan/learned-to-engine.js";
export type { PlanDocument } from "./kinds/plan/schema.js";
export type { RocketDocument } from "./kinds/rocket/schema.js";
export {
  packingToEngine,
  type RocketSurroundings,
  recoveryToEngine,
  rocketToEngine,
} from "./kinds/rocket/to-engine.js";
export type { RuleSetDocument } from "./kinds/rule-set/schema.js";
export { si } from "./kinds/si.js";
export type { ToolDocument } from "./kinds/tool/schema.js";
export { toolToEngine } from "./kinds/tool/to-engine.js";
export { type Loaded, type LoadedNode, loadAny } from "./load.js";
export {
  type LoadedPlan,
  loadPlan,
  type Placed,
  type PlacedMotor,
  type PlanParts,
  partsOf,
  placed,
  placedMotor,
} from "./load-plan.js";
export { headingsKey } from "./log/headings-key.js";
export { LARGEST_LOG } from "./log/log-bytes.js";
export { logQuantities, movingQuantities } from "./log/log-quantities.js";
export type {
  LogColumn,
  LogColumnReason,
  LogDoubt,
  LogDoubtCode,
  LogLayout,
  LogMapping,
  LogPreview,
  LogQuantity,
  LogUnitReason,
  ReadLog,
  ReadLogRecord,
  UnreadLog,
  UnreadText,
} from "./log/log-types.js";
export { type MeasuredQuantity, unitChoices as logUnitChoices } from "./log/log-units.js";
export { logPreview, readLog } from "./log/read-log.js";
export { columnName } from "./log/resolve-mapping.js";
export { type Migrated, migrate, type Raw, type VersionChain } from "./migrate.js";
export { otherRocket } from "./other-rocket.js";
export { type Doubt, documentDoubts, nodeDoubts, planDoubts } from "./plausible.js";
export { defaultFormatOptions, type FormatOptions, formatQuantity, fractionOfInch } from "./quantity/format.js";
export { GLUE } from "./quantity/glue.js";
export { type ParsedQuantity, parseQuantity, type QuantityCode, type QuantityIssue } from "./quantity/parse.js";
export { type ShownOptions, shownQuantity, systemOf } from "./quantity/shown.js";
export { type AmountParts, amountIn, amountParts, type Measure, type UnitSystem } from "./quantity/systems.js";
export { type Dimension, type Unit, units } from "./quantity/units.js";
export { type Read, type ReadOptions, readBytes, readDocument, readValue } from "./read.js";
export { ReadBefore } from "./read-before.js";
export { jsonSchemaOf } from "./schemas.js";
export { type MotorName, type MotorShelf, motorShelf, type UnreadMotor } from "./shortlist/motor-shelf.js";
export { type OpenContext, type OpenedPlan, openPlan } from "./shortlist/open-plan.js";
export { type PlanContext, planToEngine, type ToEngine } from "./to-engine.js";
export { type BackUpNote, backUpHead, backUpNote, backUpSentences } from "./words/back-up.en.js";
export { basisLines } from "./words/basis.en.js";
export { binWords, calibrationSentence, topsSentence } from "./words/calibration.en.js";
export { assumptionWords, deskQuantity } from "./words/card-desk.en.js";
export { type CautionTopic, cautions } from "./words/cautions.en.js";
export {
  bayChargeSentences,
  chargeCaveatSentences,
  chargeStops,
  chargeStopWords,
  motorChargeSentences,
  staticPortSentence,
} from "./words/charge.en.js";
export { type CheckLine, checkFigures, checkLine, verdictWords } from "./words/check-lines.en.js";
export { wordForCheck, wordsForCheck } from "./words/checks.en.js";
export { type CutKind, howCell, kindOfCut, piecesWords, takeOutWords } from "./words/cut.en.js";
export {
  coastFlownSentence,
  debriefHead,
  fittedClimbSentence,
  flownDelayWords,
  flownOutcomeWords,
  oddsGivenSentence,
  openingRangeSentence,
  setFromWords,
  setSentence,
  topBandSentence,
} from "./words/debrief.en.js";
export { eventReasonWords, eventWords, meaningSentence, toldEvents } from "./words/debrief-events.en.js";
export { nextSentence, nextTopSentence } from "./words/debrief-next.en.js";
export { flawSentences, noteSentences, recordSentence } from "./words/debrief-record.en.js";
export { wordForInput } from "./words/drivers.en.js";
export {
  climbSentence,
  coastSentence,
  descentSentence,
  marginWords,
  stabilitySentence,
  strengthSentence,
} from "./words/flight.en.js";
export {
  choiceSentence,
  doNotFlyWords,
  flownSetting,
  type Headline,
  headline,
  headlineSentence,
  noDelayWords,
  oddsWords,
  statedHeadline,
  stopSentences,
  suggestedSetting,
} from "./words/headline.en.js";
export { asksForCut, showsCuts, twoCutsSentence, weatherSentence } from "./words/home-cut.en.js";
export { acceptedWords, doubtLine, foundWords, issueLine, issueSentence } from "./words/issues.en.js";
export {
  delayLearnedSentence,
  delayRangeWords,
  dragSentence,
  factorCell,
  factorWords,
  impulseSentence,
  learnedBasis,
  sigmaWords,
  untaughtSentences,
  untaughtWords,
} from "./words/learned.en.js";
export {
  logColumnName,
  logColumnWhy,
  logDoubtSentence,
  logFaultSentence,
  logQuantityWords,
  logReadSentence,
} from "./words/log.en.js";
export { type LookOut, lookOutSentences, warningSentences } from "./words/look-out.en.js";
export {
  type CheckCounts,
  checkCounts,
  type MissingFact,
  missingFacts,
  missingFieldSentences,
  notCheckedSentence,
} from "./words/not-checked.en.js";
export {
  amount,
  decimals,
  delayColumn,
  delayNumber,
  delayWords,
  depthWords,
  glued,
  holdsCell,
  holdsPercent,
  percent,
  percentCell,
  placeWords,
  shareWords,
  upperFirst,
} from "./words/numbers.en.js";
export {
  aboveWords,
  basisWarning,
  belowWords,
  oddsProviso,
  openingSentences,
  openingWords,
  restsWords,
  timingWords,
} from "./words/openings.en.js";
export { type OverCutSentences, type OverCutWay, overCutSentences } from "./words/over-cut.en.js";
export { packingSentences, sizeWords } from "./words/packing.en.js";
export { type PackingGap, type PackingPart, type PackingTopic, packingParts } from "./words/packing-parts.en.js";
export {
  type PrepBranchLines,
  type PrepLine,
  prepAuthority,
  prepBranchLines,
  prepBranchWords,
  prepLines,
  prepPhaseWords,
  prepTitle,
} from "./words/prep.en.js";
export { prepRefusalWords } from "./words/prep-reasons.en.js";
export { wordForHelp, wordForOutcome, wordForReason, wordForWhy } from "./words/reasons.en.js";
export { type RuleWords, rulesOfClubs, ruleWords } from "./words/rules.en.js";
export { cleanAndHoldsSentence, openingColumnsNote } from "./words/settings.en.js";
export {
  aimChoices,
  aimNote,
  aimWords,
  motorCutWords,
  type RefusalWords,
  refusalFound,
  refusalLimit,
  refusalWords,
  rowNotes,
  shortlistBasis,
  shortlistColumnsNote,
  shortlistHead,
  wordForRefusal,
} from "./words/shortlist.en.js";
export { delayShareSentence, driversSentence, rankedDrivers } from "./words/spread.en.js";
export {
  calibresWords,
  guideExitAngleSentence,
  stabilityCells,
  stabilityColumnsNote,
  stabilityHeads,
  stabilityVerdictSentences,
} from "./words/stability.en.js";
export { modelsApartSentence, swingSentences } from "./words/steadiness.en.js";
export { unopenedSentences } from "./words/unopened.en.js";
export { wordForWarning } from "./words/warnings.en.js";
export { type WhySentences, whySentences } from "./words/why.en.js";
export {
  edgeCell,
  endWords,
  isGood,
  tiltWords,
  todaysTilt,
  todaysWind,
  windBound,
  windBoundSaid,
  windowBasis,
  windowNote,
  windowSentence,
  windowStops,
  windowTodaySentence,
} from "./words/window.en.js";
