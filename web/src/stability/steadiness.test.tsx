import { renderToStaticMarkup } from "react-dom/server";
import { expect, test, vi } from "vitest";
import type { PlanAnswer, SteadinessAnswer } from "../compute/index.js";
import { inventedSteadiness } from "../pictures/invented-steadiness.js";
import type { SectionProps } from "../plan/sections/section-props.js";
import { inventedDocuments, inventedTold } from "../standing/invented.js";
import { SteadinessPart } from "./steadiness-part.js";
import { SteadinessView } from "./steadiness-view.js";

const asked = vi.hoisted(() => ({ plans: [] as string[], answer: null as unknown }));
vi.mock("../compute/index.js", () => ({
  useSteadiness(plan: string, active: boolean) {
    if (active) asked.plans.push(plan);
    return asked.answer;
  },
}));

const limit = (code: string, value: number) => ({ code, limit: value, verdict: "pass" });
const props: SectionProps = {
  documents: inventedDocuments(),
  answer: {
    told: inventedTold({ data: { checks: [limit("margin-at-guide-exit", 1.5)] } }),
    issues: [],
  } as unknown as PlanAnswer,
  state: { id: "delay", title: "Delay", mark: "full", aside: "" },
  age: null,
  next: null,
  units: "metric",
};
const plain = (page: string): string => page.replaceAll(/[\u00a0\u202f]/gu, " ");

function shown(answer: Partial<SteadinessAnswer>, units: SectionProps["units"] = "metric"): string {
  asked.answer = { state: "ready", steadiness: inventedSteadiness(), fresh: true, failure: null, ...answer };
  return plain(renderToStaticMarkup(<SteadinessView {...props} units={units} />));
}

test("SteadinessPart asks for no flight while it is folded", () => {
  asked.plans = [];
  const page = renderToStaticMarkup(<SteadinessPart {...props} />);
  expect(page).toContain("How steady it flies");
  expect(page).not.toContain("picture");
  expect(asked.plans).toEqual([]);
});

test("SteadinessView tells the verdict, the models apart, the swing and the margin, before and beside its pictures", () => {
  const page = shown({});
  const places = [
    "Neither unstable, over-stable nor under-damped",
    "The rigid model reaches the top",
    "picture-stability",
    "picture-swing",
    "Leaving the guide, the air meets it at 5.2 deg",
    "<table>",
    "picture-margin",
  ].map((words) => page.indexOf(words));
  expect(places.every((place, i) => place > (places[i - 1] ?? 0))).toBe(true);
  // the rules' own least margin
  expect(page).toContain("least 1.5");
  expect(page).toMatch(/<th scope="row">guide exit<\/th><td>0\.30<\/td><td>0\.06<\/td><td>2\.20<\/td><td>2\.20<\/td>/);
  expect(page).not.toMatch(/\bsafe\b/i);
});

test("SteadinessView follows the flyer's units", () => {
  const page = shown({}, "imperial");
  // 2.2 kg, 1.2 m/s
  expect(page).toMatch(/<small>lb<\/small>.*<td>4\.85<\/td>/);
  expect(page).toContain("a gust of 3 mph across");
});

test("SteadinessView fades what is not of the documents as they are now, and says why nothing is there", () => {
  expect(shown({ fresh: false, state: "waiting" })).toContain("stability-settling");
  expect(shown({})).toContain("stability-settled");
  expect(shown({ steadiness: null, state: "waiting" })).toContain("Flying it as a rigid body.");
  expect(shown({ steadiness: null, state: "wrong" })).toContain("The documents have issues: nothing is flown.");
  expect(shown({ steadiness: null, state: "failed", failure: "It stopped." })).toContain("It stopped.");
});

test("SteadinessView draws nothing of a rocket that never left the guide", () => {
  const data = inventedSteadiness();
  const page = shown({ steadiness: { ...data, stability: { ...data.stability, moments: [], guideExitAngle: null } } });
  expect(page).toContain("It never left the guide");
  expect(page).not.toContain("<svg");
});
