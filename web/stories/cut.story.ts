import { WORKED_EXAMPLE } from "./pages/bench.js";
import { choose, field, more, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const INSTRUCTIONS = "The motor's printed instructions allow shortening the delay";
const BEFORE = "22.2 mm";

story("A motor whose instructions are not confirmed shows odds but no cut", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await expect(await plan.section("Cut")).toContainText(/Take .* out/);
  const motor = await more(await plan.section("Motor"), "Motor type");
  await plan.answerAfter(() => motor.getByText(INSTRUCTIONS).click());

  await expect(plan.odds).toBeVisible();
  await expect(plan.answer).toContainText("no cut is shown");
  const cut = await plan.section("Cut");
  await expect(cut).toContainText("No cut is shown until you confirm");
  await expect(cut).not.toContainText(/Take .* out/);
  await expect(cut.getByRole("button", { name: "Record this reading" })).toHaveCount(0);

  await story.step("the next step leads to what is to be confirmed", async () => {
    await plan.next.click();
    await expect(plan.page.getByRole("switch", { name: INSTRUCTIONS })).toBeFocused();
    await plan.answerAfter(() => plan.page.keyboard.press("Space"));
    await expect(plan.answer).not.toContainText("no cut is shown");
    await expect(await plan.section("Cut")).toContainText(/Take .* out/);
  });
});

story("A cut is read in steps, never becomes shallower unsaid, and stays on record", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  await plan.nameMotorInHand("Bag 4", "L-18");

  const shallow = await story.step("measure before, cut too little at first", async () => {
    await plan.read({ before: BEFORE });
    expect(await plan.record("Record the depth before")).toContain(`${BEFORE} before the cut, read on Bag 4, lot L-18`);
    const keepCutting = await plan.depthToReach("keep cutting");
    await expect(await plan.read({ after: keepCutting })).toContainText("short of the plan");
    await plan.answerAfter(async () => {
      expect(await plan.record("Record the cut")).toContain("Nothing goes back");
    });
    return keepCutting;
  });

  await story.step("there is more to cut", async () => {
    await expect(plan.answer).toContainText(/take .* out in all/);
    await expect(plan.next).toContainText("cut Bag 4");
  });

  await story.step("the last cut: it is the plan", async () => {
    const stopHere = await plan.depthToReach("stop here");
    await plan.read({ now: stopHere });
    await plan.answerAfter(async () => {
      await plan.record("Record the cut");
    });
    await expect(plan.answer).toContainText("as it is now cut");
  });

  await story.step("a shallower reading needs its reason", async () => {
    const cut = await plan.read({ now: shallow });
    await expect(field(cut, "read now")).toHaveAccessibleDescription(/What is cut stays cut/);
    const record = cut.getByRole("button", { name: "Record this reading" });
    await expect(record).toBeDisabled();
    await field(cut, "Why the earlier reading was off").fill("the gauge stood on the rim's burr");
    await expect(record).toBeEnabled();
    await plan.record("Record the correction");
  });

  await story.step("what was read before stays beside it", async () => {
    await expect.poll(async () => (await plan.readings()).length).toBe(4);
    const readings = await plan.readings();
    expect(readings[0]).toContain(BEFORE);
    expect(readings[3]).toContain("the gauge stood on the rim's burr");
  });

  await story.step("undo asks before it takes a reading back", async () => {
    await plan.undo();
    const asks = plan.page.getByRole("alertdialog");
    await expect(asks).toContainText("What is cut stays cut");
    await asks.getByRole("button", { name: "Keep it" }).click();
    expect(await plan.readings()).toHaveLength(4);
    await plan.undo();
    await asks.getByRole("button", { name: "It was never read" }).click();
    await expect.poll(async () => (await plan.readings()).length).toBe(3);
  });
});

