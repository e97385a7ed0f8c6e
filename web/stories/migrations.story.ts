import { readFileSync } from "node:fs";
import { restoreDatabase, type SavedDatabase } from "./data/databases/restore.js";
import { BenchPage } from "./pages/bench.js";
import { field } from "./pages/sheet.js";
import { expect, story } from "./story.js";

interface SavedDocument {
  readonly path: string;
  readonly name: string;
  readonly raw: Readonly<Record<string, unknown>> | null;
  readonly drafts?: Readonly<Record<string, string>>;
  readonly record?: number;
}

function saved(version: number): SavedDatabase {
  return JSON.parse(readFileSync(new URL(`./data/databases/v${version}.json`, import.meta.url), "utf8"));
}

for (const version of [1, 2, 3, 4]) {
  story(`a bench that version ${version} of the app left opens with everything in place`, async ({ page }) => {
    const database = saved(version);
    const documents = database.stores.find(({ name }) => name === "documents")?.rows as readonly SavedDocument[];
    expect(documents.length).toBeGreaterThan(0);
    const before = await page.context().newPage();
    await before.route("before-the-app", (route) =>
      route.fulfill({ contentType: "text/html", body: '<link rel="icon" href="data:," />' }),
    );
    await before.goto("before-the-app");
    await before.evaluate(restoreDatabase, { saved: database });
    await before.close();
    const bench = new BenchPage(page);
    await bench.open();

    await story.step("each document is in the export as it was kept", async () => {
      const exported = JSON.parse(await bench.exportEverything()) as {
        readonly documents: Readonly<Record<string, unknown>>;
      };
      const texts = JSON.stringify(exported);
      for (const { raw, name, path, drafts } of documents) {
        expect(texts, path).toContain(name);
        for (const draft of Object.values(drafts ?? {})) expect(texts, path).toContain(draft);
        if (raw !== null && typeof raw === "object") expect(texts, path).toContain(JSON.stringify(raw));
      }
    });

    await story.step("the plan decides, and its figures are those of its documents", async () => {
      const plan = await bench.openPlan("Demo rocket, third flight");
      await plan.settled();
      const row = documents.find(({ path }) => path.endsWith("third-flight.plan.json"));
      const weather = row?.raw?.["weather"] as { readonly wind: string };
      await expect(field(await plan.section("Field & weather"), "Wind")).toHaveValue(weather.wind);
      await plan.goToBench();
    });

    await story.step("what this version cannot read is there too, and says so", async () => {
      const later = documents.find(({ record = 0 }) => record > 1);
      if (later !== undefined) await expect(bench.card(later.name)).toContainText("It is of a newer version");
      const rockets = await bench.openShelf("Rockets");
      await expect(rockets.line("Half written")).toBeVisible();
      await page.goBack();
    });

    // the first version kept nothing that was half typed
    if (version === 1) return;
    await story.step("what was half typed is still to be mended", async () => {
      const rocket = await bench.openDocument("Rockets", "Demo rocket 76");
      const half = Object.values(documents.find(({ name }) => name === "Demo rocket 76")?.drafts ?? {});
      expect(half).toEqual(["18o mm"]);
      for (const draft of half) await expect(rocket.main).toContainText(draft);
    });
  });
}
