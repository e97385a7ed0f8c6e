import { beforeAll, describe, expect, test } from "vitest";
import { decided } from "../../test/decided.js";
import type { DecisionData, ToCutData } from "../answer/decision-data.js";
import { backUpNote, backUpSentences } from "./back-up.en.js";
import { basisLines } from "./basis.en.js";
import { checkLine, verdictWords } from "./check-lines.en.js";
import { howCell, kindOfCut, piecesWords, takeOutWords } from "./cut.en.js";
import { climbSentence, coastSentence, descentSentence, stabilitySentence, strengthSentence } from "./flight.en.js";
import {
  choiceSentence,
  headline,
  headlineSentence,
  oddsWords,
  statedHeadline,
  stopSentences,
  suggestedSetting,
} from "./headline.en.js";
import { asksForCut, showsCuts, twoCutsSentence, weatherSentence } from "./home-cut.en.js";
import { lookOutSentences } from "./look-out.en.js";
import { aboveWords, belowWords, openingSentences, openingWords, timingWords } from "./openings.en.js";
import { overCutSentences } from "./over-cut.en.js";
import { cleanAndHoldsSentence } from "./settings.en.js";
import { delayShareSentence, driversSentence } from "./spread.en.js";
import { unopenedSentences } from "./unopened.en.js";
import { whySentences } from "./why.en.js";

/** What every check carries beside its figures. */
function toldBy<Code extends string>(code: Code, sense: "least" | "most") {
  return { id: code, code, sense, details: [], missing: [], source: "", edition: "", status: "memory" } as const;
}

const plain = (text: string | null | undefined): string => (text ?? "").replaceAll("\u00a0", " ");
const ninth = { delay: 9, removed: 5, end: "A", spacers: ["ring"], depth: 0.00396875 };
const uncut = { delay: 14, removed: 0, end: null, spacers: [], depth: 0 };

let demo: DecisionData;
const withCut = (changed: Partial<ToCutData>, given: Partial<DecisionData["given"]> = {}): DecisionData => ({
  ...demo,
  given: { ...demo.given, ...given },
  toCut: { ...(demo.toCut as ToCutData), ...ninth, reachesLeast: true, reachesHolds: true, ...changed },
});

beforeAll(async () => {
  demo = await decided();
});

describe("words of a cut", () => {
  test("kindOfCut() tells what a setting asks for", () => {
    expect(kindOfCut(ninth)).toBe("cut");
    expect(kindOfCut(uncut)).toBe("uncut");
    expect(kindOfCut({ ...ninth, end: null, depth: null })).toBe("not-shown");
    expect(kindOfCut({ ...ninth, end: null }, 0.00396875)).toBe("as-it-is");
    expect(kindOfCut({ ...ninth, end: null }, null)).toBe("cut");
  });

  test("piecesWords(), howCell() and takeOutWords() say how it is made", () => {
    expect(plain(piecesWords({ ...ninth, spacers: ["ring", "ring", "cap"] }))).toBe(
      "end A with 2 of the ring and the cap",
    );
    expect(piecesWords({ ...ninth, end: null })).toBe("depth stop");
    expect(howCell(uncut)).toBe("no cut");
    expect(plain(takeOutWords(ninth))).toBe("take 5 s out, end A with the ring, 4.0 mm (5/32 in)");
    expect(plain(takeOutWords(ninth, 0.001))).toContain("take 5 s out in all, ");
  });
});

test("statedHeadline() tells a delay of a card as the card states it, and not as one that cannot be set", () => {
  const { lead, joint, detail } = statedHeadline(withCut({}, { delayKind: "fixed" }))!;
  expect(plain(`${lead}${joint}${detail}`)).toBe("Its delay is 9 s, as the card states it");
  expect(statedHeadline({ toCut: null })).toBeNull();
});

