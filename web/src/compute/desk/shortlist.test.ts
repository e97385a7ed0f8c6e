import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import {
  loadAny,
  loadPlan,
  memoryFiles,
  motorShelf,
  openPlan,
  type Raw,
  type ShortlistData,
  shortlistData,
} from "@delaywright/documents";
import { type Aim, type JudgedMotor, shortlist } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import type { DeskDocument, FromDesk, FromFlyer, ToFlyer } from "../protocol.js";
import { shortlistRules } from "../shortlist-rules.js";
import { shortlistSoFar } from "../shortlist-so-far.js";
import { Desk } from "./desk.js";
import { flyer } from "./flyer.js";
import { type FlyerPort, Share } from "./share.js";

const examples = fileURLToPath(new URL("../../../../cli/examples/", import.meta.url));
const tick = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

const folder = (name: string): string[] => readdirSync(`${examples}${name}`).filter((each) => each.endsWith(".json"));
const read = (path: string): Raw => JSON.parse(readFileSync(`${examples}${path}`, "utf8")) as Raw;
const put = (path: string, raw: Raw): DeskDocument => ({ path, raw, text: null, drafts: {} });

const plan = "worked.plan.json";
const wanted = ["demo-f34", "demo-h146", "demo-h168", "demo-h214", "demo-i178", "demo-j406"];
const flat = (raw: Raw): Raw =>
  JSON.parse(JSON.stringify(raw).replaceAll("../larkmoor/", "").replaceAll("larkmoor/", "")) as Raw;

/** The worked example with some motors of the demo library, one that is broken and one that cannot be read, in one folder. */
const documents: readonly DeskDocument[] = [
  put(plan, flat(read("worked-example/plan.json"))),
  ...folder("larkmoor").map((name) => put(name, read(`larkmoor/${name}`))),
  ...wanted.map((name) => put(`${name}.motor.json`, read(`demo-motors/${name}.motor.json`))),
  put("broken.motor.json", { kind: "motor", version: 1, name: "Demo broken", diameter: 38 }),
  { path: "cut-off.motor.json", raw: null, text: '{ "kind": "mo', drafts: {} },
].map((document) =>
  document.path.endsWith(".json") && document.raw !== null && document.raw["thrust"] !== undefined
    ? { ...document, raw: { ...document.raw, thrust: thrustOf(document.raw["thrust"]) } }
    : document,
);

/** A curve in a file of its own becomes one in the document, as it lies on the bench. */
function thrustOf(thrust: unknown): unknown {
  if (typeof thrust !== "string") return thrust;
  const rows = readFileSync(`${examples}larkmoor/${thrust}`, "utf8")
    .split("\n")
    .map((line) => line.split(",").map(Number))
    .filter(([time, newtons]) => Number.isFinite(time) && Number.isFinite(newtons));
  return { time: rows.map(([time]) => time), newtons: rows.map(([, newtons]) => newtons) };
}

interface WatchedFlyer {
  readonly port: FlyerPort;
  readonly heard: ToFlyer[];
  readonly judged: () => number;
}

function flyerHere(): WatchedFlyer {
  const heard: ToFlyer[] = [];
  let judged = 0;
  let hear: (message: FromFlyer) => void = () => undefined;
  const take = flyer((message) => {
    if ("judged" in message) judged += 1;
    setImmediate(() => hear(structuredClone(message)));
  }, tick);
  const port: FlyerPort = {
    post(message) {
      heard.push(message);
      setImmediate(() => take(structuredClone(message)));
    },
    listen(listener) {
      hear = listener;
    },
  };
  return { port, heard, judged: () => judged };
}

function deskHere(flyers: readonly WatchedFlyer[]) {
  const said: FromDesk[] = [];
  const waiting = new Set<() => void>();
  const options = { tick, pause: tick, now: () => performance.now() };
  const ports = flyers.map(({ port }) => port);
  const desk = new Desk({
    ...options,
    draws: 1000,
    share: new Share(ports, options),
    post(message) {
      said.push(structuredClone(message));
      for (const look of [...waiting]) look();
    },
  });
  const until = (happened: (message: FromDesk) => boolean): Promise<void> =>
    new Promise((resolve) => {
      const look = (): void => {
        if (!said.some(happened)) return;
        waiting.delete(look);
        resolve();
      };
      waiting.add(look);
      look();
    });
  return { desk, said, until };
}

