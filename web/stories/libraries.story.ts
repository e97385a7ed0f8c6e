import { documentsOf } from "./given/command-line.js";
import { WORKED_EXAMPLE } from "./pages/bench.js";
import { field, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const ROCKET = "Demo rocket 76";

story("A mistyped length says what is wrong and how it is right, and the last right one counts", async ({ bench }) => {
  const shelf = await bench.openShelf("Rockets");
  const rocket = await shelf.make("rocket");
  await rocket.name("Own rocket");
  const length = field(rocket.main, "Length");
  await length.fill("1.8 m");
  await length.fill("18o mm");

  await expect(length).toHaveValue("18o mm");
  await expect(length).toHaveAttribute("aria-invalid", "true");
  await expect(length).toHaveAccessibleDescription(/18o mm.*Write .+ or .+\. The last right value counts: 1\.8 m\./);
  expect(JSON.parse(await rocket.export())).toMatchObject({ name: "Own rocket", length: "1.8 m" });

  await length.fill("180 mm");
  await expect(length).not.toHaveAttribute("aria-invalid", "true");
  expect(JSON.parse(await rocket.export())).toMatchObject({ length: "180 mm" });
});

story("A rocket that a plan uses is deleted, the plan says so, and undo brings both back", async ({ bench, page }) => {
  const decided = await bench.settledCard(WORKED_EXAMPLE);
  const before = documentsOf(await bench.exportEverything());
  const rocket = await bench.openDocument("Rockets", ROCKET);
  const dialog = await rocket.askToDelete();
  await expect(dialog).toContainText(`Used by ${WORKED_EXAMPLE}`);
  await dialog.getByRole("button", { name: "Delete it" }).click();
  await page.getByRole("link", { name: "Bench", exact: true }).click();

  await story.step("the plan that is left without it says what it misses, and is kept", async () => {
    const card = bench.card(WORKED_EXAMPLE);
    await expect(card).toContainText("rocket");
    await expect(card).toContainText("nothing was thrown away");
    await expect(card).not.toContainText("% clean");
  });

  await story.step("undo brings rocket and decision back", async () => {
    await page.getByRole("button", { name: `Undo: deletion of ${ROCKET}` }).click();
    await expect.poll(() => words(bench.card(WORKED_EXAMPLE))).toBe(decided);
    expect(documentsOf(await bench.exportEverything())).toEqual(before);
  });
});
