import { LARGEST_LOG, type LogMapping } from "@delaywright/documents";
import { useState } from "react";
import type { Previewed } from "../compute/debrief/protocol.js";
import { debriefClient } from "../compute/debrief-client.js";
import { entryNow, keepRecord, useEntries } from "../store/index.js";
import { keepLog, logOf, type Remembered, rememberedFor } from "./log-store.js";

/** A file that is being taken in. */
export type Intake =
  | { readonly state: "none" }
  | { readonly state: "reading"; readonly name: string }
  | {
      readonly state: "shown";
      readonly file: File;
      readonly previewed: Previewed;
      /** The mapping that counts; null: nothing could be told yet. */
      readonly mapping: LogMapping | null;
      /** It was confirmed for a file before; null: it is new. */
      readonly remembered: Remembered | null;
      /** It is being read again under another mapping, or kept. */
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

async function bytesOf(file: File): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await file.arrayBuffer());
}

export function useIntake(onNotKept: (not: boolean) => void): readonly [Intake, IntakeActs] {
  const [intake, set] = useState<Intake>(none);
  const logs = useEntries("log");
  const fail = (name: string) => (error: unknown) =>
    set({ state: "failed", name, why: error instanceof Error ? error.message.slice(0, 200) : "it could not be read" });

  const choose = async (file: File): Promise<void> => {
    if (file.size > LARGEST_LOG) {
      set({ state: "failed", name: file.name, why: `it has ${file.size} bytes; at most ${LARGEST_LOG} are read` });
      return;
    }
    set({ state: "reading", name: file.name });
    const guessed = await debriefClient.open(file.name, await bytesOf(file));
    const remembered = guessed.preview === null ? null : rememberedFor(guessed.preview.headingsKey, logs);
    const again = remembered === null ? null : await debriefClient.preview(remembered.mapping);
    const fits = again?.ok === true;
    const previewed = fits ? again : guessed;
    set({
      state: "shown",
      file,
      previewed,
      mapping: previewed.preview?.mapping ?? null,
      remembered: fits ? remembered : null,
      busy: false,
    });
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
    set({ ...intake, busy: true });
    const { path: source, kept } = await keepRecord(file.name, await bytesOf(file));
    onNotKept(!kept);
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
      choose: (file) => void choose(file).catch(fail(file.name)),
      map: (mapping) => void map(mapping).catch(fail(name)),
      confirm: (flight, number) => void confirm(flight, number).catch(fail(name)),
      leave: () => set(none),
    },
  ];
}
