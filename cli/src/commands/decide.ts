import type { Io } from "../io/io.js";
import { decisionText } from "../print/decide/decision-text.js";
import { jsonText } from "../print/json.js";
import { type DecidedArgs, decided, exitCodeOf } from "./decided.js";

/** What `delaywright decide` was asked. */
export interface DecideArgs extends DecidedArgs {
  readonly json?: boolean;
  /** Every rule is listed, not only those that say stop or look. */
  readonly allChecks?: boolean;
}

/** The main job: from a plan to the delay to cut, with its odds and its cut. */
export async function decide(args: DecideArgs, io: Io): Promise<number> {
  const answer = await decided(args, io);
  if (!answer.ok) return answer.code;
  io.out(args.json ? jsonText(answer.data) : decisionText(answer.data, io.colour, args.allChecks === true));
  return exitCodeOf(answer.data);
}
