import type { LogMapping } from "@delaywright/documents";
import type { Dispatch, RefObject, SetStateAction } from "react";
import type { Previewed } from "../compute/debrief/protocol.js";
import type { Remembered } from "./log-store.js";

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
      /** The flyer wants to see the columns of a known mapping. */
      readonly changes: boolean;
      /** Which flight of the record was picked, from 1; null: none was. */
      readonly number: number | null;
      /** It is being read again under another mapping. */
      readonly busy: boolean;
    }
  | { readonly state: "failed"; readonly name: string; readonly why: string };

export const noIntake: Intake = Object.freeze({ state: "none" });

/** Where an intake is held: it outlives a phone that is turned, which has another sheet. */
export interface IntakeHold {
  readonly intake: Intake;
  readonly set: Dispatch<SetStateAction<Intake>>;
  /** The file that was chosen last. */
  readonly latest: RefObject<File | null>;
}
