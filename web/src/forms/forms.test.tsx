import { checkField, type Kind, kinds, parseQuantity, type Raw } from "@delaywright/documents";
import { renderToString } from "react-dom/server";
import { beforeEach, describe, expect, test, vi } from "vitest";
import {
  blankDocument,
  FieldForm,
  FlyerForm,
  MotorForm,
  MotorInHandForm,
  PlanBallastForm,
  PlanChoiceForm,
  PlanDayForm,
  PlanGuideForm,
  PlanHeadForm,
  PlanLimitsForm,
  PlanPackingForm,
  PlanRulesForm,
  PlanSiteForm,
  PlanSpreadForm,
  PlanWeatherForm,
  RocketForm,
  RuleSetForm,
  ToolForm,
} from "./index.js";
import { limitValue } from "./limit-field.js";
import { thrustFrom } from "./thrust-field.js";

const store = vi.hoisted(() => ({ entries: [] as { path: string }[] }));
vi.mock("../store/index.js", () => ({
  useEntries: () => store.entries,
  useEntry: (path: string) => store.entries.find((entry) => entry.path === path),
  useEntryPart: (path: string, select: (entry: unknown) => unknown) =>
    select(store.entries.find((entry) => entry.path === path)),
  useListing: () => store.entries,
  useSettings: () => [{ units: "imperial", theme: "auto", lastExport: null }, () => {}],
  useStepLabel: () => undefined,
}));

const HOSTILE = "<img src=x onerror=alert(1)>";

function keep(path: string, raw: Raw, drafts: Readonly<Record<string, string>> = {}): void {
  store.entries.push({ path, kind: raw["kind"] as Kind, name: raw["name"], raw, drafts } as never);
}

const planForms = [
  PlanDayForm,
  PlanHeadForm,
  PlanWeatherForm,
  PlanGuideForm,
  PlanLimitsForm,
  PlanSpreadForm,
  PlanBallastForm,
  PlanChoiceForm,
  PlanSiteForm,
  PlanPackingForm,
  PlanRulesForm,
];

