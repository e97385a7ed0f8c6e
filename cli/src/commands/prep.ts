import { loadAny, prepBrief, prepData, prepEvents, type UnitSystem } from "@delaywright/documents";
import type { PrepEvent } from "@delaywright/engine";
import { EXIT, type Io } from "../io/io.js";
import { issuesText } from "../print/issues.js";
import { jsonText } from "../print/json.js";
import { prepJson, prepText } from "../print/prep-text.js";
import { type DecidedArgs, decided, exitCodeOf } from "./decided.js";

/** What `delaywright prep` was asked. */
export interface PrepArgs extends DecidedArgs {
  readonly units?: UnitSystem;
  /** A flight on which steps were signed. */
  readonly flight?: string;
  readonly json?: boolean;
}

/** What was signed on a flight, or null after its issues were told. */
async function signedOn(path: string, io: Io): Promise<readonly PrepEvent[] | null> {
  const { root, issues } = await loadAny(path, io.files, ["flight"]);
  if (issues.length === 0 && root !== undefined) return prepEvents(root.raw);
  io.err(issuesText(issues));
  return null;
}

/** The plan's prep sheet: as it is before anything is signed, or as a flight's sign-offs leave it. */
export async function prep(args: PrepArgs, io: Io): Promise<number> {
  const events = args.flight === undefined ? [] : await signedOn(args.flight, io);
  if (events === null) return EXIT.wrongInput;
  const answer = await decided(args, io);
  if (!answer.ok) return answer.code;
  const { data, parts } = answer;
  const told = { data, sheet: prepData(prepBrief({ parts, data }), events), units: args.units ?? "metric" };
  io.out(args.json ? jsonText(prepJson(told)) : prepText(told, io.colour));
  return exitCodeOf(data);
}
