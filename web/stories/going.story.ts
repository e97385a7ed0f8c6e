import { WORKED_EXAMPLE } from "./pages/bench.js";
import { expect, story } from "./story.js";

story("Who scrolls on from a section that they went to is left where they are", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  const { page } = plan;
  await plan.goTo("Debrief");
  const heading = page.getByRole("heading", { level: 2, name: /^Debrief/ });

  await page.mouse.move(200, 500);
  await page.mouse.wheel(0, -1500);
  await expect(heading).not.toBeInViewport();

  await story.step("also when what stands above is drawn, or grows, after that", async () => {
    const height = () => page.evaluate(() => document.body.scrollHeight);
    const before = await height();
    await page.getByRole("main").evaluate((main) => {
      main.style.paddingTop = "900px";
    });
    await expect.poll(height).toBeGreaterThan(before + 500);
    await plan.settled();
    await expect(heading).not.toBeInViewport();
  });
});
