import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type DecisionData, decisionData, loadPlan, memoryFiles, planToEngine, type Raw } from "@delaywright/documents";
import { decide } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { heldOver } from "./held-over.js";
import type { Told } from "./told.js";

const examples = fileURLToPath(new URL("../../../cli/examples/", import.meta.url));
const draws = 400;

const textOf = (path: string): string => readFileSync(`${examples}${path}`, "utf8");

/** What is told of an example in some other weather: the rough answer and the settled one. */
async function told(example: string, weather: Raw = {}, field: (field: Raw) => Raw = (same) => same) {
  const plan = `${example}/plan.json`;
  const beside = readdirSync(`${examples}larkmoor`).map((name) => `larkmoor/${name}`);
  const texts = Object.fromEntries([plan, ...beside].map((path) => [path, textOf(path)]));
  const raw = JSON.parse(textOf(plan)) as Raw;
  texts[plan] = JSON.stringify({ ...raw, weather: { ...(raw["weather"] as Raw), ...weather } });
  texts["larkmoor/larkmoor.field.json"] = JSON.stringify(field(JSON.parse(textOf("larkmoor/larkmoor.field.json"))));
  const { parts } = await loadPlan(plan, memoryFiles(texts));
  const made = parts && planToEngine(parts);
  if (made?.ok !== true) throw new Error(`${example} has issues`);
  const answers: Told[] = [];
  const tell = (decision: Awaited<ReturnType<typeof decide>>): void => {
    const data = decisionData({ ...made, decision, doubts: made.warnings });
    answers.push({ data, density: null, facts: {} as Told["facts"], draws: decision.draws, of: draws });
  };
  tell(await decide(made.inputs, { draws, stages: [256], onPart: tell }));
  const [rough, settled] = answers;
  if (rough === undefined || settled === undefined) throw new Error("told once");
  return { rough, settled };
}

const weighty = ({ checks }: DecisionData): string[] =>
  checks.filter(({ verdict }) => verdict === "stop" || verdict === "look").map(({ id }) => id);

describe("heldOver()", () => {
  test("what first draws cannot say stands as it was said of the wind before", async () => {
    const calm = await told("worked-example", { wind: "2 m/s" });
    const windy = await told("worked-example", { wind: "2.7 m/s" });
    const shown = heldOver(windy.rough, calm.settled).data;
    expect(weighty(calm.settled.data).length).toBeGreaterThan(0);
    expect(weighty(windy.rough.data)).toEqual([]);
    expect(weighty(shown)).toEqual(weighty(calm.settled.data));
    expect(shown.packing.landings.opened).toEqual(calm.settled.data.packing.landings.opened);
    expect(shown.drivers).toEqual(calm.settled.data.drivers);
    expect(shown.delayShareOfOdds).toBe(calm.settled.data.delayShareOfOdds);
    expect(shown.toCut?.homeCut).toEqual(calm.settled.data.toCut?.homeCut);
    // what they can say is theirs
    expect(shown.settings).toEqual(windy.rough.data.settings);
    expect(shown.packing.landings.unopened).toEqual(windy.rough.data.packing.landings.unopened);
    const checked = (data: DecisionData) => data.checks.filter(({ verdict }) => verdict !== "not-checked");
    for (const check of checked(windy.rough.data)) expect(shown.checks).toContainEqual(check);
    expect(shown.checks).toHaveLength(windy.rough.data.checks.length);
    const verdicts = shown.checks.map(({ verdict }) => verdict);
    expect(verdicts).toEqual([...verdicts].sort((a, b) => rank(a) - rank(b)));
  });

  test("checks are held over that the first draws cannot make, and no others", async () => {
    const unmade = new Set<string>();
    for (const example of ["worked-example", "after-an-over-cut", "winds-aloft"]) {
      const { rough, settled } = await told(example);
      const made = ({ data }: Told) =>
        data.checks.filter(({ verdict }) => verdict !== "not-checked").map(({ id }) => id);
      const before = made(rough);
      for (const id of made(settled)) if (!before.includes(id)) unmade.add(id);
    }
    expect([...unmade].sort()).toEqual(["element-over-cut", "keep-off-zones", "landing-inside"]);

    const said = await told("worked-example", {}, (field) => ({ ...field, distances: { building: "800 m" } }));
    const { rough } = await told("worked-example");
    const verdict = ({ checks }: DecisionData) => checks.find(({ id }) => id === "building-distance")?.verdict;
    expect(verdict(said.settled.data)).toBe("pass");
    expect(verdict(heldOver(rough, said.settled).data)).toBe("not-checked");
  });

  test("nothing is held over by a settled answer, or where nothing was said before", async () => {
    const { rough, settled } = await told("worked-example");
    expect(heldOver(settled, rough)).toBe(settled);
    expect(heldOver(rough, null)).toBe(rough);
  });

  test("shares of landings are not read as those of another field", async () => {
    const { settled } = await told("worked-example");
    const { rough } = await told("worked-example", {}, ({ keepOff, ...field }) => field);
    expect(settled.data.packing.landings.opened?.zones.length).toBeGreaterThan(0);
    expect(heldOver(rough, settled).data.packing.landings.opened).toBeNull();
  });

  test("the cut at home goes with its own cut, advice on an over-cut element with that element", async () => {
    const { rough, settled } = await told("worked-example");
    const { toCut } = settled.data;
    if (toCut === null || rough.data.toCut === null) throw new Error("nothing to cut");
    const homeCut = { ...toCut, removed: 1 };
    const before = { ...settled, data: { ...settled.data, toCut: { ...toCut, homeCut } } };
    const another = { ...rough, data: { ...rough.data, toCut: { ...rough.data.toCut, removed: 0.5 } } };
    expect(heldOver(rough, before).data.toCut?.homeCut).toEqual(homeCut);
    expect(heldOver(another, before).data.toCut?.homeCut).toBeNull();

    const overCut = await told("after-an-over-cut");
    expect(overCut.rough.data.overCut).toBeNull();
    expect(heldOver(overCut.rough, overCut.settled).data.overCut).toEqual(overCut.settled.data.overCut);
    expect(overCut.settled.data.overCut).not.toBeNull();
    expect(heldOver(rough, overCut.settled).data.overCut).toBeNull();
  });
});

function rank(verdict: string): number {
  return ["stop", "look", "not-checked", "pass"].indexOf(verdict);
}
