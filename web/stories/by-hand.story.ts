import { readFile } from "node:fs/promises";
import { decide, demoFile, unpacked } from "./given/command-line.js";
import { answerFigures, settingFigures } from "./given/figures.js";
import type { BenchPage } from "./pages/bench.js";
import type { PlanPage } from "./pages/plan.js";
import { addRow, choose, field, fill, more, pick, plain, words } from "./pages/sheet.js";
import { expect, story } from "./story.js";

const TOOL = "Two-collar cutter, own copy";

/** The thrust curve of the demo's motor as a table. */
async function thrustTable(): Promise<Buffer> {
  const { thrust } = JSON.parse(await readFile(demoFile("demo-h150.motor.json"), "utf8")) as {
    thrust: { time: readonly number[]; newtons: readonly number[] };
  };
  const lines = thrust.time.map((time, i) => `${time},${thrust.newtons[i]}`);
  return Buffer.from(["time (s),thrust (N)", ...lines, ""].join("\n"));
}

async function makeTool(bench: BenchPage): Promise<void> {
  const shelf = await bench.openShelf("Tools");
  const tool = await shelf.make("tool");
  await tool.name(TOOL);
  await fill(await addRow(tool.main, "Ends", "end"), { Marked: "A", "Takes out": "6 s" });
  await fill(await addRow(tool.main, "Ends", "end"), { Marked: "B", "Takes out": "3 s" });
  await fill(await addRow(tool.main, "Spacers", "spacer"), { Name: "ring", "Keeps back": "1 s" });
  await fill(tool.main, { "Made for a grain of": "1/32 in" });
  await tool.back();
  await tool.back();
  await bench.isOpen();
}

async function enterRocket(plan: PlanPage): Promise<void> {
  const rocket = await plan.section("Rocket");
  await rocket.getByRole("button", { name: "New rocket" }).click();
  await fill(rocket, {
    "Mass without motor": "1950 g",
    "Balance from the tip": "0.86 m",
    Diameter: "76mm",
    Length: "1.52 m",
  });
  const form = await more(rocket, "Shape, fins, mount");
  const shape = await more(form, "Shape");
  await pick(shape, "Nose", "tangent ogive");
  await fill(shape, { "Length of the nose": "300 mm" });
  const ring = await addRow(await more(form, "Fins"), "Rings of equal fins", "ring");
  await fill(ring, { "How many": "3", "Root's leading edge": "1.26 m", "Root chord": "180 mm", "Tip chord": "80 mm" });
  await fill(ring, { Span: "90 mm", Sweep: "100 mm", Thickness: "4 mm" });
  const fittings = await more(form, "Guide fittings");
  for (const place of ["0.95 m", "1.40 m"]) {
    const fitting = await addRow(fittings, "What runs on the guide", "fitting");
    await choose(plan.page, fitting, "Kind", "rail button");
    await fill(fitting, { Place: place });
  }
  const mount = await more(form, "Motor mount");
  await fill(mount, { "Inner diameter": "38 mm", "Aft end of the motor": "1.53 m", "Length of the mount": "320 mm" });
  await choose(plan.page, mount, "Kept in by", "positive retention");
  const recovery = await more(await plan.section("Packing"), "Recovery");
  await choose(plan.page, recovery, "Main: canopy", "hemispherical");
  await fill(recovery, { "Nominal diameter": "1.1 m", "Length of the harness": "5 m", "Harness bears": "1.3 kN" });
}

async function enterMotor(plan: PlanPage): Promise<void> {
  const section = await plan.section("Motor");
  await section.getByRole("button", { name: "New motor type" }).click();
  const motor = await more(section, "Motor type");
  await fill(motor, { Designation: "H150-14", Diameter: "38 mm", Length: "205 mm" });
  await fill(motor, { "Loaded mass": "330 g", "Propellant mass": "160 g" });
  await pick(motor, "Delay", "adjustable");
  await fill(motor, { "Longest delay": "14 s", "Grain for one second": "1/32 in" });
  await motor.getByText("The motor's printed instructions allow shortening the delay").click();
  await fill(motor, { "The tool that they name": TOOL });
  await fill(await more(motor, "Limits, clock and charge"), { "Most that may come out": "8 s" });
  const chooser = plan.page.waitForEvent("filechooser");
  await motor.getByRole("button", { name: "Choose a CSV file" }).click();
  await (await chooser).setFiles({ name: "own.csv", mimeType: "text/csv", buffer: await thrustTable() });
  await expect(motor).toContainText("6 points");
}

async function enterDay(plan: PlanPage): Promise<void> {
  await choose(plan.page, await plan.section("Cut"), "Cutting tool", TOOL);
  const section = await plan.section("Field & weather");
  await fill(section, { Wind: "3 m/s", From: "225 deg", Temperature: "59 degF" });
  await section.getByRole("button", { name: "New field" }).click();
  await fill(await more(section, "The field"), { Elevation: "690 ft", Ceiling: "1400 m" });
  await fill(await more(section, "Launch guide"), { "Length of the rail": "2.4 m", "Height of the stop": "150 mm" });
}

story("A flyer enters all by hand and gets the command line's decision, to the last digit shown", async ({ bench }) => {
  await story.step("the tool goes into the library", () => makeTool(bench));
  const plan = await bench.newPlan();
  await expect(plan.answer).toContainText("missing");
  await story.step("the rocket, as it was measured", () => enterRocket(plan));
  await story.step("the motor, with its thrust curve from a table", () => enterMotor(plan));
  await story.step("the tool, the field, the weather and the rail", () => enterDay(plan));

  const shown = await story.step("the answer is there", async () => {
    await expect(field(await plan.section("Rocket"), "Diameter")).toHaveValue("76mm");
    await plan.section("Delay");
    await plan.settled();
    return { rows: await plan.settingRows() };
  });

  await story.step("the command line says the same of the same documents", async () => {
    const figures = await compared(plan);
    expect(shown.rows).toHaveLength(figures.length);
    for (const [i, row] of figures.entries()) expect(shown.rows[i]).toMatchObject(row);
  });
});

/** Holds the answer against the command line's; gives its rows of the table of settings. */
async function compared(plan: PlanPage): Promise<ReturnType<typeof settingFigures>> {
  const [lead, odds] = [plain((await plan.answer.textContent()) ?? ""), await words(plan.odds)];
  const bench = await plan.goToBench();
  const told = await decide(await unpacked(await bench.exportEverything(), "New plan"));
  const figures = answerFigures(told);
  expect(lead).toContain(figures.lead);
  expect(lead).toContain(figures.detail);
  expect(odds).toContain(figures.clean);
  expect(lead).toContain(`9 in 10 open below ${figures.below}`);
  expect(lead).toContain(`9 in 10 open above ${figures.above}`);
  expect(lead).toContain(figures.when);
  expect(lead).toContain(`holds ${figures.holds}`);
  return settingFigures(told);
}
