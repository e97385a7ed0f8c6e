import type { OverCut } from "@delaywright/engine";
import { renderToString } from "react-dom/server";
import { expect, test } from "vitest";
import { OverCutWays } from "./over-cut-ways.js";

const check = {
  id: "ceiling",
  code: "ceiling",
  verdict: "look",
  value: 1500,
  limit: 1219.2,
  unit: "m",
  sense: "most",
  details: [],
  missing: [],
  source: "the field",
  edition: "",
  status: "own default, no source",
} as const;
const overCut: OverCut = {
  delay: 6.1,
  delaySd: 0.18,
  clean: 0.3,
  holds: 0.9,
  ballast: [
    {
      from: 0.1,
      to: 0.3,
      untriedBeyond: false,
      at: 0.2,
      best: { mass: 0.2, clean: 0.91, holds: 0.999 },
      checks: [check],
    },
  ],
  // a name may hold the very word that parts a sentence
  rockets: [{ name: "Demo But 54", clean: 0.85, holds: 0.995, stops: false }],
  doNotFly: false,
};

test("OverCutWays shows each way with its odds, what its checks find apart, in the flyer's units", () => {
  const page = renderToString(<OverCutWays overCut={overCut} units="imperial" />).replace(/\s/gu, " ");
  expect(page).toMatch(/best 7\.1 oz, 91 % clean, holds 99\.9 %\.<small>But look: height .* 4921 ft, most 4000 ft/);
  expect(page).toContain("<span>Another rocket, Demo But 54: 85 % clean, holds 99.5 %.</span><b>85 %</b>");
  expect(page.match(/<small>/g)).toHaveLength(1);
});