describe("headline()", () => {
  test.each([
    [{}, {}, "Cut to 9 s: take 5 s out, end A with the ring, 4.0 mm (5/32 in)."],
    [{ reachesLeast: false }, {}, "At best 9 s: take 5 s out, end A with the ring, 4.0 mm (5/32 in)."],
    [{ reachesHolds: false }, {}, "At best 9 s, and that does not hold."],
    [uncut, {}, "Leave it at 14 s: no cut."],
    [{ ...uncut, reachesLeast: false }, {}, "At best 14 s: no cut."],
    [{ end: null, depth: 0.001 }, { removedDepth: 0.001 }, "Leave it at 9 s, as it is now cut."],
    [{ end: null, depth: null }, {}, "9 s has the best odds; no cut is shown."],
    [{}, { delayKind: "fixed" }, "Its delay is 9 s and cannot be set."],
  ] as const)("of %j and %j", (toCut, given, expected) => {
    const data = withCut(toCut, given);
    expect(plain(headlineSentence(data))).toBe(expected);
    const parts = headline(data);
    expect(plain(`${parts?.lead}${parts?.joint}${parts?.detail}.`)).toBe(expected);
  });

  test("is none for a motor without delay", () => {
    expect(headline({ ...demo, toCut: null })).toBeNull();
    expect(headlineSentence({ ...demo, toCut: null })).toBe("No delay to cut: this motor has none.");
  });

  test("says of what follows from the opening at which delay it is", () => {
    const follows = (data: typeof demo) =>
      [openingSentences(data)[0], descentSentence(data), unopenedSentences(data).at(-1)].map((each) =>
        plain(each ?? ""),
      );
    const [opens, lands, unopened] = follows(demo);
    expect(opens).toMatch(/^At 9 s, your own choice: 9 in 10 open below/);
    expect(lands).toMatch(/^Opened at 9 s, your own choice: main at/);
    expect(unopened).toMatch(/^Odds of coming in unopened at 9 s, your own choice: /);
    const [opensPlain, landsPlain, unopenedPlain] = follows({ ...demo, choice: null });
    expect(opensPlain).toMatch(/^9 in 10 open below/);
    expect(landsPlain).toMatch(/^Opened at the delay to cut: main at/);
    expect(unopenedPlain).toMatch(/^Odds of coming in unopened at the delay to cut: /);
    expect(descentSentence({ ...demo, opened: null })).toBeNull();
    // nothing is to be cut, as of a card that states its delay, or no more of it
    for (const asItIs of [withCut(uncut), withCut({ end: null, spacers: [], depth: 0.004 }, { removedDepth: 0.004 })]) {
      const [, down, fast] = follows({ ...asItIs, choice: null });
      expect(down).toMatch(/^Opened at the delay as it is: main at/);
      expect(fast).toMatch(/^Odds of coming in unopened at the delay as it is: /);
    }
    expect(plain(descentSentence({ ...demo, choice: null, toCut: null }))).toMatch(/^Opened: main at/);
  });

  test("stands with its odds, the flyer's own choice, and what stops the flight", () => {
    const setting = suggestedSetting(demo);
    expect(plain(oddsWords(setting!, demo.draws))).toMatch(/^\d\d % clean( \(± [\d.]+\))?, holds /);
    expect(plain(choiceSentence(demo))).toMatch(/^Your own choice is 9 s \(landing before the trees\): /);
    expect(stopSentences(demo)).toEqual([]);
    const stop = { ...demo.checks[0]!, verdict: "stop" as const };
    expect(stopSentences({ ...demo, checks: [stop] })[0]).toMatch(/\.$/);
  });
});

