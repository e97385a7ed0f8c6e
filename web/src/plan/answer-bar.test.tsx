import type { Issue } from "@delaywright/documents";
import { renderToString } from "react-dom/server";
import { describe, expect, test, vi } from "vitest";
import type { PlanAnswer } from "../compute/index.js";
import { inventedDocuments, inventedSetting, inventedTold } from "../standing/invented.js";
import { AnswerBar } from "./answer-bar.js";

vi.mock("../compute/index.js", () => ({ progressOf: () => ({ get: () => null, subscribe: () => () => undefined }) }));
vi.mock("../store/index.js", () => ({ useListing: () => [] }));

/** What the bar says, without its marks. */
function said(answer: Partial<PlanAnswer>, units: "metric" | "imperial" = "metric"): string {
  const whole = {
    issues: [],
    told: null,
    fresh: true,
    settling: false,
    failure: null,
    pictures: null,
    pictured: false,
    ...answer,
  };
  const page = renderToString(
    <AnswerBar answer={whole} documents={inventedDocuments()} age={null} next={null} units={units} />,
  );
  return page
    .replace(/<!-- -->/g, "")
    .replace(/<[^>]*>/g, " ")
    .replaceAll("&quot;", '"')
    .replace(/\s+/gu, " ");
}

describe("AnswerBar", () => {
  test("says of every issue where, what was found, what is accepted, and an example", () => {
    const issue: Issue = {
      file: "demo-76.rocket.json",
      path: "fins[0].root",
      code: "unit-missing",
      found: '"180"',
      accepted: "a length with its unit",
      example: '"180 mm"',
    };
    const missing = { ...issue, path: "length", code: "missing", found: "nothing", example: '"1.52 m"' };
    const words = said({ issues: [issue, missing] });
    expect(words).toContain("2 things are missing or wrong");
    expect(words).toContain(
      'Fins 1, root: the unit is missing: "180" found A length with its unit is accepted, for example "180 mm".',
    );
    expect(words).toContain('Length: missing A length with its unit is accepted, for example "1.52 m".');
  });

  test("says of a charge behind electronics that it opens clean alone, and how often it fires first", () => {
    const behind = inventedTold({ data: { settings: [inventedSetting({ firesFirst: 0.02 })] } });
    const words = said({ told: behind });
    expect(words).toContain("clean alone");
    expect(words).toContain("if the electronics fails; fires before it in 2 %");
    expect(words).toContain("Alone, 9 in 10 open below 19 m/s");
    const own = said({ told: inventedTold() });
    expect(own).not.toMatch(/alone|electronics/i);
    expect(own).toContain("9 in 10 open below 19 m/s");
  });

  test("has its cut and its bounds in the flyer's units", () => {
    const words = said({ told: inventedTold() }, "imperial");
    expect(words).toContain("take 5 s out, end A with the ring, 5/32 in (4.0 mm)");
    // 18.2 m/s is 59.71 ft/s
    expect(words).toContain("9 in 10 open below 60 ft/s");
  });
});