story("A shallow cut, then an over-cut: the advice brings the odds back", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  await plan.nameMotorInHand("Bag 5", "L-18");
  await plan.read({ before: BEFORE });
  const [stop, over] = [await plan.depthToReach("stop here"), await plan.depthToReach("over-cut")].map(
    Number.parseFloat,
  );
  await plan.read({ after: await plan.depthToReach("keep cutting") });
  await plan.answerAfter(async () => {
    await plan.record("Record the cut");
  });
  await expect(plan.next).toContainText("cut Bag 5");

  const far = 2 * (over ?? 0) - (stop ?? 0);
  await expect(await plan.read({ now: `${far.toFixed(1)} mm` })).toContainText("deeper than planned");
  const now = await plan.answerAfter(async () => {
    await plan.record("Record the cut");
  });
  await expect(plan.answer).toContainText("cut deeper than meant");

  const advice = await story.step("the ways out stand in the sheet", async () => {
    await plan.next.click();
    const delay = await plan.section("Delay");
    await expect(delay).toContainText("What would make it right");
    await expect(delay).toContainText("do not fly it", { ignoreCase: true });
    return words(delay);
  });
  const [, at, mass, clean] =
    /fixed mechanically (\d+ mm) from the nose tip: best (\d+ g), (\d+) % clean/.exec(advice) ?? [];

  await story.step("the ballast that it names is put in: the odds are back", async () => {
    const ballast = await more(await plan.section("Rocket"), "Ballast for this flight");
    await field(ballast, "Fixed at").fill(`${at}`);
    const then = await plan.answerAfter(() => field(ballast, "Ballast").fill(`${mass}`));
    await expect(plan.answer).toContainText("as it is now cut");
    const odds = (text: string): number => Number(/(\d+) % clean/.exec(text)?.[1]);
    expect(odds(then)).toBeGreaterThan(odds(now));
    expect(Math.abs(odds(then) - Number(clean))).toBeLessThanOrEqual(1);
  });

  await story.step("another motor of the type starts anew", async () => {
    await choose(plan.page, await plan.section("Motor"), "Motor", "Demo H150 (motor type)");
    await expect((await plan.section("Cut")).getByRole("button", { name: "Name the motor in hand" })).toBeVisible();
  });
});

story("A depth that is typed keeps its unit, and goes with its motor @desk", async ({ bench }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  const { page } = plan;
  await plan.settled();
  const cut = await plan.section("Cut");
  const before = cut.getByRole("textbox", { name: "before the cut" });
  await plan.nameMotorInHand("Bag 4", "L-18");
  await expect(before, "who names a motor goes on with its depth").toBeFocused();

  await story.step("another display changes no depth that was typed", async () => {
    await plan.showInchesAndFeet();
    await expect(before).toHaveAttribute("placeholder", "in");
    await before.fill("0.875");
    await cut.getByRole("textbox", { name: "after the cut" }).fill("1.031");
    await expect(cut).toContainText("9.0 s left");
    await page.getByRole("radio", { name: "mm", exact: true }).click();
    await expect(before).toHaveValue("0.875 in");
    await expect(cut).toContainText("9.0 s left");
  });

  await story.step("nothing is reckoned from a depth that is refused", async () => {
    await before.fill("-5 mm");
    await expect(cut).not.toContainText(/s left|gauge reads/);
  });

  await story.step("Ctrl and Z in it take back what was typed there, and nothing of the bench", async () => {
    await before.pressSequentially("7");
    await page.keyboard.press("Control+z");
    await expect(before).not.toHaveValue("-5 mm7");
    await expect(cut.getByRole("button", { name: "Name the motor in hand" })).toHaveCount(0);
  });

  await story.step("another motor that bears the same word begins with empty fields", async () => {
    await before.fill("22.2");
    await before.blur();
    await expect(before).toHaveValue("22.2 mm");
    await page.keyboard.press("Control+z");
    await expect(cut.getByRole("button", { name: "Name the motor in hand" })).toBeVisible();
    await plan.nameMotorInHand("Bag 4", "L-18");
    await expect(before).toHaveValue("");
  });
});
