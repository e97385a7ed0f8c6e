import { cutData, formatQuantity, loadAny, toolToEngine } from "@delaywright/documents";
import { achievableSettings, type CutPlan, type CuttingTool, depthReading, type ReadDelay } from "@delaywright/engine";
import { UsageError } from "../args/usage.js";
import { EXIT, type Io } from "../io/io.js";
import type { PassedLimit, Wanted } from "../print/answer.js";
import { readingText, settingsText } from "../print/cut-text.js";
import { issuesText } from "../print/issues.js";
import { jsonText } from "../print/json.js";

/** What `delaywright cut` was asked: seconds and metres. */
export interface CutArgs {
  readonly tool: string;
  readonly longest: number;
  readonly mostRemoved?: number;
  readonly leastLeft?: number;
  /** A delay that is wanted. */
  readonly to?: number;
  readonly before?: number;
  readonly after?: number;
  /** Of the motor's own grain; left out: what the tool was made for. */
  readonly depthPerSecond?: number;
  readonly json?: boolean;
}

/** Most by which the depth per second of motor and tool may differ. */
const MOST_GRAIN_DIFFERENCE = 0.02;
/** Delays closer than this are the same [s]. */
const SAME = 1e-6;

function wantedOf(delay: number, settings: readonly CutPlan[]): Wanted {
  return {
    delay,
    setting: settings.find((each) => Math.abs(each.delay - delay) < SAME) ?? null,
    longer: settings.findLast((each) => each.delay > delay + SAME) ?? null,
    shorter: settings.find((each) => each.delay < delay - SAME) ?? null,
  };
}

function wantedJson({ delay, setting, longer, shorter }: Wanted, reading: ReadDelay | undefined) {
  return {
    delay,
    setting: setting && cutData(setting),
    longer: longer && cutData(longer),
    shorter: shorter && cutData(shorter),
    ...(reading === undefined ? {} : { difference: reading.delay - delay }),
  };
}

/** Seconds marked on a tool hold for the grain that it was made for. */
function refuseOtherGrain(tool: CuttingTool, depthPerSecond: number | undefined): void {
  if (tool.kind !== "ends" || depthPerSecond === undefined) return;
  const seconds = [...tool.ends.map((end) => end.removes), ...tool.spacers.map((spacer) => spacer.keepsBack)].some(
    (each) => "seconds" in each,
  );
  if (seconds && Math.abs(depthPerSecond / tool.depthPerSecond - 1) > MOST_GRAIN_DIFFERENCE)
    throw new UsageError(
      "--depth-per-second: this tool's seconds are for another grain; a tool whose ends and spacers are given as depths is accepted",
    );
}

/** A depth as it may be typed. */
const depth = (value: number): string => formatQuantity(value, "length", "mm").replace(" ", "");

function readingOf(args: CutArgs, tool: CuttingTool): ReadDelay | undefined {
  const { before, after, longest } = args;
  if (before === undefined && after === undefined) return undefined;
  if (before === undefined || after === undefined)
    throw new UsageError("--before and --after belong together, for example --before 22.2mm --after 25.4mm");
  const depthPerSecond = args.depthPerSecond ?? tool.depthPerSecond;
  if (depthPerSecond === undefined)
    throw new UsageError(
      "this tool names no depth per second; give the motor's, for example --depth-per-second 1/32in",
    );
  if (after < before)
    throw new UsageError(
      `--after: ${depth(after)} found; no less than --before, ${depth(before)}, is accepted, since a cut only gets deeper, for example --before ${depth(after)} --after ${depth(before)}`,
    );
  const reading = depthReading({ longest, before, after, depthPerSecond });
  if (reading.delay < 0)
    throw new UsageError(
      `--after: ${depth(after)} found, more was cut than a delay of ${longest} s has; no more than ${depth(before + longest * depthPerSecond)} is accepted after ${depth(before)}, for example --before 22.2mm --after 25.4mm`,
    );
  return reading;
}

/** The maker's limits that a reading passes. */
function passedBy({ removed, delay }: ReadDelay, { mostRemoved, leastLeft }: CutArgs): PassedLimit[] {
  const passed: PassedLimit[] = [];
  if (mostRemoved !== undefined && removed > mostRemoved + SAME)
    passed.push({ limit: "most-removed", allowed: mostRemoved, found: removed });
  if (leastLeft !== undefined && delay < leastLeft - SAME)
    passed.push({ limit: "least-left", allowed: leastLeft, found: delay });
  return passed;
}

/** The settings that a tool makes of an element, or the delay that a depth reading leaves. */
export async function cut(args: CutArgs, io: Io): Promise<number> {
  const { root, issues } = await loadAny(args.tool, io.files, ["tool"]);
  if (issues.length > 0 || root?.document?.kind !== "tool") {
    io.err(issuesText(issues));
    return EXIT.wrongInput;
  }
  const tool = toolToEngine(root.document);
  refuseOtherGrain(tool, args.depthPerSecond);
  const reading = readingOf(args, tool);
  if (tool.kind === "stop" && tool.depthPerSecond === undefined && args.depthPerSecond === undefined)
    throw new UsageError(
      "this tool names no depth per second; give the motor's, for example --depth-per-second 1/32in",
    );
  const element = {
    longest: args.longest,
    mostRemoved: args.mostRemoved ?? Number.POSITIVE_INFINITY,
    leastLeft: args.leastLeft ?? 0,
    ...(args.depthPerSecond === undefined ? {} : { depthPerSecond: args.depthPerSecond }),
  };
  const settings = achievableSettings(element, tool);
  const wanted = args.to === undefined ? undefined : wantedOf(args.to, settings);
  const passed = reading === undefined ? [] : passedBy(reading, args);
  if (args.json) {
    io.out(
      jsonText({
        longest: args.longest,
        settings: settings.map(cutData),
        ...(wanted === undefined ? {} : { to: wantedJson(wanted, reading) }),
        ...(reading === undefined ? {} : { reading, passed }),
      }),
    );
  } else if (reading !== undefined) io.out(readingText(reading, { wanted, passed }));
  else io.out(settingsText(tool.name, settings, wanted));
  return passed.length > 0 || wanted?.setting === null ? EXIT.notGoodEnough : EXIT.done;
}