describe("sentences of a decision", () => {
  test("timingWords() and openingWords()", () => {
    expect(plain(timingWords(-1.5, 1.7))).toBe("1.5 s before to 1.7 s after the top");
    expect(plain(timingWords(-1.5, -1.48))).toBe("1.5 s before the top");
    expect(plain(timingWords(0.5, 2))).toBe("0.5 s to 2.0 s after the top");
    const setting = suggestedSetting(demo)!;
    expect(plain(openingWords(setting, demo.draws))).toMatch(/^9 in 10 open below \d+ m\/s and above \d+ m AGL, /);
    const never = { ...setting, openingHeight: { p05: null, p10: null, p50: null } };
    expect(openingWords(never, demo.draws)).toBe("every flight lands before it opens");
    expect(openingSentences(demo).length).toBe(3);
    expect(openingSentences({ ...demo, toCut: null, choice: null })).toEqual([]);
  });

  test("whySentences() tell more where none is good enough", () => {
    expect(whySentences(withCut({}))).toMatchObject({ noneGood: null, atTop: null, helps: null });
    const poor = whySentences(withCut({ reachesHolds: false, reasons: ["lean"], helps: ["less-wind"] }));
    expect(poor.noneGood).toMatch(/^Why none is good enough: it leans/);
    expect(poor.helps).toBe("What would help: less wind.");
    expect(plain(poor.atTop)).toMatch(/in half of the flights, up to \d+ m\/s in 19 of 20\.$/);
  });

  test("twoCutsSentence() and weatherSentence()", () => {
    expect(twoCutsSentence(withCut({ homeCut: null }))).toBeNull();
    const home = { delay: 11, removed: 3, end: "B", spacers: [], depth: 0.00238125 };
    const homeWeather = { wind: [0, 8], temperature: [278.15, 298.15] } as const;
    const data = withCut({ homeCut: home, homeWeather });
    expect(plain(twoCutsSentence(data))).toBe(
      "At home first only to 11 s: take 3 s out, end B, no spacer, 2.4 mm (3/32 in). At the field, once the wind is known, to 9 s: take 5 s out, end A with the ring, 4.0 mm (5/32 in). That leaves room for a wind of 0 to 8 m/s and 5 to 25 °C.",
    );
    expect(weatherSentence(null)).toBeNull();
    expect(asksForCut(data)).toBe(true);
    expect(asksForCut(withCut(uncut))).toBe(false);
    expect(showsCuts(demo)).toBe(true);
  });

  test("backUpSentences() are there for a charge behind electronics only", () => {
    expect(backUpSentences(demo)).toBeNull();
    const settings = demo.settings.map((setting) => ({ ...setting, firesFirst: 0.02 }));
    const sentences = backUpSentences({ ...demo, settings });
    expect(plain(sentences?.firesFirst)).toContain("has opened the rocket: 2 %. At other settings: 14 s: 2 %");
    expect(plain(sentences?.alone)).toMatch(/^If the electronics fails, it opens the rocket alone: \d+ % clean/);
    expect(backUpNote({ firesFirst: null })).toBeNull();
    expect(plain(backUpNote({ firesFirst: 0.02 })?.firesFirst)).toBe(
      "if the electronics fails; fires before it in 2 %",
    );
  });

  test("overCutSentences()", () => {
    const best = { mass: 0.2, clean: 0.9, holds: 0.999 };
    const ballast = { from: 0.1, to: 0.3, untriedBeyond: false, at: 0.2, best, checks: [] };
    const rocket = { name: "Demo 54", clean: 0.85, holds: 0.995, stops: true };
    const overCut = {
      delay: 6.1,
      delaySd: 0.18,
      clean: 0.3,
      holds: 0.9,
      ballast: [ballast],
      rockets: [rocket],
      doNotFly: true,
    };
    const { now, ways, doNotFly } = overCutSentences(overCut);
    expect(plain(now)).toBe(
      "Cut deeper than meant: the delay is now 6.1 s (± 0.2, one sigma): 30 % clean, holds 90 %.",
    );
    expect(ways.map(({ does, ...rest }) => ({ does: plain(does), ...rest }))).toEqual([
      {
        does: "Ballast of 100 g to 300 g in all, fixed mechanically 200 mm from the nose tip: best 200 g, 90 % clean, holds 99.9 %.",
        but: null,
        clean: 0.9,
      },
      {
        does: "Another rocket, Demo 54: 85 % clean, holds 99.5 %, but its own checks say stop.",
        but: null,
        clean: 0.85,
      },
    ]);
    const checks = [
      { ...toldBy("ceiling", "most"), verdict: "look", value: 1500, limit: 1219.2, unit: "m" },
      { ...toldBy("thrust-to-weight", "least"), verdict: "pass", value: 6, limit: 5, unit: "" },
    ] as const;
    const looked = { ...overCut, ballast: [{ ...ballast, checks }] };
    expect(plain(overCutSentences(looked).ways[0]?.but)).toMatch(
      /^But look: height against the field's ceiling 1500 m, most 1219 m: .*\.$/,
    );
    const untried = { ...overCut, ballast: [{ ...ballast, untriedBeyond: true }] };
    expect(plain(overCutSentences(untried).ways[0]?.does)).toMatch(
      /^Ballast of 100 g to 300 g in all \(more was not tried\), fixed/,
    );
    const [imperial] = overCutSentences(looked, "imperial").ways;
    expect(plain(imperial?.does)).toMatch(
      /^Ballast of 3\.5 oz to 10\.6 oz in all, .* 7\.87 in from the nose tip: best 7\.1 oz/,
    );
    expect(plain(imperial?.but)).toContain("ceiling 4921 ft, most 4000 ft");
    expect(doNotFly).toMatch(/^Do not fly it/);
    expect(overCutSentences({ ...overCut, doNotFly: false }).doNotFly).toBeNull();
    expect(stopSentences({ ...demo, overCut, given: { ...demo.given, removedDepth: 0.005 } })[0]).toMatch(
      /^do not fly/,
    );
  });

  test("the others begin with a capital, end with a stop, and say nothing undefined", () => {
    const { looks, warnings, unlikely } = lookOutSentences(demo);
    const sentences = [
      ...basisLines(demo).slice(0, 2),
      ...unopenedSentences(demo),
      ...[...warnings, ...unlikely],
      climbSentence(demo.flight),
      coastSentence(demo),
      stabilitySentence(demo),
      strengthSentence(demo),
      cleanAndHoldsSentence(demo),
      driversSentence(demo) ?? "None.",
      delayShareSentence(demo) ?? "None.",
    ];
    expect(sentences.length).toBeGreaterThan(11);
    for (const sentence of sentences) expect(plain(sentence)).toMatch(/^[\p{Lu}\d].*\.$/u);
    // told after the word look
    for (const look of looks) expect(plain(look)).toMatch(/^\p{Ll}.*\.$/u);
    sentences.push(...looks);
    expect(sentences.join(" ")).not.toMatch(/undefined|null|NaN|\bsafe\b/);
  });
});

