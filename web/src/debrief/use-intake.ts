import { LARGEST_LOG, type LogMapping } from "@delaywright/documents";
import { startTransition } from "react";
import { debriefClient } from "../compute/debrief-client.js";
import { entryNow, keepRecord, useEntries } from "../store/index.js";
import { type IntakeHold, noIntake } from "./intake.js";
import { keepLog, logOf, rememberedFor } from "./log-store.js";

/** Takes a log in: the file is read, its columns are shown, and it is kept once the flyer confirms them. */
export interface IntakeActs {
  readonly choose: (file: File) => void;
  readonly map: (mapping: LogMapping) => void;
  /** Shows the columns of a known mapping. */
  readonly change: () => void;
  /** Picks a flight of the record, from 1. */
  readonly pick: (number: number) => void;
  /** Keeps it with a flight. `number`: which flight of the record, null the only one. */
  readonly confirm: (flight: () => string, number: number | null) => void;
  readonly leave: () => void;
}

/** @param onUnkept told the path of a file that only this page holds, null where it is kept */
export function useIntake({ intake, set, latest }: IntakeHold, onUnkept: (source: string | null) => void): IntakeActs {
  const logs = useEntries("log");
  const fail = (name: string) => (error: unknown) =>
    set({ state: "failed", name, why: error instanceof Error ? error.message.slice(0, 200) : "it could not be read" });

  const choose = async (file: File): Promise<void> => {
    latest.current = file;
    if (file.size > LARGEST_LOG) {
      set({ state: "failed", name: file.name, why: `it has ${file.size} bytes; at most ${LARGEST_LOG} are read` });
      return;
    }
    set({ state: "reading", name: file.name });
    const guessed = await debriefClient.open(file.name, { bytes: file, gzip: false });
    if (guessed === null || latest.current !== file) return;
    const remembered = guessed.preview === null ? null : rememberedFor(guessed.preview.headingsKey, logs);
    const again = remembered === null ? null : await debriefClient.preview(remembered.mapping);
    if (latest.current !== file) return;
    const fits = again?.ok === true;
    const previewed = fits ? again : guessed;
    const mapping = previewed.preview?.mapping ?? null;
    // many columns are many fields: drawn in steps
    const known = fits ? remembered : null;
    startTransition(() =>
      set({ state: "shown", file, previewed, mapping, remembered: known, changes: false, number: null, busy: false }),
    );
  };

  const map = async (mapping: LogMapping): Promise<void> => {
    if (intake.state !== "shown") return;
    set({ ...intake, mapping, busy: true });
    const previewed = await debriefClient.preview(mapping);
    const told = { previewed, mapping: previewed.preview?.mapping ?? mapping, remembered: null, busy: false };
    // it may have been left meanwhile
    set((last) => (last.state === "shown" && last.file === intake.file ? { ...last, ...told } : last));
  };

  const confirm = async (flight: () => string, number: number | null): Promise<void> => {
    if (intake.state !== "shown" || intake.mapping === null) return;
    const { file, mapping, previewed } = intake;
    set({ state: "keeping", name: file.name });
    const { path: source, gzip } = await debriefClient.pack(file.name);
    onUnkept((await keepRecord(source, gzip)) ? null : source);
    debriefClient.rename(source);
    const headings = previewed.preview?.headingsKey ?? "";
    const path = flight();
    const before = entryNow(path)?.raw;
    const same = before == null ? null : logOf(before, logs);
    if (same === null || same.source !== source || JSON.stringify(same.mapping) !== JSON.stringify(mapping))
      keepLog(path, { name: file.name.replace(/\.[a-z0-9]{1,5}$/i, ""), source, mapping, headings, number });
    set(noIntake);
  };

  const name = intake.state === "shown" ? intake.file.name : "";
  return {
    // what became of a file matters no more once another was chosen
    choose: (file) => void choose(file).catch((error) => latest.current === file && fail(file.name)(error)),
    map: (mapping) => void map(mapping).catch(fail(name)),
    change: () => intake.state === "shown" && set({ ...intake, changes: true }),
    pick: (number) => intake.state === "shown" && set({ ...intake, number }),
    confirm: (flight, number) => void confirm(flight, number).catch(fail(name)),
    leave: () => set(noIntake),
  };
}
