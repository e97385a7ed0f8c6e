export type { Entry } from "./entry.js";
export type { ImportReport, TakenIn } from "./exchange.js";
export type { UndoResult } from "./history.js";
export {
  useEntries,
  useEntriesIf,
  useEntry,
  useEntryPart,
  useHistory,
  useListing,
  usePersistence,
  useSaving,
  useSettings,
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
