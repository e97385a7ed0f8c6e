import type { FileSource } from "@delaywright/documents";

export const demoLogsFolder: string;
/** Words of the command line, in order. */
export const demoDebriefs: readonly (readonly string[])[];
/** @param library what `@delaywright/documents` and `@delaywright/engine` export */
export function demoLogs(
  library: object,
  files: FileSource,
): Promise<readonly { readonly name: string; readonly text: string }[]>;
