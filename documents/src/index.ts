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
export { type DescentData, descentData, type FlightData, flightData, speedOf } from "./answer/flight-data.js";
export type { GivenData, WindData } from "./answer/given-data.js";
export { type Checked, checkLoaded } from "./check.js";
export { type CsvThrust, type ReadThrust, readThrust } from "./csv/thrust.js";
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
  GivenFile,
  Imported,
  ImportedCurve,
  ImportedEntry,
  ImportOptions,
} from "./exchange/exchange.js";
export { exportLibraries, exportLibrary } from "./exchange/export-library.js";
export { flatPath, Paths } from "./exchange/flat-path.js";
export { importFiles } from "./exchange/import-files.js";
export { type FileFailure, type FileSource, memoryFiles, resolvePath } from "./file-source.js";
export { checkField } from "./forms/check-field.js";
export { fieldAt } from "./forms/field-at.js";
export { type FieldPath, stepsOf } from "./forms/field-path.js";
export type { FieldShape, Holds } from "./forms/field-shape.js";
export { spellings } from "./forms/spellings.js";
export type { Fault, Issue } from "./issue.js";
export type { FieldDocument } from "./kinds/field/schema.js";
export { type Boundary, type FieldZones, fieldZones, type Place } from "./kinds/field/zones.js";
export type { FlightDocument } from "./kinds/flight/schema.js";
export type { FlyerDocument } from "./kinds/flyer/schema.js";
export {
  type Document,
  type Documents,
  isKind,
  type Kind,
  type KindOfDocument,
  kindNames,
  kinds,
} from "./kinds/kinds.js";
export type { LibraryDocument } from "./kinds/library/schema.js";
export type { LogDocument } from "./kinds/log/schema.js";
export type { MotorDocument } from "./kinds/motor/schema.js";
export { motorToEngine } from "./kinds/motor/to-engine.js";
export {
  type Reading,
  type ReadingInputs,
  type ReadingMeans,
  readingMeans,
  withReading,
} from "./kinds/motor-in-hand/readings.js";
export type { MotorInHandDocument } from "./kinds/motor-in-hand/schema.js";
export { cutSoFar } from "./kinds/motor-in-hand/to-engine.js";
export type { PlanDocument } from "./kinds/plan/schema.js";
export type { RocketDocument } from "./kinds/rocket/schema.js";
export { type RocketSurroundings, recoveryToEngine, rocketToEngine } from "./kinds/rocket/to-engine.js";
export { si } from "./kinds/si.js";
export type { ToolDocument } from "./kinds/tool/schema.js";
export { toolToEngine } from "./kinds/tool/to-engine.js";
export { type Loaded, type LoadedNode, loadAny } from "./load.js";
export { type LoadedPlan, loadPlan, type Placed, type PlacedMotor, type PlanParts, partsOf } from "./load-plan.js";
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
export { jsonSchemaOf } from "./schemas.js";
export { type PlanContext, planToEngine, type ToEngine } from "./to-engine.js";
export { type BackUpNote, backUpHead, backUpNote, backUpSentences } from "./words/back-up.en.js";
export { basisLines } from "./words/basis.en.js";
export { type CautionTopic, cautions } from "./words/cautions.en.js";
export { type CheckLine, checkLine, verdictWords } from "./words/check-lines.en.js";
export { wordForCheck, wordForWarning, wordsForCheck } from "./words/checks.en.js";
export { type CutKind, howCell, kindOfCut, piecesWords, takeOutWords } from "./words/cut.en.js";
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
  type Headline,
  headline,
  headlineSentence,
  noDelayWords,
  oddsWords,
  stopSentences,
  suggestedSetting,
} from "./words/headline.en.js";
export { asksForCut, showsCuts, twoCutsSentence, weatherSentence } from "./words/home-cut.en.js";
export { acceptedWords, doubtLine, foundWords, issueLine, issueSentence } from "./words/issues.en.js";
export { type LookOut, lookOutSentences } from "./words/look-out.en.js";
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
export { wordForHelp, wordForOutcome, wordForReason, wordForWhy } from "./words/reasons.en.js";
export { cleanAndHoldsSentence, openingColumnsNote } from "./words/settings.en.js";
export { delayShareSentence, driversSentence, rankedDrivers } from "./words/spread.en.js";
export { unopenedSentences } from "./words/unopened.en.js";
export { type WhySentences, whySentences } from "./words/why.en.js";
