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
export { type FileFailure, type FileSource, memoryFiles, resolvePath } from "./file-source.js";
export type { Fault, Issue } from "./issue.js";
export type { FieldDocument } from "./kinds/field/schema.js";
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
export { type Doubt, documentDoubts, nodeDoubts, planDoubts } from "./plausible.js";
export { defaultFormatOptions, type FormatOptions, formatQuantity, fractionOfInch } from "./quantity/format.js";
export { type ParsedQuantity, parseQuantity, type QuantityCode, type QuantityIssue } from "./quantity/parse.js";
export { type Dimension, type Unit, units } from "./quantity/units.js";
export { type Read, type ReadOptions, readBytes, readDocument, readValue } from "./read.js";
export { jsonSchemaOf } from "./schemas.js";
export { type PlanContext, planToEngine, type ToEngine } from "./to-engine.js";
export { type CautionTopic, cautions } from "./words/cautions.en.js";
export { wordForCheck, wordForWarning, wordsForCheck } from "./words/checks.en.js";
export { wordForInput } from "./words/drivers.en.js";
export { doubtLine, issueLine, issueSentence } from "./words/issues.en.js";
export { wordForHelp, wordForOutcome, wordForReason, wordForWhy } from "./words/reasons.en.js";