const isDone = (job: number) => (message: FromDesk) => message.kind === "done" && message.job === job;
const rowsOf = (said: readonly FromDesk[], job: number): JudgedMotor[] =>
  said.flatMap((message) => (message.kind === "rows" && message.job === job ? message.rows : []));

/** What the page makes of all that was said of a job. */
function answerOf(said: readonly FromDesk[], job: number, before = shortlistRules.first) {
  const own = said.filter((message) => message.job === job);
  return own.reduce((answer, message) => shortlistRules.after(answer, message), shortlistRules.asked(before));
}

/** The same, by the engine alone. */
async function plainly(aim: Aim): Promise<ShortlistData> {
  const texts = documents.map(({ path, raw, text }) => [path, raw === null ? (text ?? "") : JSON.stringify(raw)]);
  const files = memoryFiles(Object.fromEntries(texts) as Record<string, string>);
  const { parts } = await loadPlan(plan, files);
  const opened = parts && openPlan(parts);
  if (opened?.ok !== true) throw new Error("the worked example has issues");
  const motors = documents.filter(({ path }) => path.endsWith(".motor.json")).map(({ path }) => path);
  const loaded = await Promise.all(motors.sort().map(async (path) => [path, await loadAny(path, files)] as const));
  const shelf = motorShelf(parts!, loaded);
  return shortlistData(
    await shortlist(shelf.candidates, opened.plan, { aim }),
    shelf,
    opened.context,
    opened.plan.limits,
  );
}

const ask = { kind: "ask", ask: "shortlist", plan } as const;