describe("forms", () => {
  beforeEach(() => {
    store.entries.length = 0;
  });

  test("show hostile names, drafts and file names as text", () => {
    keep("a.plan.json", {
      kind: "plan",
      version: 1,
      name: HOSTILE,
      rocket: HOSTILE,
      motor: { kind: "motor", name: HOSTILE },
    });
    keep("a.rocket.json", { kind: "rocket", version: 1, name: HOSTILE, note: HOSTILE }, { massWithoutMotor: HOSTILE });
    keep("a.motor.json", { kind: "motor", version: 1, name: HOSTILE, thrust: HOSTILE, hazards: [HOSTILE] });
    keep("a.field.json", {
      kind: "field",
      version: 1,
      name: HOSTILE,
      keepOff: [{ name: HOSTILE, points: [[HOSTILE]] }],
    });
    const pages = [
      ...planForms.map((Form) => renderToString(<Form path="a.plan.json" />)),
      renderToString(<RocketForm path="a.rocket.json" page />),
      renderToString(<MotorForm path="a.motor.json" page />),
      renderToString(<FieldForm path="a.field.json" page />),
    ];
    expect(pages.join("").match(/&lt;img/g)?.length).toBeGreaterThan(8);
    expect(pages.join("")).not.toContain("<img");
  });

  test("of blank documents say what is needed, and neither NaN nor undefined", () => {
    keep("b.rocket.json", blankDocument("rocket"));
    keep("b.motor.json", blankDocument("motor"));
    keep("b.hand.json", blankDocument("motor-in-hand"));
    keep("b.tool.json", blankDocument("tool"));
    keep("b.field.json", blankDocument("field"));
    keep("b.flyer.json", blankDocument("flyer"));
    keep("b.rule-set.json", blankDocument("rule-set"));
    keep("b.plan.json", blankDocument("plan"));
    const page = [
      renderToString(<RocketForm path="b.rocket.json" />),
      renderToString(<MotorForm path="b.motor.json" />),
      renderToString(<MotorInHandForm path="b.hand.json" />),
      renderToString(<ToolForm path="b.tool.json" />),
      renderToString(<FieldForm path="b.field.json" />),
      renderToString(<FlyerForm path="b.flyer.json" />),
      renderToString(<RuleSetForm path="b.rule-set.json" />),
      ...planForms.map((Form) => renderToString(<Form path="b.plan.json" />)),
    ].join("");
    expect(page).not.toMatch(/NaN|undefined|\[object/);
    expect(page.match(/>needed</g)?.length).toBeGreaterThan(10);
  });

  test("say a wrong draft, two right spellings and the last right value", () => {
    keep(
      "c.rocket.json",
      { kind: "rocket", version: 1, name: "Demo", massWithoutMotor: "1.78 kg" },
      { massWithoutMotor: "1.78 kq" },
    );
    const page = renderToString(<RocketForm path="c.rocket.json" />);
    expect(page).toContain("This unit is not known");
    expect(page).toContain("The last right value counts: 1.78 kg.");
    expect(page).toMatch(/Write [\d.]+ kg or [\d.]+ lb\./);
    expect(page).toContain('value="1.78 kq"');
  });

  test("show a metric quantity in imperial units beside it, never in it", () => {
    keep("d.rocket.json", { kind: "rocket", version: 1, name: "Demo", diameter: "75 mm", length: "1.5 m" });
    const page = renderToString(<RocketForm path="d.rocket.json" />);
    expect(page).toContain('value="75 mm"');
    expect(page).toMatch(/= 2\.953 in/);
    expect(page).toMatch(/= 59\.06 in/);
    expect(page).toContain('placeholder="0.000787 in"');
    expect(page).not.toMatch(/placeholder="[\d.]+ (?:mm|um|m|m\/s)"/);
  });

  test("show a day as it was typed, its day of the week beside it, and what is wrong with one", () => {
    const plan = { kind: "plan", version: 1, name: "Demo", date: "2026-05-02" };
    keep("e.plan.json", plan);
    expect(renderToString(<PlanDayForm path="e.plan.json" />)).toMatch(/value="2026-05-02".*Saturday 2 May/s);
    keep("f.plan.json", plan, { date: "2 May" });
    const page = renderToString(<PlanDayForm path="f.plan.json" />);
    expect(page).toContain('value="2 May"');
    expect(page).toContain("a day as year-month-day is accepted");
    expect(page).toMatch(/Write 2026-05-02\..* The last right value counts: 2026-05-02\./s);
    expect(page).not.toContain("Saturday");
  });

  test("show a club's rules with what they were before, and what is wrong with a limit", () => {
    keep("g.rule-set.json", {
      kind: "rule-set",
      version: 1,
      name: "Club",
      limits: { "wind-limit": { stop: "6 m" }, "weather-age": "off", daylight: "off", [HOSTILE]: { stop: 1 } },
    });
    const page = renderToString(<RuleSetForm path="g.rule-set.json" page />).replace(/\s|<!-- -->/gu, (each) =>
      each.length > 1 ? "" : " ",
    );
    expect(page).toMatch(/<span>Wind<\/span>.*Else stop past most 20 mph; from High Power Rocket Safety Code/);
    expect(page).toMatch(/value="6 m".*6 m.* found; a speed with its unit is accepted, for example/);
    expect(page).toContain('placeholder="20 mph"');
    expect(page.match(/Turned off\./g)).toHaveLength(1);
    expect(page).toContain("the name of a rule: instructions-not-confirmed");
    expect(page).not.toContain("<img");
    expect(page).not.toMatch(/NaN|undefined|\[object/);
  });

  test("show a half-typed limit beside the last right one, which counts", () => {
    keep(
      "i.rule-set.json",
      { kind: "rule-set", version: 1, name: "Club", limits: { "wind-limit": { stop: "6 m/s" }, "landing-inside": {} } },
      { "limits.wind-limit.stop": "7 m", "limits.landing-inside.stop": "30" },
    );
    const page = renderToString(<RuleSetForm path="i.rule-set.json" page />).replace(/<!-- -->/g, "");
    expect(page).toMatch(/value="7 m"[^>]*>.*7 m.* found; a speed with its unit is accepted/);
    expect(page).toContain("The last right value counts: 6 m/s.");
    expect(page).toMatch(/value="30"[^>]*>.*30 found; a number from 0 to 1 is accepted/);
    expect(page.match(/The last right value counts/g)).toHaveLength(1);
    expect(page.match(/aria-invalid="true"/g)).toHaveLength(2);
  });

  test("say yes, no, or that a thing is not said", () => {
    keep("h.plan.json", { kind: "plan", version: 1, name: "Demo", site: { daylight: true, fireMeans: false } });
    const page = renderToString(<PlanSiteForm path="h.plan.json" />);
    const chosen = (label: string) =>
      new RegExp(`${label}.*?data-selected="true"[^>]*>(?:<span[^>]*>.*?</span>)?([a-z ]+)<`, "s").exec(page)?.[1];
    expect([chosen("The sun is up"), chosen("Means to report"), chosen("An adult")]).toEqual(["yes", "no", "not said"]);
  });

  test("show nothing for a document that is gone", () => {
    expect(renderToString(<RocketForm path="gone.rocket.json" />)).not.toContain("NaN");
  });
});

describe("blankDocument()", () => {
  test.each(Object.keys(kinds) as Kind[])("of a %s holds nothing that pretends to be measured", (kind) => {
    const raw = blankDocument(kind);
    expect(Object.keys(raw).sort()).toEqual(["kind", "name", "version"]);
    expect(checkField(kind, "name", raw["name"])).toBeUndefined();
    expect(parseQuantity(String(raw["name"]), "length").ok).toBe(false);
  });
});

test("limitValue() is a number only where the rule takes numbers", () => {
  expect([limitValue("0,05", true), limitValue("5 %", true), limitValue("none", true)]).toEqual([0.05, 0.05, "none"]);
  expect([limitValue("6", false), limitValue("6 m/s", false)]).toEqual(["6", "6 m/s"]);
});

describe("thrustFrom()", () => {
  test("keeps a curve as times and newtons", () => {
    expect(thrustFrom("time,thrust\n0,0\n0.1,190\n2,0")).toEqual({
      ok: true,
      thrust: { time: [0, 0.1, 2], newtons: [0, 190, 0] },
    });
  });

  test("names the lines that are wrong", () => {
    const read = thrustFrom("time,thrust\n0,0\n0.1,much\n2,0");
    expect(read.ok ? [] : read.faults.map((fault) => fault.path)).toEqual(["line 3"]);
  });
});
