import type { LogQuantity } from "./log-types.js";
import { findLogUnit, type MeasuredQuantity, unitQuantities } from "./log-units.js";

/** What a heading says. */
export interface HeadingSays {
  /** `other`: something that is not looked for. Null: nothing that is understood. */
  readonly quantity: LogQuantity | "other" | null;
  readonly by: "word" | "unit" | null;
  /** Height may stand above the pad or above sea level. */
  readonly level: "pad" | "sea" | null;
  /** How well the words fit: 2 says which of several, 0 that another is meant rather. */
  readonly rank: 0 | 1 | 2;
}

/** A heading in plain small letters, its words parted by one blank, what stands in brackets left out. */
function plainWords(heading: string): string {
  return withoutUnit(heading.replace(/[([{][^)\]}]*[)\]}]/g, " "))
    .replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2")
    .replace(/ß/g, "ss")
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}#]+/gu, " ")
    .trim();
}

/** Without the units at its end: `h` of `hPa` is no height. */
function withoutUnit(heading: string): string {
  const parts = heading.trim().split(/[\s_/,:]+/);
  const isUnit = (part: string) => unitQuantities.some((quantity) => findLogUnit(part, quantity) !== undefined);
  while (parts.length > 1 && isUnit(parts.at(-1)!)) parts.pop();
  return parts.join(" ");
}

const word = (list: string) => new RegExp(`(?:^| )(?:${list})(?: |$)`);

/** Things that are recorded beside: their columns are never taken for a figure that is looked for. */
const others = word(
  "lat|latitude|lon|lng|long|longitude|gyro\\w*|roll|pitch|yaw|tilt|heading|bearing|course|sats?|satellites|hdop|humidity|mag\\w*|index|samples?|row|record|count|counter|no|nr|id|seq|#|pyro\\w*|cont|continuity|channel|quat\\w*|crc|checksum|rssi|packet|angle|horizontal|drogue|main|charge|charges|igniter|apogee|lateral|east|north|spin|wind|chamber|max\\w*|min|peak|target|latitud|breite|lange|feuchte|gps speed",
);

/** General words of the field in several languages; the first that fits says what a column holds. */
const words: readonly (readonly [LogQuantity, RegExp])[] = [
  [
    "acceleration",
    word(
      "accel\\w*|acc|acceleration\\w*|\\w*beschleunigung|acelerac\\w*|accelerazione|versnelling|kiihtyvyys|g load|g force|a|[ax] ?[xyz]|acc [xyz]|a[xyz]",
    ),
  ],
  [
    "speed",
    word(
      "speed|velocity|veloc\\w*|vel|vitesse|\\w*geschwindigkeit|snelheid|hastighet|hastighed|nopeus|climb|climb rate|vario|v|v ?z",
    ),
  ],
  [
    "altitude",
    word(
      "alt|altitude|altitud|altitudes|baroalt|quota|h|height|\\w*hoehe|\\w*hohe|hauteur|altura|altezza|hoogte|hojd|hoyde|hojde|korkeus|agl|asl|msl|elevation",
    ),
  ],
  [
    "pressure",
    word(
      "pressure|press|pres|baro|barometer|\\w*druck|pression|presion|pressao|pressione|druk|tryck|trykk|tryk|paine|p|qfe",
    ),
  ],
  ["temperature", word("temp|temperature|\\w*temperatur|temperatura|temperatuur|lampotila")],
  [
    "battery",
    word(
      "batt|battery|bat|v ?bat\\w*|akku|batterie|bateria|batteria|accu|volt\\w*|\\w*spannung|tension|supply|vcc|vin",
    ),
  ],
  [
    "marks",
    word(
      "events?|state|status|marks?|markers?|flags?|phase|stage|comments?|notes?|message|msg|remarks?|info|text|fired|ereignis\\w*|zustand|evenement|etat|eventos?|estado|stato",
    ),
  ],
  [
    "time",
    word(
      "time|\\w*zeit|temps|tiempo|tempo|tid|tijd|aika|elapsed|clock|timestamp|timer|millis|micros|seconds|secs?|sekunden|uptime|uhrzeit|heure|hora|t",
    ),
  ],
];

const pad = word("agl|rel|relative|pad|launch|ground|start|boden|sol|suelo|delta");
const sea = word("asl|msl|amsl|sea|gps|nn|nhn|absolute|abs");
const axial = word("axial|vertical|long\\w* axis|body|along|up|langs\\w*|vertikal\\w*|verticale|kalman|filtered|fused");
const another = word("raw|gps|second\\w*|backup|ref\\w*");

/**
 * What a heading's words and its unit say.
 *
 * @example
 * headingSays("Höhe [m]").quantity; // "altitude": which level, its figures tell
 */
export function headingSays(heading: string): HeadingSays {
  const plain = plainWords(heading);
  const tags = heading.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, " ");
  const level = sea.test(tags) ? "sea" : pad.test(tags) ? "pad" : null;
  const rank = axial.test(tags) ? 2 : another.test(tags) ? 0 : 1;
  if (others.test(plain) && !/^(min|long)$/.test(plain)) return { quantity: "other", by: "word", level, rank };
  const found = words.find(([, expression]) => expression.test(plain))?.[0];
  if (found !== undefined) {
    // a voltage of time: "v" alone is a speed, "v (V)" a battery
    const unit = bracketUnit(heading);
    const own = found !== "marks" && unit !== null && findLogUnit(unit, found) === undefined ? ofUnit(unit) : null;
    return { quantity: own ?? found, by: own === null ? "word" : "unit", level, rank };
  }
  const quantity = ofUnit(bracketUnit(heading) ?? heading) ?? lastUnit(heading);
  return { quantity, by: quantity === null ? null : "unit", level, rank };
}

function bracketUnit(heading: string): string | null {
  return /[([{]\s*([^)\]}]*?)\s*[)\]}]\s*$/.exec(heading)?.[1] ?? null;
}

function lastUnit(heading: string): MeasuredQuantity | null {
  const quantity = unitQuantities.find((each) => headingUnit(heading, each) !== null);
  return quantity === "height" ? "altitude" : (quantity ?? null);
}

function ofUnit(text: string): MeasuredQuantity | null {
  const quantity = unitQuantities.find((each) => findLogUnit(text, each) !== undefined);
  return quantity === "height" ? "altitude" : (quantity ?? null);
}

/**
 * The unit that a heading names, for what its column holds.
 *
 * It may stand in brackets, behind a sign, or as the last word: `time (ms)`, `alt/ft`, `Höhe in m`, `pressure_hPa`, `millis`.
 *
 * @returns its symbol, or null where none is named that measures this
 */
export function headingUnit(heading: string, quantity: MeasuredQuantity): string | null {
  const bracketed = [...heading.matchAll(/[([{]\s*([^)\]}]*?)\s*[)\]}]/g)].flatMap((match) => {
    const inside = match[1] ?? "";
    return [inside, ...inside.split(/[\s,;]+/)];
  });
  const behind = /[/,:]\s*(\S.*)$/.exec(heading)?.[1];
  const plain = heading.replace(/_/g, " ");
  const ends = [plain, plain.replace(/(\p{Ll})(\p{Lu})/gu, "$1 $2")].flatMap((spaced) => {
    const tail = spaced.trim().split(/[\s,:]+/);
    return [3, 2, 1].map((count) => tail.slice(-count).join(" "));
  });
  for (const text of [...bracketed, behind ?? "", ...ends]) {
    const found = text === "" ? undefined : findLogUnit(text, quantity);
    if (found !== undefined) return found.symbol;
  }
  return null;
}