describe("Desk, asked for a shortlist", () => {
  test("tells what the engine's shortlist tells, to the bit, alone and with flyers", async () => {
    const aim: Aim = { by: "nearest-height", height: 700 };
    const plain = structuredClone(await plainly(aim));
    expect(plain.ranked.length).toBeGreaterThan(1);
    expect(plain.refused.length).toBeGreaterThan(1);
    expect(plain.unjudged.map(({ file }) => file)).toEqual(["broken.motor.json", "cut-off.motor.json"]);
    for (const count of [0, 1, 3]) {
      const flyers = Array.from({ length: count }, flyerHere);
      const { desk, said, until } = deskHere(flyers);
      desk.take({ kind: "documents", put: documents, remove: [] });
      desk.take({ ...ask, job: 1 });
      await until(isDone(1));
      const answer = answerOf(said, 1);
      expect(answer).toMatchObject({ state: "ready", issues: [], failure: null });
      expect(answer.waiting.size).toBe(0);
      expect(shortlistSoFar(answer, aim), `${count} flyers`).toEqual(plain);
      for (const { judged } of flyers) expect(judged()).toBeGreaterThan(0);
    }
  }, 120_000);

  test("tells rows as they come, and counts them", async () => {
    const { desk, said, until } = deskHere([]);
    desk.take({ kind: "documents", put: documents, remove: [] });
    desk.take({ ...ask, job: 1 });
    await until(isDone(1));
    const kinds = said.map(({ kind }) => kind);
    expect(kinds.slice(0, 2)).toEqual(["read", "shelf"]);
    expect(kinds.filter((kind) => kind === "rows").length).toBeGreaterThan(1);
    const count = answerOf(said, 1).shelf?.motors.length;
    expect(count).toBeGreaterThan(wanted.length);
    const beats = said.flatMap((message) => (message.kind === "beat" ? [message] : []));
    expect(beats.every(({ done, of }) => done <= of && of === count)).toBe(true);
  });

  test("a plan's answer goes first; what was judged is not judged again, and motors under way are left", async () => {
    const flyers = [flyerHere()];
    const { desk, said, until } = deskHere(flyers);
    desk.take({ kind: "documents", put: documents, remove: [] });
    desk.take({ ...ask, job: 1 });
    await until((message) => message.kind === "rows" && message.rows.some(({ outcome }) => outcome === "ranked"));
    desk.take({ kind: "ask", ask: "brief", job: 2, plan });
    desk.take({ kind: "ask", ask: "plan", job: 3, plan });
    await until(isDone(1));
    await until(isDone(2));
    const settled = said.findIndex((message) => message.kind === "told" && message.told.draws === message.told.of);
    const order = said.slice(settled).flatMap((message) => (message.kind === "done" ? [message.job] : []));
    expect(order).toEqual([3, 1, 2]);
    const plain = structuredClone(await plainly({ by: "highest" }));
    expect(shortlistSoFar(answerOf(said, 1), { by: "highest" })).toEqual(plain);

    const before = flyers[0]?.judged();
    desk.take({ ...ask, job: 4 });
    await until(isDone(4));
    expect(flyers[0]?.judged()).toBe(before);
    const again = answerOf(said, 4);
    expect([...again.rows.keys()].sort()).toEqual(again.shelf?.motors);

    const late = put("a-late.motor.json", { ...read("demo-motors/demo-h186.motor.json"), name: "Demo late" });
    desk.take({ kind: "documents", put: [late], remove: [] });
    desk.take({ ...ask, job: 5 });
    await until(isDone(5));
    expect(rowsOf(said, 5).at(-1)?.id).toBe(late.path);
    expect(rowsOf(said, 5)).toHaveLength(1 + again.rows.size);
  }, 60_000);

  test("is left at once when it is dropped", async () => {
    const flyers = [flyerHere()];
    const { desk, said, until } = deskHere(flyers);
    desk.take({ kind: "documents", put: documents, remove: [] });
    desk.take({ ...ask, job: 1 });
    await until((message) => message.kind === "shelf");
    for (let turn = 0; !flyers[0]?.heard.some(({ kind }) => kind === "motor") && turn < 100; turn += 1) await tick();
    desk.take({ kind: "drop", job: 1 });
    const rows = rowsOf(said, 1).length;
    for (let turn = 0; turn < 60; turn += 1) await tick();
    expect(flyers[0]?.heard.map(({ kind }) => kind)).toEqual(["motor", "leave"]);
    expect(flyers[0]?.judged()).toBe(0);
    expect(rowsOf(said, 1)).toHaveLength(rows);
    expect(said.some(isDone(1))).toBe(false);
  });

  test("asks about other motors where the plan has none, and where its own cannot be read", async () => {
    const { desk, said, until } = deskHere([flyerHere()]);
    const worked = documents.find(({ path }) => path === plan)?.raw;
    if (worked == null) throw new Error("no such example");
    const { motor: _, ...without } = worked;
    const plain = structuredClone(await plainly({ by: "best-odds" }));
    for (const [job, raw] of [without, { ...worked, motor: "cut-off.motor.json" }].entries()) {
      desk.take({ kind: "documents", put: [...documents, put(plan, raw as Raw)], remove: [] });
      desk.take({ ...ask, job });
      await until(isDone(job));
      const answer = answerOf(said, job);
      expect(answer.issues).toEqual([]);
      expect(shortlistSoFar(answer, { by: "best-odds" })).toEqual(plain);
    }
  }, 60_000);

  test("says what is wrong with the plan, and judges nothing", async () => {
    const { desk, said, until } = deskHere([]);
    const rocket = documents.find(({ raw }) => raw?.["kind"] === "rocket" && raw["name"] === "Demo rocket 76");
    if (rocket?.raw == null) throw new Error("no such example");
    const heavy = put(rocket.path, { ...rocket.raw, mass: "heavy" });
    desk.take({ kind: "documents", put: [...documents, heavy], remove: [] });
    desk.take({ ...ask, job: 1 });
    await until(isDone(1));
    const answer = answerOf(said, 1);
    expect(answer.state).toBe("wrong");
    expect(answer.issues.map(({ file, path }) => [file, path])).toContainEqual([rocket.path, "mass"]);
    expect(rowsOf(said, 1)).toEqual([]);
  });
});
