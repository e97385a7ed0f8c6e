import type { Check } from "@delaywright/engine";
import { renderToString } from "react-dom/server";
import { expect, test, vi } from "vitest";
import type { PlanAnswer } from "../../compute/index.js";
import { inventedDocuments, inventedTold } from "../../standing/invented.js";
import { ChecksSection } from "./checks-section.js";
import type { SectionProps } from "./section-props.js";

vi.mock("../../store/index.js", () => ({
  useEntry: () => ({ path: "demo.plan.json", kind: "plan", raw: { kind: "plan" }, drafts: {} }),
  useEntryPart: (_: string, select: (entry: unknown) => unknown) =>
    select({ path: "demo.plan.json", kind: "plan", raw: { kind: "plan" }, drafts: {} }),
  useListing: () => [],
  useSettings: () => [{ units: "imperial" }, () => {}],
}));
vi.mock("../../parts/use-narrow.js", () => ({ useNarrow: () => false }));

const check = (more: Partial<Check>): Check => ({
  id: "tilt-limit",
  code: "tilt-limit",
  verdict: "pass",
  value: 0.1,
  limit: 0.3490658503988659,
  unit: "rad",
  sense: "most",
  details: [],
  missing: [],
  source: "High Power Rocket Safety Code",
  edition: "item 9",
  status: "memory",
  ...more,
});
const unknown = check({ id: "cloud-cover", code: "cloud-cover", verdict: "not-checked", missing: ["cloudCover"] });

function shown(checks: readonly Check[]): string {
  const told = { ...inventedTold({ data: { checks, warnings: [], doubts: [], drivers: [] } }) };
  const props: SectionProps = {
    documents: inventedDocuments(),
    answer: { told, issues: [] } as unknown as PlanAnswer,
    state: { id: "checks", title: "Checks", mark: "part", aside: "" },
    age: null,
    next: null,
    units: "imperial",
  };
  return renderToString(<ChecksSection {...props} />).replace(/\s|<!-- -->/gu, (each) => (each.length > 1 ? "" : " "));
}

test("ChecksSection shows what stops with value, limit and source, and leads to what is not known", () => {
  const page = shown([
    check({ id: "ceiling", code: "ceiling", unit: "m" }),
    check({ verdict: "stop", value: 0.4 }),
    unknown,
  ]);
  const [first = ""] = page.match(/<tbody>.*?<\/tbody>/) ?? [];
  expect(first).toMatch(/Lean of the guide<small>The guide leans more.*22\.9 deg.*most 20 deg.*stop/);
  expect(first).toContain("High Power Rocket Safety Code, item 9, from memory, not read again");
  expect(first).not.toContain("Cloud cover");
  expect(page).toContain("1 within.");
  expect(page).toContain("1 rule was not checked, because the cloud cover is not known.");
  expect(page).toMatch(/Not known: .*<button[^>]*class="plan-link"[^>]*>the cloud cover<\/button>/);
  expect(page).toContain("Say what is not known");
});

test("ChecksSection says who decides, whatever the verdicts, and lets the rules be chosen", () => {
  for (const checks of [[], [check({})], [check({ verdict: "stop" })]]) {
    const page = shown(checks);
    expect(page).toContain("the range safety officer and local law come before anything said here");
    expect(page).toContain("Held against");
    expect(page).toContain("the association&#x27;s codes and the aviation rule");
    expect(page).toContain("New rule set");
  }
  expect(shown([check({})])).toContain("No rule says stop or look.");
});
