import {
  type CardCode,
  type CardPaper,
  cardCode,
  cardData,
  cardPage,
  decodeText,
  isCard,
  readCardCode,
  type UnitSystem,
} from "@delaywright/documents";
import { UsageError } from "../args/usage.js";
import { EXIT, type Io } from "../io/io.js";
import { issuesText } from "../print/issues.js";
import { jsonText } from "../print/json.js";
import { shown } from "../print/shown.js";
import { type DecidedArgs, decided, exitCodeOf } from "./decided.js";
import { keepWhatIsThere, writeOutput } from "./output.js";

/** What `delaywright card` was asked. */
export interface CardArgs extends DecidedArgs {
  readonly json?: boolean;
  /** File to write; left out: standard output. */
  readonly output?: string;
  readonly paper?: CardPaper;
  readonly units?: UnitSystem;
  /** Of the program. */
  readonly version: string;
}

/** The flight card of a plan as a page. */
export async function card(args: CardArgs, io: Io): Promise<number> {
  await keepWhatIsThere(
    args.output,
    { replaces: isCard, accepted: "a new name is accepted, or an earlier card's" },
    io,
  );
  const computed = momentWords(io.now());
  const answer = await decided(args, io);
  if (!answer.ok) return answer.code;
  const { data, parts } = answer;
  const made = cardData({ data, parts, computed, version: args.version });
  const code = await cardCode(parts);
  const { paper, units } = args;
  const text = args.json
    ? jsonText({ ...made, code })
    : cardPage(made, code, { ...(paper && { paper }), ...(units && { units }) }).html;
  await give(text, args.output, io);
  tellCode(code, io);
  return exitCodeOf(data);
}

/** What `delaywright card --read` was asked. */
export interface ReadCardArgs {
  /** File with the text of a code. */
  readonly read: string;
  readonly output?: string;
}

/** The text of a card's code back into its plan. */
export async function readCard({ read, output }: ReadCardArgs, io: Io): Promise<number> {
  await keepWhatIsThere(output, { accepted: "a new name is accepted" }, io);
  const file = await io.files.read(read);
  if (!file.ok)
    throw new UsageError(
      `--read: ${shown(read)} cannot be read (${file.reason}); a file with a code's text is accepted`,
    );
  const decoded = decodeText(file.bytes);
  const plan = decoded.ok
    ? await readCardCode(decoded.text)
    : { ok: false as const, issues: [{ file: read, ...decoded.fault }] };
  if (!plan.ok) {
    io.err(issuesText(plan.issues.map((issue) => ({ ...issue, file: read }))));
    return EXIT.wrongInput;
  }
  await give(jsonText(plan.raw), output, io);
  return EXIT.done;
}

async function give(text: string, output: string | undefined, io: Io): Promise<void> {
  if (output === undefined) return io.out(text);
  await writeOutput(output, text, io);
  io.err(`${shown(output)} written.\n`);
}

function tellCode(code: CardCode | null, io: Io): void {
  if (code === null) io.err("The plan is too long for a QR code: the card has none.\n");
  else if (code.thinned !== null)
    io.err(
      `The thrust curve in the card's code is thinned from ${code.thinned.from} to ${code.thinned.to} points: impulse, burn time and average as given.\n`,
    );
}

/** `2026-05-02 11:05`, by this machine's clock. */
function momentWords(moment: Date): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  const day = [moment.getFullYear(), two(moment.getMonth() + 1), two(moment.getDate())].join("-");
  return `${day} ${two(moment.getHours())}:${two(moment.getMinutes())}`;
}
