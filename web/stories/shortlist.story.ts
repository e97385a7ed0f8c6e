import { fitsWidth, hasLargeTargets, isAccessible } from "./given/accessible.js";
import { shortlist, unpacked } from "./given/command-line.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { words } from "./pages/sheet.js";
import { ShortlistPage } from "./pages/shortlist.js";
import { expect, story } from "./story.js";

const CEILING = 1400;
const HEIGHT = 600;
const TOUCH = 44;

/** The motor that the plan has at first. */
const OWN = "Demo H150";

story("A motor is chosen by a height to reach, under the ceiling, and goes into the plan", async ({ bench, page }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  const list = await plan.goToShortlist();

  await story.step("the demo library comes onto the bench, and its motors are judged one by one", async () => {
    await list.judged();
    await list.bringDemoMotors();
    await expect(list.progress).toBeVisible();
    expect(await list.judged()).toMatch(/^\d+ of 51 motors are left for Demo rocket 76 here today/);
  });

  const rows = await story.step("the nearest to the height comes first, each with its cut and odds", async () => {
    await list.aimAt("Nearest to a height", `${HEIGHT} m`);
    await expect(list.section("Not refused")).toContainText(/nearest to 600\sm first/);
    const found = await list.rows();
    expect(found.length).toBeGreaterThan(5);
    const far = found.map(({ median }) => Math.abs((median ?? 0) - HEIGHT));
    expect(far).toEqual([...far].sort((a, b) => a - b));
    for (const { most, lead } of found) {
      expect(most ?? Number.POSITIVE_INFINITY).toBeLessThanOrEqual(CEILING);
      expect(lead).toMatch(/^(Cut to|Leave it at) [\d.]+ s.* · \d+ % clean, holds/);
    }
    await isAccessible(page, "the shortlist");
    await fitsWidth(page, "the shortlist");
    await hasLargeTargets(page, "the shortlist", TOUCH);
    return found;
  });

  const other = rows.find(({ name, lead }) => name !== OWN && lead.startsWith("Cut to "));
  if (other === undefined) throw new Error("no other motor is left");
  await story.step("it goes into the plan, undo takes it out, and nothing was asked", async () => {
    await list.putIntoPlan(other.name);
    await page.getByRole("button", { name: `Undo: motor: ${other.name}` }).click();
    await expect(list.row(other.name).getByRole("button", { name: "Put it into the plan" })).toBeVisible();
    await list.putIntoPlan(other.name);
    await list.judged();
    expect((await list.rows()).map(({ name }) => name)).toEqual(rows.map(({ name }) => name));
  });

  await story.step("the plan's own answer is the same delay", async () => {
    const chosen = await list.openPlanOf(other.name);
    await expect(chosen.heading).toHaveText(WORKED_EXAMPLE);
    expect(other.lead).toContain("Cut to ");
    expect(await chosen.settled()).toContain(/^Cut to [\d.]+ s/.exec(other.lead)?.[0] ?? "no cut");
  });

  await story.step("and the command line gives the same list", async () => {
    const home = await plan.goToBench();
    const told = await shortlist(await unpacked(await home.exportEverything(), WORKED_EXAMPLE), `${HEIGHT} m`);
    expect(told.ranked.map(({ name }) => name.replace(/ \(.*/, ""))).toEqual(rows.map(({ name }) => name));
    expect(told.ranked.map(({ height }) => Math.round(height?.p50 ?? 0))).toEqual(rows.map(({ median }) => median));
  });
});

story("Why a motor is refused stands with value and limit, from the motors' own shelf", async ({ bench, page }) => {
  await bench.isOpen();
  const shelf = await bench.openShelf("Motor types");
  const made = await shelf.make("motor type");
  await made.name("Own half-made motor");
  await made.back();
  await page.getByRole("button", { name: "Bring the demo motors" }).click();
  await expect(shelf.line("Demo K334")).toBeVisible();
  await page.getByRole("button", { name: "Shortlist of these motors for a plan" }).click();
  await page.getByRole("link", { name: WORKED_EXAMPLE }).click();
  const list = new ShortlistPage(page);
  await list.isOpen();
  await list.judged();

  await story.step("too wide: the motor's diameter and the mount's", async () => {
    const wide = await words(list.refusal("Too wide for the mount, most 38 mm"));
    expect(wide).toMatch(/Demo K334 54 mm/);
    expect(wide).toMatch(/also: too long for the mount/);
  });

  await story.step("too weak, too high, and no delay that is good enough", async () => {
    expect(await words(list.refusal("Thrust to weight, least 3"))).toMatch(/Demo F38 1\.91/);
    expect(await words(list.refusal("Height that 95 % stay below"))).toMatch(/most 1400 m Demo J302 1633 m/);
    await expect(list.refusal("No delay that can be made opens clean often enough")).toContainText(/Demo.H104/);
  });

  await story.step("a motor that is not complete stops no other, and leads to what it lacks", async () => {
    const unjudged = list.section("Not judged");
    await expect(unjudged).toContainText("Own half-made motor");
    await unjudged.getByRole("link", { name: "Open Own half-made motor" }).click();
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("Own half-made motor");
  });

  await story.step("a new plan with another motor leaves the plan as it was", async () => {
    await page.goBack();
    await list.judged();
    const [first] = await list.rows();
    const plan = await list.beginPlanWith(first?.name ?? "");
    await expect(plan.heading).toHaveText(`${WORKED_EXAMPLE}, ${first?.name}`);
    await plan.goToBench();
    await expect(bench.card(WORKED_EXAMPLE)).toContainText(OWN);
  });
});
