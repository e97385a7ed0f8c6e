import { WORKED_EXAMPLE } from "./pages/bench.js";
import { field } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const strike = `<img src="x" onerror="window.__hit=1"><script>window.__hit=1</script>`;

interface Struck extends Window {
  readonly __hit?: number;
}

for (const { what, text, says } of [
  {
    what: "of 20 MB",
    text: `{ "kind": "rocket", "note": "${"a".repeat(20_000_000)}" }`,
    says: "at most 5000000 bytes",
  },
  { what: "of 100,000 brackets", text: "[".repeat(100_000), says: "lists and objects in each other" },
  { what: "that breaks off", text: '{ "kind": "rocket", "name": "Torn', says: "What is wrong" },
] as const) {
  story(`a file ${what} is refused in words, and the bench stays as it was`, async ({ bench }) => {
    const before = await bench
      .card(WORKED_EXAMPLE)
      .getByText(/Cut to \d/)
      .textContent();
    const place = await bench.goToImport();
    await place.file("hostile.rocket.json", text);
    await expect(place.report).toContainText(says);
    await place.goToBench();
    await expect(bench.card(WORKED_EXAMPLE)).toContainText(before ?? "none");
  });
}

story("keys that reach for the app's own objects reach nothing", async ({ bench, page }) => {
  const place = await bench.goToImport();
  await place.paste(
    '{"kind":"rocket","version":1,"name":"Reacher","diameter":"76 mm","__proto__":{"reached":1},"constructor":{"prototype":{"reached":1}}}',
  );
  await expect(place.report).toContainText("__proto__");
  await expect(place.report).toContainText("constructor");
  expect(await page.evaluate(() => ({}) as { reached?: number })).toEqual({});
  expect(await page.evaluate(() => "reached" in {})).toBe(false);
});

story("script in the names of things stays text on every page", async ({ bench, page }) => {
  const names = [WORKED_EXAMPLE, "Demo rocket 76", "Demo H150", "Larkmoor", "car park", "Two-collar cutter (demo)"];
  let text = await bench.exportEverything();
  for (const name of names) text = text.replaceAll(JSON.stringify(name), JSON.stringify(`${name} ${strike}`));
  const place = await bench.goToImport();
  await place.file("struck.library.json", text);
  const harmless = async (name: string): Promise<void> => {
    await expect(page.getByText(`${name} ${strike}`).first()).toBeAttached();
    await expect(page.locator('img[src="x"]')).toHaveCount(0);
    expect(await page.evaluate(() => (window as Struck).__hit)).toBeUndefined();
  };
  await harmless(WORKED_EXAMPLE);

  const home = await place.goToBench();
  await harmless(WORKED_EXAMPLE);
  const plan = await home.openPlan(`${WORKED_EXAMPLE} ${strike}`);
  await plan.settled();
  for (const title of ["Rocket", "Motor", "Field & weather", "Cut"] as const) await plan.section(title);
  for (const name of names) await harmless(name);
  await expect(page.getByRole("img", { name: "Where it lands" })).toContainText("<script>");
  await page.emulateMedia({ media: "print" });
  await harmless(WORKED_EXAMPLE);
  await page.emulateMedia({ media: null });

  await story.step("on the label of its bag and at the pad", async () => {
    await plan.nameMotorInHand(`Bag ${strike}`, `Lot ${strike}`);
    await plan.goToLabel();
    await harmless("Bag");
    await harmless("Lot");
    await page.goBack();
    await plan.goToPad();
    await harmless("Bag");
  });

  await story.step("in the libraries", async () => {
    for (const [shelf, name] of [
      ["rockets", "Demo rocket 76"],
      ["motors", "Demo H150"],
      ["hands", "Bag"],
      ["tools", "Two-collar cutter (demo)"],
      ["fields", "Larkmoor"],
    ] as const) {
      await page.goto(`#/${shelf}`);
      await harmless(name);
      await page
        .getByRole("main")
        .getByRole("link", { name: `${name} ${strike}` })
        .first()
        .click();
      await expect(page.getByRole("heading", { level: 1 })).toContainText(strike);
      await harmless(name);
    }
  });
});

story("figures beyond all measure are told as wrong, and what was right still counts", async ({ bench, page }) => {
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  const right = await plan.settled();
  const wind = field(await plan.section("Field & weather"), "Wind");
  for (const figure of ["NaN m/s", "1e308 m/s", "-1e308 m/s", "Infinity m/s", "1e999 m/s"]) {
    await wind.fill(figure);
    await expect(plan.answer).toContainText("With the last right value of");
    expect(await plan.settled()).toBe(right);
  }
  await wind.fill("2 m/s");
  await expect(plan.answer).not.toContainText("With the last right value of");

  await story.step("imported, they are listed with where they stand", async () => {
    const place = await (await plan.goToBench()).goToImport();
    await place.paste(
      '{"kind":"rocket","version":1,"name":"Beyond","diameter":"1e308 m","length":1e308,"massWithoutMotor":"NaN kg"}',
    );
    for (const path of ["diameter", "length", "massWithoutMotor"]) await expect(place.report).toContainText(path);
    await page.getByRole("link", { name: "Beyond" }).click();
    await expect(page.getByRole("heading", { level: 1, name: "Beyond" })).toBeVisible();
  });
});

story("a library of 5,000 rockets comes in, is searched, and a plan still decides", async ({ bench, page }) => {
  const count = 5000;
  const rockets = Array.from({ length: count }, (_, i) => ({ kind: "rocket", version: 1, name: `Rocket ${i + 1}` }));
  const library = { kind: "library", version: 1, name: "Many", documents: rockets };
  const place = await bench.goToImport();
  await place.file("many.library.json", JSON.stringify(library));
  await expect(place.report).toContainText(`Taken in: ${count} documents.`);
  await place.goToBench();
  const plan = await bench.openPlan(WORKED_EXAMPLE);
  await plan.settled();
  await plan.answerAfter(async () => {
    await field(await plan.section("Field & weather"), "Wind").fill("7 m/s");
  });
  await expect(page.getByRole("banner")).toContainText(/saved \d\d:\d\d on this device/);
  await plan.goToBench();
  const shelf = await bench.openShelf("Rockets");
  await page.getByRole("searchbox", { name: "Find" }).fill("Rocket 4321");
  await expect(page.getByRole("main").getByRole("listitem")).toHaveCount(1);
  await shelf.openDocument("Rocket 4321");
  await story.step("all of it is kept", async () => {
    await page.goto("#/");
    await expect(page.getByRole("link", { name: /^Rockets 500/ })).toBeVisible();
    await page.reload();
    await bench.isOpen();
    await expect(page.getByRole("link", { name: /^Rockets 500/ })).toBeVisible();
  });
});
