import {
  amountIn,
  backUpNote,
  checkCounts,
  delayWords,
  type Issue,
  kindOfCut,
  percent,
  type UnitSystem,
} from "@delaywright/documents";
import type { Told } from "../compute/index.js";
import { debriefWords } from "../debrief/flight-words.js";
import type { FoldMark } from "../parts/index.js";
import { prepWords } from "../prep/prep-words.js";
import type { Prep } from "../prep/use-prep.js";
import { type NextAct, type SectionId, sectionIds, sectionOfIssue } from "../standing/next-act.js";
import type { PlanDocuments } from "../standing/plan-documents.js";
import { shownWind } from "../standing/shown-wind.js";
import { targetOf } from "../standing/target.js";
import { ageWords, type WeatherAge } from "../standing/weather-age.js";

/** A section in the rail: how far it has come, and its second line. */
export interface SectionState {
  readonly id: SectionId;
  readonly title: string;
  readonly mark: FoldMark;
  readonly aside: string;
}

const titles: Readonly<Record<SectionId, string>> = Object.freeze({
  rocket: "Rocket",
  motor: "Motor",
  field: "Field & weather",
  delay: "Delay",
  cut: "Cut",
  packing: "Packing",
  checks: "Checks",
  prep: "Prep",
  card: "Card",
  debrief: "Debrief",
});

export interface SheetStanding {
  readonly documents: PlanDocuments;
  readonly issues: readonly Issue[];
  readonly told: Told | null;
  readonly age: WeatherAge | null;
  readonly next: NextAct | null;
  readonly units: UnitSystem;
  /** The prep sheet; null or left out: it is not known yet. */
  readonly prep?: Pick<Prep, "flight" | "data"> | null;
}

type Line = Pick<SectionState, "mark" | "aside">;

const full = (aside: string): Line => ({ mark: "full", aside });
const part = (aside: string): Line => ({ mark: "part", aside });
const open = (aside: string): Line => ({ mark: "open", aside });

function fieldLine({ documents, age, units }: SheetStanding): Line {
  const wind =
    (documents.plan.raw?.["weather"] as { readonly wind?: unknown; readonly aloft?: unknown } | undefined) ?? {};
  if (wind.wind === undefined && wind.aloft === undefined) return part("no wind given");
  const read = age === null ? "" : `, ${ageWords(age)}`;
  const line = wind.aloft === undefined ? `wind ${shownWind(String(wind.wind), units)}${read}` : `winds aloft${read}`;
  return age?.stale === true ? part(line) : full(line);
}

function delayLine({ told }: SheetStanding): Line {
  if (told === null) return open("not known yet");
  const target = targetOf(told.data);
  if (target === null) return full("no delay");
  const clean = backUpNote(target)?.alone ?? "clean";
  return full(`${delayWords(target.delay)}, ${percent(target.odds.clean)} ${clean}`);
}

function cutLine({ told, documents }: SheetStanding): Line {
  if (told === null) return open("not known yet");
  if (told.facts.element.kind !== "adjustable") return full("nothing to cut");
  const target = targetOf(told.data);
  const name = documents.inHand?.name ?? "no motor in hand";
  if (target === null) return open(name);
  if (told.data.overCut !== null) return part(`${name}, over-cut`);
  const kind = kindOfCut(target, told.data.given.removedDepth);
  if (kind === "as-it-is") return full(`${name}, cut`);
  if (kind === "uncut") return full(`${name}, left whole`);
  return told.facts.element.removedDepth > 0 ? part(`${name}, not the last cut`) : open(`${name}, not cut yet`);
}

function packingLine({ told, units }: SheetStanding): Line {
  const landing = told?.data.opened?.landing ?? null;
  if (landing === null) return open("not known yet");
  return full(`lands at ${amountIn(landing.descentSpeed, "speed", units)}`);
}

function checksLine({ told }: SheetStanding): Line {
  if (told === null) return open("not known yet");
  const count = (verdict: string): number => told.data.checks.filter((check) => check.verdict === verdict).length;
  const [stops, looks] = [count("stop"), count("look")];
  if (stops > 0) return part(`${stops} ${stops === 1 ? "says" : "say"} stop`);
  if (looks > 0) return part(`${looks} ${looks === 1 ? "says" : "say"} look`);
  const { notChecked } = checkCounts(told.data.checks);
  return notChecked > 0 ? part(`${notChecked} not checked`) : full("all within");
}

function prepLine({ prep }: SheetStanding): Line {
  if (prep == null) return open("not known yet");
  const { flown, next } = prep.data.state;
  const words = prepWords(prep);
  if (prep.flight === null) return open(words);
  return flown && next === null ? full(words) : part(words);
}

function debriefLine({ prep }: SheetStanding): Line {
  if (prep == null || prep.flight === null) return open("not flown yet");
  const { raw } = prep.flight;
  const words = debriefWords(raw);
  return raw["findings"] === undefined && raw["excluded"] === undefined ? open(words) : full(words);
}

const lines: Readonly<Record<SectionId, (standing: SheetStanding) => Line>> = {
  rocket: ({ documents, told, units }) =>
    documents.rocket === null
      ? open("none chosen")
      : full(
          told === null ? documents.rocket.name : `${amountIn(told.facts.massWithoutMotor, "mass", units)}, no motor`,
        ),
  motor: ({ documents }) =>
    documents.motor === null
      ? open("none chosen")
      : full(documents.inHand === null ? documents.motor.name : `${documents.motor.name}, ${documents.inHand.name}`),
  field: fieldLine,
  delay: delayLine,
  cut: cutLine,
  packing: packingLine,
  checks: checksLine,
  prep: prepLine,
  card: ({ told }) => (told === null ? open("not known yet") : full("ready to print")),
  debrief: debriefLine,
};

/** Every section with its mark and second line. */
export function sectionStates(standing: SheetStanding): readonly SectionState[] {
  const { issues, documents, next } = standing;
  return sectionIds.map((id) => {
    const own = issues.filter((issue) => sectionOfIssue(issue, documents) === id);
    const line = lines[id](standing);
    const wrong =
      own.length === 0
        ? line
        : part(own.every(({ code }) => code === "missing") ? "something missing" : "something wrong");
    const mark = next !== null && next.pad !== true && next.section === id ? "now" : wrong.mark;
    return { id, title: titles[id], mark, aside: wrong.aside };
  });
}
