export type { Edit, Entry, Unreadable } from "./entry.js";
export type { ImportReport, TakenIn } from "./exchange.js";
export { readField, writeField } from "./field.js";
export type { Step, UndoResult } from "./history.js";
export {
  useEntries,
  useEntry,
  useHistory,
  usePersistence,
  useSaving,
  useSettings,
} from "./hooks.js";
export type { Persistence } from "./persistence.js";
export type { FailedSaving, Saving } from "./saving.js";
export type { Settings } from "./settings.js";
export {
  addDocument,
  changeDocuments,
  documentSource,
  endMerge,
  exportDocuments,
  exportEverything,
  exportInParts,
  importInto,
  installWorkedExample,
  keepBrief,
  openStore,
  rawFile,
  readBrief,
  redo,
  retrySaving,
  setField,
  settingsNow,
  storeFiles,
  undo,
  wipe,
} from "./the-store.js";
