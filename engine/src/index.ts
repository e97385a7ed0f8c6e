export { fieldAir, padTemperature } from "./air/at-field.js";
export { densityAltitude } from "./air/density-altitude.js";
export type { Air, FieldAir } from "./air/field-air.js";
export { type FieldGravity, fieldGravity, normalGravity, standardGravityAt } from "./air/gravity.js";
export { saturationPressure, virtualTemperature } from "./air/humidity.js";
export { geopotential, standardAir, standardAirAt } from "./air/standard.js";
export { type AirTable, airTable, tableAir } from "./air/table.js";
export { dynamicViscosity } from "./air/viscosity.js";
export {
  type AgainstFlight,
  againstFlight,
  type EventDifference,
  type EventMeaning,
  type PredictedEvent,
  type PredictedOpening,
} from "./debrief/against-flight.js";
export type { ClimbFit, FlownDelay } from "./debrief/climb-fit.js";
export type { EventHints } from "./debrief/event-hints.js";
export { findEvents } from "./debrief/find-events.js";
export { type FitClimbOptions, fitClimb } from "./debrief/fit-climb.js";
export type { FlightRecord, FlightSpan, RecordFlaw } from "./debrief/flight-record.js";
export { flightsIn } from "./debrief/flights-in.js";
export { type FlownDelayHow, flownDelay } from "./debrief/flown-delay.js";
export { cutShort, type FlownOpening, flownOpening, flownOutcome } from "./debrief/flown-opening.js";
export {
  type EventName,
  type EventReason,
  eventNames,
  type FoundEvent,
  type FoundEvents,
} from "./debrief/found-events.js";
export type { LogMark, LogSamples } from "./debrief/log-samples.js";
export { flightRecord } from "./debrief/make-record.js";
export { movableRange, moveEvent } from "./debrief/move-event.js";
export { thinned } from "./debrief/thinned.js";
export type { CutPlan } from "./decision/cut-plan.js";
export { decide } from "./decision/decide.js";
export { type DecideOptions, defaultDecideOptions, defaultDrawsOf } from "./decision/decide-options.js";
export type {
  BallastRange,
  Check,
  CheckCode,
  Decision,
  Driver,
  DriverName,
  HelpCode,
  MarginAt,
  Odds,
  OutcomeOdds,
  OverCut,
  ReasonCode,
  Setting,
  Share,
  Stability,
  SuitedRocket,
  ToCut,
  Unopened,
  Warning,
  WarningCode,
} from "./decision/decision.js";
export { type DelayConditions, type DelayScatter, delayScatter } from "./decision/delay-scatter.js";
export type { Density } from "./decision/density.js";
export { type DepthReading, depthReading, type ReadDelay } from "./decision/depth-reading.js";
export {
  type FlightSampleChunk,
  type FlightSampleSpec,
  joinFlightSamples,
  openingOutcomes,
  prepareFlightSample,
} from "./decision/flight-sample.js";
export { type FanPart, type HeightFan, heightFan } from "./decision/flight-sample-fan.js";
export { type FlightSampleOptions, flightSampleSpec } from "./decision/flight-sample-spec.js";
export type {
  CutSoFar,
  CuttingTool,
  DecisionInputs,
  FieldLimits,
  Limits,
  Removal,
  StatedPacking,
  WeatherRange,
} from "./decision/inputs.js";
export type { Landed, Landings, Packing } from "./decision/landed.js";
export { type EllipsePair, type GroundEllipse, landingEllipses, spreadEllipse } from "./decision/landings.js";
export type { DrawMemory, EnsembleRunner } from "./decision/odds.js";
export { type DelayOdds, type OddsOverDelayOptions, oddsOverDelay } from "./decision/odds-over-delay.js";
export { type Strength, strengthOf } from "./decision/opening-rules.js";
export type { OtherRocket } from "./decision/over-cut.js";
export { type PlanWindow, planWindow, standingDelay } from "./decision/plan-window.js";
export { achievableSettings, type Element } from "./decision/removals.js";
export { setDelayError } from "./decision/setting-scatter.js";
export { cutAllowed } from "./decision/settings.js";
export {
  type Candidate,
  candidateIssues,
  type OpenPlan,
  planWith,
  type StatedOfMotor,
} from "./decision/shortlist/candidate.js";
export { type RefusalGroup, refusalGroups } from "./decision/shortlist/groups.js";
export { judgeMotor } from "./decision/shortlist/judge-motor.js";
export type {
  BrokenMotor,
  CandidateFigures,
  DrawnFigures,
  JudgedMotor,
  LaunchFigures,
  MotorCut,
  MotorFinding,
  MotorLook,
  MotorLookCode,
  NotChecked,
  RankedMotor,
  Refusal,
  RefusalCode,
  RefusedMotor,
} from "./decision/shortlist/judged-motor.js";
export { type Aim, orderedBy } from "./decision/shortlist/order.js";
export {
  defaultShortlistOptions,
  type MotorRunner,
  type Shortlist,
  type ShortlistOptions,
  shortlist,
} from "./decision/shortlist/shortlist.js";
export type { ShortlistSpec } from "./decision/shortlist/spec.js";
export type { StatedFacts } from "./decision/stated-facts.js";
export { flightWarnings } from "./decision/warnings.js";
export {
  defaultWindowDraws,
  type OddsThatEnd,
  type WeatherWindow,
  type WeatherWindowOptions,
  type WindowEnd,
  weatherWindow,
} from "./decision/weather-window.js";
export { type TrajectoryColumns, trajectoryColumns } from "./flight/columns.js";
export { type Descent, descend, type OpenedCanopy } from "./flight/descent.js";
export { fly } from "./flight/fly.js";
export type { FlightInputs, Guide } from "./flight/inputs.js";
export {
  type Derivatives,
  type EndReason,
  type EventHit,
  type EventSpec,
  type IntegrateOptions,
  type Integration,
  integrate,
} from "./flight/integrate.js";
export {
  defaultFlightOptions,
  type FlightOptions,
  type QuickModel,
  type ResolvedFlightOptions,
  type TurningModel,
} from "./flight/options.js";
export type { FlightEnd, FlightResult, Peaks } from "./flight/result.js";
export type { RigidSwitches } from "./flight/rigid/switches.js";
export {
  leastDamping,
  leastMargin,
  type MarginOverMach,
  marginOverMach,
  mostMargin,
  type StabilityFinding,
  type StabilityOverFlight,
  stabilityOverFlight,
} from "./flight/stability-over-flight.js";
export type { Kinematics, Leg, Phase } from "./flight/trajectory.js";
export { withScales } from "./flight/with-scales.js";
export { InputError, type Issue } from "./issues.js";
export type { AppliedLearning } from "./learning/applied-learning.js";
export {
  type Calibration,
  type CalibrationBin,
  calibration,
  type PastOdds,
  type ShareSeen,
} from "./learning/calibration.js";
export { learn } from "./learning/learn.js";
export type { Learned, LearnedDelay, TaughtFlight } from "./learning/learned.js";
export { type DelayOutlook, learnedDelayAt, ofAnotherLot } from "./learning/learned-delay.js";
export type { LearningPriors } from "./learning/priors.js";
export { withLearned, withoutLearned } from "./learning/with-learned.js";
export { leastSquares } from "./math/least-squares.js";
export { normalCdf, normalQuantile } from "./math/normal.js";
export { neverHappened, wilsonInterval } from "./math/proportion.js";
export { rootBetween } from "./math/root.js";
export { studentCdf, studentQuantile } from "./math/student.js";
export type { Vec3 } from "./math/vec3.js";
export { type Burn, burnOf } from "./motor/burn.js";
export { thrustIssues } from "./motor/checks.js";
export { delayOfDepth, depthOfDelay, remainingDelay } from "./motor/delay.js";
export { type Designation, parseDesignation } from "./motor/designation.js";
export { certificationLevel, isHighPowerMotor, isHighPowerRocket, type MotorFigures } from "./motor/high-power.js";
export { type Impulse, prepareImpulse } from "./motor/impulse.js";
export { type LabelFinding, labelCheck } from "./motor/label-check.js";
export type { DelayClock, DelayElement, Motor, ThrustCurve } from "./motor/motor.js";
export { classLimits, motorClass } from "./motor/motor-class.js";
export { motorMassAt } from "./motor/propellant-mass.js";
export { prepareThrust } from "./motor/thrust-curve.js";
export { type BayFindings, bayFindings } from "./packing/bay-findings.js";
export { canopyData, descentSpeed, fillDistance, fillTime, nominalArea } from "./packing/canopy.js";
export { type ClusterCount, clusterDescentSpeed, clusterDragFactor } from "./packing/canopy-cluster.js";
export {
  type CanopySize,
  canopyForSpeed,
  canopySizes,
  type LandingAim,
  spillHoleAreaLeft,
  usualLandingSpeeds,
} from "./packing/canopy-size.js";
export {
  type BaySize,
  bayVolume,
  type ChargeCaveat,
  chargeCaveats,
  chargeForPressure,
  endForce,
  powderGas,
  pressureForForce,
  pressureOfCharge,
  usualPressures,
} from "./packing/ejection-charge.js";
export { type HarnessCode, harnessCode, usualHarnessLength, usualHarnessRatios } from "./packing/harness.js";
export {
  landingEnergy,
  landingEnergyLimit,
  type SectionLanding,
  sectionLandings,
  speedForEnergy,
} from "./packing/landing-energy.js";
export {
  type GroundPoint,
  insidePolygon,
  insideZone,
  type PlaceColumns,
  shareInAny,
  shareInside,
  shareOutside,
  type Zone,
} from "./packing/landing-zone.js";
export {
  judgeMotorCharge,
  type MotorCharge,
  type MotorChargeCode,
  type MotorChargeFinding,
  type MotorChargeJudgement,
} from "./packing/motor-charge.js";
export { type OpeningFinding, type OpeningFindings, openingFindings } from "./packing/opening-findings.js";
export { type Opening, type OpeningLoad, openingLoad, strengthSpeed } from "./packing/opening-load.js";
export {
  type CanopyFindings,
  defaultPackingOptions,
  type HarnessFindings,
  type LandingFindings,
  type PackingFindings,
  packingOf,
  type StaticPortFindings,
  staticPortFindings,
} from "./packing/packing.js";
export type {
  EjectionBay,
  LandingPoint,
  OpeningPoint,
  PackingInputs,
  PackingOptions,
} from "./packing/packing-inputs.js";
export { packingIssues } from "./packing/packing-issues.js";
export type { Canopy, CanopyShape, Recovery } from "./packing/recovery.js";
export {
  defaultSeparationMargin,
  type NeededCharge,
  neededCharge,
  type PressureBasis,
  type Separation,
  separationOf,
} from "./packing/separation.js";
export {
  type PinCount,
  type PinLoad,
  type PinsLoad,
  type ShearPin,
  type ShearPinCaveat,
  shearPin,
  shearPinCaveats,
  shearPins,
  shearPinsLoad,
} from "./packing/shear-pins.js";
export { staticPortArea, staticPortDiameter } from "./packing/static-port.js";
export {
  type LoadedPart,
  type OpeningCaveat,
  type OpeningStrength,
  openingCaveats,
  openingStrength,
  type Rating,
  weakestOf,
} from "./packing/weakest-part.js";
export {
  misfireFlight,
  type PrepAct,
  type PrepHand,
  type PrepRefusal,
  scrubFlight,
  signStep,
  unsignStep,
} from "./prep/acts.js";
export type { PrepBasis, PrepFacts } from "./prep/facts.js";
export type { PrepEvent, PrepSigned, PrepTurned, PrepUnsigned } from "./prep/log.js";
export {
  type DueCause,
  type PrepHindrance,
  type PrepState,
  type PrepStepState,
  prepState,
} from "./prep/prep-state.js";
export { prepStepIds, prepSteps } from "./prep/prep-steps.js";
export { launchRules, type SafetyCodeRule } from "./prep/safety-code.js";
export type {
  Precondition,
  PrepBranch,
  PrepHazard,
  PrepPhase,
  PrepReason,
  PrepStep,
  PrepStepId,
} from "./prep/step.js";
export { type BodyLift, bodyLift, cpWithBodyLift } from "./rocket/body-lift.js";
export { rocketIssues } from "./rocket/checks.js";
export { dragBreakdown } from "./rocket/drag/build-up.js";
export { type DragTable, dragCoefficient, dragFromTable, dragTable } from "./rocket/drag-table.js";
export { estimateInertia, inertiaFromSwing } from "./rocket/inertia.js";
export { staticMargin } from "./rocket/margin.js";
export { airframeWithBallast, loadedAt, type MassState, type MotorGeometry } from "./rocket/mass.js";
export { cpOf, normalForceParts, type Part, slopeOf } from "./rocket/normal-force/parts.js";
export { partsWithStatedCp } from "./rocket/normal-force/stated-cp.js";
export { type OutlinePoints, outlinePoints } from "./rocket/outline-points.js";
export type {
  Ballast,
  DragSource,
  FinEdge,
  FinSet,
  FinShape,
  Fitting,
  InertiaSource,
  Nose,
  NoseShape,
  Rocket,
  ThrustLine,
  Transition,
} from "./rocket/rocket.js";
export { type ValidityCode, validityLimits, validityWarnings } from "./rocket/validity.js";
export { withoutMotor } from "./rocket/without-motor.js";
export { ruleById, rules } from "./rules/all-rules.js";
export { type AviationClass, type AviationDuty, aviationClass, aviationDuties } from "./rules/aviation-class.js";
export { checkRules, leastMarginOf, type RuleFinding, type RuleSet } from "./rules/check-rules.js";
export { type ClubIssue, type ClubLimit, type ClubRules, clubIssues } from "./rules/club.js";
export { type DistanceRow, distanceRow, modelSiteDimension, safetyCodeDistances } from "./rules/distances.js";
export type { Extremes, FactName, RuleFacts } from "./rules/facts.js";
export type {
  Basis,
  ClubIssueCode,
  DetailCode,
  Finding,
  Rule,
  RuleLimits,
  RuleSetName,
  RuleStatus,
  RuleTerms,
  RuleTitle,
  RuleVerdict,
} from "./rules/rule.js";
export { drawnInputs, inputsWith, uncertainInputCount } from "./spread/drawn-inputs.js";
export { noSpread } from "./spread/drawn-values.js";
export { type EnsembleSpec, type PreparedEnsemble, prepareEnsemble } from "./spread/ensemble.js";
export {
  chunkBytes,
  chunkIn,
  type EnsembleChunk,
  joinChunks,
  memoryOf,
  partOf,
  putChunk,
} from "./spread/ensemble-chunk.js";
export { turbulenceSeed } from "./spread/fly-draw.js";
export type { OpeningSpec } from "./spread/opening-spec.js";
export { type Shares, varianceShares } from "./spread/sensitivity.js";
export { sobolInteger } from "./spread/sobol.js";
export type { Spread } from "./spread/spread.js";
export { beaufortForce, beaufortSpeed } from "./wind/beaufort.js";
export { type DrydenConvention, type DrydenScales, drydenScales } from "./wind/dryden.js";
export { windVelocity } from "./wind/from-azimuth.js";
export { oneCosineGust } from "./wind/gust.js";
export { logLawRatio, roughnessLengths } from "./wind/log-law.js";
export { powerLawRatio, terrainExponents } from "./wind/power-law.js";
export type { AloftWind, PowerLawWind, WindProfile } from "./wind/profile.js";
export { windAt } from "./wind/wind-at.js";
