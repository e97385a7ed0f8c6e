import { WORKED_EXAMPLE } from "./pages/bench.js";
import { ChecksSection } from "./pages/checks.js";
import type { PlanPage } from "./pages/plan.js";
import { field, more, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const LEAN = "Lean of the guide";
const AUTHORITY = "the range safety officer and local law come before anything said here";

async function checksOf(plan: PlanPage): Promise<ChecksSection> {
  return new ChecksSection(plan.page, await plan.section("Checks"));
}

/** Leans the guide; gives what the answer then says. */
async function lean(plan: PlanPage, angle: string): Promise<string> {
  const guide = await more(await plan.section("Field & weather"), "Launch guide");
  return plan.answerAfter(() => field(guide, "Tilt").fill(angle));
}

story("A plan that a check stops names value, limit and source, and mending it makes it go", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  expect(await plan.settled()).not.toContain("stop");

  await story.step(
    "the guide leans beyond what the safety code allows: the answer says stop, and who decides",
    async () => {
      expect(await lean(plan, "22 deg")).toContain("One check says stop.");
      await expect(plan.answer).toContainText(LEAN);
      await expect(plan.answer).toContainText(AUTHORITY);
    },
  );

  await story.step("the section names value, limit and source", async () => {
    const checks = await checksOf(plan);
    expect(await words(checks.rule(LEAN))).toMatch(/22 deg.*most 20 deg.*stop$/);
    expect(await checks.source(LEAN)).toContain("High Power Rocket Safety Code");
    await expect(checks.section).toContainText(AUTHORITY);
  });

  await story.step("upright again, nothing says stop", async () => {
    expect(await lean(plan, "0 deg")).not.toContain("stop");
    await expect(plan.answer).not.toContainText(AUTHORITY);
  });
});

story("A club's rule set loosens a limit and tightens it", async ({ bench, page }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  expect(await lean(plan, "22 deg")).toContain("One check says stop.");
  const rules = await (await checksOf(plan)).newRuleSet();
  await rules.name("Club rules");
  await field(rules.main, "Written in").fill("Field rules, item 4");
  const rule = await rules.add(LEAN, "High Power Rocket Safety Code");
  await expect(rule).toContainText(/stop past most 20\sdeg/);
  const stop = field(rule, "Stop past most");

  await story.step("a limit of the wrong kind says what is accepted", async () => {
    await stop.fill("30 m");
    await expect(stop).toHaveAttribute("aria-invalid", "true");
    await expect(stop).toHaveAccessibleDescription(/an angle with its unit is accepted/);
  });

  await story.step("what is half typed is there after a reload, and the last right limit counts", async () => {
    await stop.fill("25 deg");
    await stop.fill("25 de");
    await page.reload();
    await expect(stop).toHaveValue("25 de");
    await expect(stop).toHaveAttribute("aria-invalid", "true");
    await expect(stop).toHaveAccessibleDescription(/The last right value counts: 25 deg\./);
    expect(JSON.parse(await rules.export())).toMatchObject({ limits: { "tilt-limit": { stop: "25 deg" } } });
    const look = field(rule, "Look past most");
    await look.fill("1");
    await look.fill("");
    await expect(stop).toHaveValue("25 de");
    await stop.fill("");
    await expect(stop).not.toHaveAttribute("aria-invalid", "true");
    await expect(rule).toBeVisible();
  });

  await story.step("loosened: the lean no longer stops the plan", async () => {
    await stop.fill("30 deg");
    await expect(stop).not.toHaveAttribute("aria-invalid", "true");
    await rules.goToPlan(WORKED_EXAMPLE);
    await expect.poll(() => plan.settled()).not.toContain("says stop");
  });

  await story.step("tightened: it stops it by the club's own limit", async () => {
    const checks = await checksOf(plan);
    await checks.section.getByRole("link", { name: "Open Club rules" }).click();
    await stop.fill("10 deg");
    await rules.goToPlan(WORKED_EXAMPLE);
    await expect.poll(() => plan.settled()).toContain("One check says stop.");
    const again = await checksOf(plan);
    expect(await words(again.rule(LEAN))).toMatch(/22 deg.*most 10 deg.*stop$/);
    expect(await again.source(LEAN)).toContain("Field rules, item 4");
  });
});

story("What was not checked is asked for, and what the packing lacks", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  const checks = await checksOf(plan);
  const count = async (): Promise<number> =>
    Number(/(\d+) rules were not checked/.exec(await words(checks.section))?.[1]);
  const before = await count();

  await story.step("the cloud cover is said where the check leads: its rule is checked", async () => {
    await checks.say("the cloud cover");
    const cover = field(await plan.section("Field & weather"), "Cloud cover");
    await expect(cover).toBeFocused();
    await cover.fill("30 %");
    await expect.poll(count).toBe(before - 1);
  });

  await story.step("the packing says what would size the static ports", async () => {
    const packing = await plan.section("Packing");
    await expect(packing).toContainText(/of black powder in 1018\scm³/);
    await packing.getByRole("button", { name: /bay that an altimeter sits in is not known/ }).click();
    const across = field(packing, "Electronics bay, across");
    await expect(across).toBeFocused();
    await across.fill("72 mm");
    await field(packing, "Electronics bay, long").fill("150 mm");
    await expect(packing).toContainText(/Static ports for the electronics bay of 611\scm³/);
  });
});