describe("sentences in feet and inches", () => {
  /** Metric units as sentences have them, after a figure; a cut is told in both. */
  const METRIC = /[\d.] (?:m|mm|m\/s|m\/s²|g|kg|J|°C|hPa)(?![\w/²])/u;
  const bothDepths = / \([\d.]+ mm\)/gu;

  test("hold no metric unit, and say the same otherwise", () => {
    const home = { delay: 11, removed: 3, end: "B", spacers: [], depth: 0.00238125 };
    const data = withCut(
      { homeCut: home, homeWeather: { wind: [0, 8], temperature: [278.15, 298.15] }, reachesLeast: false },
      { temperature: 285.15, pressure: 98_700 },
    );
    const stop = { ...toldBy("ceiling", "most"), verdict: "stop", value: 1500, limit: 1219.2, unit: "m" } as const;
    const look = { ...stop, verdict: "look" } as const;
    const looked = { ...data, checks: [stop, look], doubts: [] };
    const behind = { ...data, settings: data.settings.map((setting) => ({ ...setting, firesFirst: 0.02 })) };
    const say = (units: "metric" | "imperial"): string[] =>
      [
        ...basisLines(data, units),
        ...Object.values(whySentences(data, units)),
        ...Object.values(backUpSentences(behind, units) ?? {}),
        ...openingSentences(data, units),
        ...openingSentences({ ...data, draws: 1 }, units),
        ...unopenedSentences(data, units),
        ...stopSentences(looked, units),
        ...lookOutSentences(looked, units).looks,
        ...lookOutSentences(
          { ...looked, warnings: [{ code: "surface-wind-carried-up", value: 900, limit: 300 }] },
          units,
        ).warnings,
        headlineSentence(withCut({}), units),
        twoCutsSentence(data, units),
        climbSentence(data.flight, units),
        coastSentence(data, units),
        stabilitySentence(data, units),
        descentSentence(data, units) ?? "",
        strengthSentence(data, units),
        cleanAndHoldsSentence(data, units),
      ].map(plain);
    const [metric, imperial] = [say("metric"), say("imperial")];
    expect(data.opened).not.toBeNull();
    expect(metric.filter((sentence) => METRIC.test(sentence)).length).toBeGreaterThan(14);
    expect(
      imperial.map((sentence) => sentence.replace(bothDepths, "")).filter((sentence) => METRIC.test(sentence)),
    ).toEqual([]);
    const words = (sentence: string): string =>
      sentence
        .replace(/[-\d./ ()]+|\b(mm|m\/s|m|ft\/s|ft|in|mph|J|lbf|hPa|inHg|kg|g|oz|lb)\b|[²]|°[CF]/gu, " ")
        .replace(/ +/g, " ");
    expect(imperial.map(words)).toEqual(metric.map(words));
  });

  test("have the right figures", () => {
    // 8 m/s is 17.9 mph, 5 and 25 °C are 41 and 77 °F
    const weather = { wind: [0, 8], temperature: [278.15, 298.15] } as const;
    expect(plain(weatherSentence(weather, "imperial"))).toBe(
      "That leaves room for a wind of 0 to 18 mph and 41 to 77 °F.",
    );
    expect(plain(takeOutWords(ninth, null, "imperial"))).toBe("take 5 s out, end A with the ring, 5/32 in (4.0 mm)");
    // 18.2 m/s is 59.71 ft/s, 565.7 m is 1855.97 ft: rounded so that they stay true
    expect([belowWords(18.2), aboveWords(565.7)].map(plain)).toEqual(["19 m/s", "565 m"]);
    expect([belowWords(18.2, "imperial"), aboveWords(565.7, "imperial")].map(plain)).toEqual(["60 ft/s", "1855 ft"]);
    expect(plain(belowWords(18))).toBe("18 m/s");
  });
});

