import { LARGEST_LOG, type LogMapping } from "@delaywright/documents";
import { startTransition, useRef, useState } from "react";
import type { Previewed } from "../compute/debrief/protocol.js";
import { debriefClient } from "../compute/debrief-client.js";
import { entryNow, keepRecord, useEntries } from "../store/index.js";
import { keepLog, logOf, type Remembered, rememberedFor } from "./log-store.js";

/** A file that is being taken in. */
export type Intake =
  | { readonly state: "none" }
  | { readonly state: "reading"; readonly name: string }
  /** It is packed and written down. */
  | { readonly state: "keeping"; readonly name: string }
  | {
      readonly state: "shown";
      readonly file: File;
      readonly previewed: Previewed;
      /** The mapping that counts; null: nothing could be told yet. */
      readonly mapping: LogMapping | null;
      /** It was confirmed for a file before; null: it is new. */
      readonly remembered: Remembered | null;
      /** It is being read again under another mapping. */
      readonly busy: boolean;
    }
  | { readonly state: "failed"; readonly name: string; readonly why: string };

/** Takes a log in: the file is read, its columns are shown, and it is kept once the flyer confirms them. */
export interface IntakeActs {
  readonly choose: (file: File) => void;
  readonly map: (mapping: LogMapping) => void;
  /** Keeps it with a flight. `number`: which flight of the record, null the only one. */
  readonly confirm: (flight: () => string, number: number | null) => void;
  readonly leave: () => void;
}

const none: Intake = Object.freeze({ state: "none" });

/** @param onUnkept told the path of a file that only this page holds, null where it is kept */
export function useIntake(onUnkept: (source: string | null) => void): readonly [Intake, IntakeActs] {
  const [intake, set] = useState<Intake>(none);
  const logs = useEntries("log");
  const fail = (name: string) => (error: unknown) =>
    set({ state: "failed", name, why: error instanceof Error ? error.message.slice(0, 200) : "it could not be read" });

  const latest = useRef<File | null>(null);
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
    startTransition(() =>
      set({ state: "shown", file, previewed, mapping, remembered: fits ? remembered : null, busy: false }),
    );
  };

  const map = async (mapping: LogMapping): Promise<void> => {
    if (intake.state !== "shown") return;
    set({ ...intake, mapping, busy: true });
    const previewed = await debriefClient.preview(mapping);
    set({ ...intake, previewed, mapping: previewed.preview?.mapping ?? mapping, remembered: null, busy: false });
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
    set(none);
  };

  const name = intake.state === "shown" ? intake.file.name : "";
  return [
    intake,
    {
      // what became of a file matters no more once another was chosen
      choose: (file) => void choose(file).catch((error) => latest.current === file && fail(file.name)(error)),
      map: (mapping) => void map(mapping).catch(fail(name)),
      confirm: (flight, number) => void confirm(flight, number).catch(fail(name)),
      leave: () => set(none),
    },
  ];
}
