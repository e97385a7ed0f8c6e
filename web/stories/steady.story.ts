import { fitsWidth, hasLargeTargets, isAccessible } from "./given/accessible.js";
import { close, printedText } from "./given/printed.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { field, more, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

story("How steady a plan flies is told when it is asked for, and follows the wind", async ({ bench, page, narrow }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  const steady = await more(await plan.section("Delay"), "How steady it flies");

  await story.step(
    "the rigid body stands beside the default model, with its seed, its angles and its margin",
    async () => {
      await expect(steady).toContainText("The rigid model reaches the top");
      await expect(steady).toContainText("seed 1");
      await expect(steady).toContainText("Neither unstable, over-stable nor under-damped");
      for (const picture of ["Angle of attack and static margin over time", "Static margin over Mach number"])
        await expect(steady.getByRole("img", { name: picture })).toBeVisible();
      await expect(steady.getByRole("row", { name: /^guide exit/ })).toBeVisible();
    },
  );

  await story.step("nobody is hindered by it, in any theme, and it fits the page", async () => {
    await isAccessible(page, "the steadiness");
    await fitsWidth(page, "the steadiness");
    await hasLargeTargets(page, "the steadiness", 44);
  });

  if (!narrow)
    await story.step("it stands on paper while it is open", async () => {
      const { text } = await printedText(await page.pdf({ format: "A4" }));
      expect(text).toContain(close("How steady it flies, as a rigid body"));
      expect(text).toContain(close("The rigid model reaches the top"));
    });

  await story.step("in a calm there is no turbulence to fly through", async () => {
    const windy = await words(steady);
    await field(await plan.section("Field & weather"), "Wind").fill("0 m/s");
    await expect(steady).toContainText("A calm makes no turbulence.");
    expect(await words(steady)).not.toBe(windy);
    await expect(steady).not.toContainText("seed 1");
  });
});