describe("checkLine()", () => {
  test("puts every check into cells", () => {
    for (const check of demo.checks) {
      const line = checkLine(check);
      expect(line.word).toBe(verdictWords[check.verdict]);
      if (check.verdict !== "pass") expect(line.meaning).not.toBe("");
    }
    const speed = {
      id: "guide-exit-speed",
      code: "guide-exit-speed",
      sense: "least",
      details: [],
      missing: [],
      edition: "",
      status: "memory",
      verdict: "look",
      value: 11.23,
      limit: 15,
      unit: "m/s",
      source: "",
    } as const;
    const { name, value, limit, word, meaning } = checkLine(speed);
    expect([name, value, limit, word].map(plain)).toEqual(["Guide-exit speed", "11.2 m/s", "least 15 m/s", "look"]);
    expect(meaning).toMatch(/^It leaves the guide too slowly .*\.$/);
    // 11.23 m/s is 36.8 ft/s, 15 m/s is 49.2 ft/s; 9 m/s is 20.1 mph
    const other = checkLine(speed, "imperial");
    expect([other.value, other.limit].map(plain)).toEqual(["37 ft/s", "least 49 ft/s"]);
    expect(plain(checkLine({ ...speed, code: "wind-limit", sense: "most", limit: 9 }, "imperial").limit)).toBe(
      "most 20 mph",
    );
    const ratio = { ...speed, code: "thrust-to-weight", value: 6.65, limit: 5, unit: "" } as const;
    expect(checkLine(ratio, "imperial")).toEqual(checkLine(ratio));
  });
});
