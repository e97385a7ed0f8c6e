export type { Entry } from "./entry.js";
export type { ImportReport, TakenIn } from "./exchange.js";
export type { Step, UndoResult } from "./history.js";
export {
  historyNow,
  useEntries,
  useEntriesIf,
  useEntry,
  useEntryPart,
  useListing,
  usePersistence,
  useSaving,
  useSettings,
  useStepLabel,
} from "./hooks.js";
export type { Persistence } from "./persistence.js";
export type { FailedSaving } from "./saving.js";
export type { Settings } from "./settings.js";
export {
  addDocument,
  changeDocuments,
  documentSource,
  entryNow,
  exportDocuments,
  exportInParts,
  importInto,
  installWorkedExample,
  keepBrief,
  keepRecord,
  openStore,
  rawFile,
  readBrief,
  readRecord,
  redo,
  retrySaving,
  setField,
  undo,
  wipe,
} from "./the-store.js";
export { keepTypedText, typedText } from "./typed-texts.js";
