import { readFileSync } from "node:fs";
import { type LogMapping, type Raw, recordPath } from "@delaywright/documents";
import { beforeAll, describe, expect, test } from "vitest";
import { gunzipped } from "../../store/gzip.js";
import { EXAMPLE_PLAN, workedExample } from "../../store/worked-example.js";
import { DebriefDesk } from "./debrief-desk.js";
import type { DebriefAsk, DebriefTold, FromDebrief, ToDebrief } from "./protocol.js";

const csv = (name: string): Blob =>
  new Blob([readFileSync(new URL(`../../../../cli/examples/debrief/${name}.csv`, import.meta.url))]);

const FLIGHT = "third.flight.json";
type Unnumbered = ToDebrief extends infer Message ? (Message extends unknown ? Omit<Message, "job"> : never) : never;

/** A desk that flies few draws, and what it says. */
class Room {
  readonly said: FromDebrief[] = [];
  private job = 0;
  private readonly desk: DebriefDesk;
  private listening: (() => void)[] = [];

  constructor(draws: readonly number[]) {
    this.desk = new DebriefDesk({
      post: (message) => {
        this.said.push(message);
        for (const heard of this.listening.splice(0)) heard();
      },
      tick: () => new Promise((resolve) => setImmediate(resolve)),
      draws,
    });
  }

  /** Asks, and waits for what ends it. */
  async ask(message: Unnumbered): Promise<FromDebrief[]> {
    this.job += 1;
    const { job } = this;
    const own = () => this.said.filter((each) => each.job === job);
    const over = () => own().some((each) => each.kind !== "told" || each.told.settled);
    this.desk.take({ ...message, job } as ToDebrief);
    while (!over()) await new Promise<void>((resolve) => this.listening.push(resolve));
    return own();
  }
}

const documents: Record<string, Raw> = Object.fromEntries(
  workedExample().map(({ path, content }) => [path, content.raw as Raw]),
);
const flight = (more: Readonly<Record<string, unknown>> = {}): Raw => ({
  kind: "flight",
  version: 1,
  name: "Third flight",
  plan: EXAMPLE_PLAN,
  ...more,
});
const ask = (more: Partial<DebriefAsk> = {}, own = flight()): DebriefAsk => ({
  documents: { ...documents, [FLIGHT]: own },
  plan: EXAMPLE_PLAN,
  flight: FLIGHT,
  record: null,
  ...more,
});

const room = new Room([16]);
const thorough = new Room([16, 48]);
let mapping: LogMapping;
let told: readonly DebriefTold[];
beforeAll(async () => {
  const [opened] = await room.ask({ kind: "open", file: { bytes: csv("first-flight"), gzip: false } });
  if (opened?.kind !== "opened" || opened.previewed?.ok !== true) throw new Error("not read");
  mapping = opened.previewed.preview.mapping;
  const own = flight({ findings: { set: "9 s" } });
  await thorough.ask({ kind: "open", file: { bytes: csv("first-flight"), gzip: false } });
  const all = await thorough.ask({ kind: "debrief", ask: ask({ record: { file: "first.csv", mapping } }, own) });
  told = all.flatMap((each) => (each.kind === "told" ? [each.told] : []));
}, 240_000);

describe("DebriefDesk", () => {
  test("shows what a file holds: its columns, its rows, its one flight", async () => {
    const [shown] = await room.ask({ kind: "preview", mapping: null });
    if (shown?.kind !== "previewed" || !shown.previewed.ok) throw new Error("not read");
    const { preview, rows, flights } = shown.previewed;
    expect(preview.columns.map(({ heading, guess, unit }) => [heading, guess, unit])).toEqual([
      ["Time (s)", "time", "s"],
      ["Height (ft)", "height", "ft"],
    ]);
    expect(rows).toBeGreaterThan(2000);
    expect(flights).toHaveLength(1);
    expect("samples" in preview).toBe(false);
  });

  test("tells a rough debrief first, then the whole; what was found is the same in both", () => {
    expect(told.map(({ settled, data }) => [settled, data.draws])).toEqual([
      [false, 16],
      [true, 48],
    ]);
    expect(told[0]?.findings).toEqual(told[1]?.findings);
    const names = told[1]?.data.events.filter(({ flown }) => flown !== null).map(({ name }) => name);
    expect(names).toEqual(expect.arrayContaining(["liftOff", "burnout", "apogee", "opening", "landing"]));
  });

  test("has lines of a flight that begin before lift-off and are as high as its top", () => {
    const { plot, data } = told[1] as DebriefTold;
    if (plot === null) throw new Error("no plot");
    expect(plot.whole.from).toBeGreaterThanOrEqual(-2);
    expect(plot.lines.height.time.length).toBeLessThanOrEqual(1600);
    expect(Math.max(...plot.lines.height.value)).toBeGreaterThan(0.98 * (data.top?.height ?? Number.NaN));
    const { apogee, burnout } = plot.ranges;
    expect(apogee?.from).toBeGreaterThanOrEqual(burnout?.from ?? Number.NaN);
    // the predicted climb is fastest near burnout, which the plan's own flight says too
    const { time, value } = plot.predictedSpeed;
    const fastest = time[value.indexOf(Math.max(...value))] ?? 0;
    const burnt = data.events.find(({ name }) => name === "burnout")?.predicted?.time ?? 0;
    expect(Math.abs(fastest - burnt)).toBeLessThan(0.5);
  });

  test("has a band of 9 in 10 predicted flights about the predicted height: as wide as the spread of their tops", () => {
    const { plot, data } = told[1] as DebriefTold;
    if (plot?.predictedBand == null) throw new Error("no band");
    const { time, low, high } = plot.predictedBand;
    expect(time[0]).toBeLessThanOrEqual(0);
    expect([...time]).toEqual([...time].sort((a, b) => a - b));
    const { p05, p95 } = data.predicted.apogee;
    // quantiles of 256 and of 48 draws: each within some of its own sampling scatter of the other
    expect(Math.abs(Math.max(...high) - p95)).toBeLessThan(0.5 * (p95 - p05));
    // where each flight tops at a time of its own the low side lies below the lowest tops
    expect(Math.max(...low)).toBeLessThan(p05 + 0.3 * (p95 - p05));
    const top = data.events.find(({ name }) => name === "apogee")?.predicted;
    const k = time.findIndex((each) => each >= (top?.time ?? 0));
    expect(low[k]).toBeLessThan(top?.height ?? 0);
    expect(high[k]).toBeGreaterThan(top?.height ?? 0);
    expect(time.at(-1)).toBeGreaterThan(data.events.find(({ name }) => name === "landing")?.predicted?.time ?? 0);
  });

  test("gives a stretch finer than the whole", async () => {
    const [answer] = await thorough.ask({ kind: "stretch", ask: { from: 0, to: 2, most: 400 } });
    if (answer?.kind !== "lines" || answer.lines === null) throw new Error("no lines");
    const { time } = answer.lines.height;
    expect(time.length).toBeGreaterThan(30);
    expect(time[0]).toBeGreaterThan(-0.2);
    expect(time.at(-1)).toBeLessThan(2.2);
  });

  test("moves an event on the record's clock, and says from where; what was kept is moved again without being asked", async () => {
    const { plot, data } = told[1] as DebriefTold;
    const burnout = data.events.find(({ name }) => name === "burnout")?.flown?.time ?? 0;
    const moved = { burnout: (plot?.zero ?? 0) + burnout + 0.1 };
    const all = await room.ask({
      kind: "debrief",
      ask: ask({ record: { file: "first.csv", mapping, moved }, points: 100 }),
    });
    const last = all.at(-1);
    if (last?.kind !== "told") throw new Error(JSON.stringify(last));
    const event = last.told.data.events.find(({ name }) => name === "burnout")?.flown;
    expect(event?.time).toBeCloseTo(burnout + 0.1, 3);
    expect(event).toMatchObject({ reason: "moved-by-flyer" });
    expect(event?.movedFrom).toBeCloseTo(burnout, 3);
    expect(last.told.plot?.lines.height.time.length).toBeLessThanOrEqual(100);
    const kept = flight({ findings: JSON.parse(JSON.stringify(last.told.findings)) as unknown });
    const again = await room.ask({ kind: "debrief", ask: ask({ record: { file: "first.csv", mapping } }, kept) });
    const after = again.at(-1);
    if (after?.kind !== "told") throw new Error(JSON.stringify(after));
    expect(after.told.data.events.find(({ name }) => name === "burnout")?.flown?.time).toBeCloseTo(burnout + 0.1, 3);
  });

  test("holds a flight against the plan as it was flown, whatever the plan is now", async () => {
    const own = flight({ plan: told[1]?.plan, planFile: EXAMPLE_PLAN, findings: told[1]?.findings });
    const other = { ...documents["demo-76.rocket.json"], massWithoutMotor: "2.4 kg" } as Raw;
    const asked = ask({ record: { file: "first.csv", mapping } }, JSON.parse(JSON.stringify(own)) as Raw);
    const all = await room.ask({
      kind: "debrief",
      ask: { ...asked, documents: { ...asked.documents, "demo-76.rocket.json": other } },
    });
    const last = all.at(-1);
    if (last?.kind !== "told") throw new Error(JSON.stringify(last));
    expect(last.told.findings).toEqual(told[1]?.findings);
    expect(last.told.data.predicted.apogee.p50).toBeCloseTo(told[0]?.data.predicted.apogee.p50 ?? 0, 6);
    expect(last.told.data.next.after.apogee.p50).toBeLessThan(told[0]?.data.next.after.apogee.p50 ?? 0);
  });

  test("debriefs what was only seen", async () => {
    const own = flight({ findings: { set: "9 s", delay: "10.5 s", apogee: "560 m", outcome: "fast" } });
    const last = (await room.ask({ kind: "debrief", ask: ask({}, own) })).at(-1);
    if (last?.kind !== "told") throw new Error(JSON.stringify(last));
    expect(last.told.plot).toBeNull();
    expect(last.told.data.findings).toMatchObject({ set: 9, apogee: 560, outcome: "fast" });
    expect(last.told.data.learned.after.delay?.mean).toBeGreaterThan(9);
  });

  test("says what is wrong with a plan, and with a mapping; drops a debrief for a later one", async () => {
    const { "demo-h150.motor.json": _, ...without } = documents;
    const missing = { ...ask(), documents: { ...without, [FLIGHT]: flight() } };
    const [wrong] = await room.ask({ kind: "debrief", ask: missing });
    expect(wrong).toMatchObject({ kind: "wrong", issues: [{ code: "file-missing" }] });
    const bad = { time: { column: "nowhere" }, height: { column: 2 } };
    const [fault] = await room.ask({ kind: "debrief", ask: ask({ record: { file: "first.csv", mapping: bad } }) });
    expect(fault).toMatchObject({
      kind: "wrong",
      issues: expect.arrayContaining([expect.objectContaining({ file: "first.csv", code: "column-missing" })]),
    });
    const seen = ask({}, flight({ findings: { apogee: "560 m" } }));
    const [first, second] = await Promise.all([
      room.ask({ kind: "debrief", ask: seen }),
      room.ask({ kind: "debrief", ask: seen }),
    ]);
    expect(first.map(({ kind }) => kind)).toEqual(["dropped"]);
    expect(second.map(({ kind }) => kind)).toEqual(["told"]);
  });

  test("a file that is no log gives faults in words, never a defect", async () => {
    for (const bytes of [new Uint8Array(), new Uint8Array(5000).fill(0xff), new TextEncoder().encode("a\nb\nc\n")]) {
      const [answer] = await room.ask({ kind: "open", file: { bytes: new Blob([bytes]), gzip: false } });
      expect(answer).toMatchObject({ kind: "opened", previewed: { ok: false } });
    }
  });

  test("packs the open file under a path that says what is in it, and opens it again as it was", async () => {
    await room.ask({ kind: "open", file: { bytes: csv("first-flight"), gzip: false } });
    const [answer] = await room.ask({ kind: "pack", name: "First Flight.csv" });
    if (answer?.kind !== "packed") throw new Error("not packed");
    const { path, gzip } = answer.packed;
    const whole = new Uint8Array(await csv("first-flight").arrayBuffer());
    expect(path).toBe(recordPath("First Flight.csv", whole));
    expect(await gunzipped(gzip)).toEqual(whole);
    const [again] = await room.ask({ kind: "open", file: { bytes: gzip, gzip: true } });
    expect(again).toMatchObject({ kind: "opened", previewed: { ok: true } });
    const [broken] = await room.ask({ kind: "open", file: { bytes: csv("first-flight"), gzip: true } });
    expect(broken).toEqual({ kind: "opened", job: broken?.job, previewed: null });
  });

  test("reads files that are to be taken in, and packs the logs among them", async () => {
    const text = "Time (s),Height (m)\n0,0\n1,10\n";
    const log = { kind: "log", version: 1, name: "First", source: "first.csv", columns: {} };
    const [answer] = await room.ask({
      kind: "incoming",
      files: [
        { name: "a/first.log.json", bytes: new Blob([JSON.stringify(log)]) },
        { name: "a/first.csv", bytes: new TextEncoder().encode(text) },
      ],
    });
    if (answer?.kind !== "incoming") throw new Error("not read");
    const { entries, records } = answer.read;
    expect(entries).toMatchObject([{ path: "first.log.json", kind: "log", raw: { source: records[0]?.path } }]);
    const whole = await gunzipped(records[0]?.gzip ?? new Blob());
    expect(new TextDecoder().decode(whole ?? new Uint8Array())).toBe(text);
  });

  test("drops a file for one that was chosen after it", async () => {
    const [first, second] = await Promise.all([
      room.ask({ kind: "open", file: { bytes: new Blob([]), gzip: false } }),
      room.ask({ kind: "open", file: { bytes: csv("first-flight"), gzip: false } }),
    ]);
    expect(first).toMatchObject([{ kind: "dropped" }]);
    expect(second).toMatchObject([{ kind: "opened", previewed: { ok: true } }]);
  });

  test("reads all flights of a library, and how the odds held", async () => {
    const kept = flight({ findings: told[1]?.findings, forecast: told[1]?.forecast, flown: "2026-05-02T10:40" });
    const out = { ...flight({ findings: { apogee: "1 m" }, excluded: { reason: "two fins gone" } }), name: "Second" };
    const [answer] = await room.ask({
      kind: "library",
      documents: JSON.parse(
        JSON.stringify({ ...documents, [FLIGHT]: kept, "b.flight.json": out }),
      ) as DebriefAsk["documents"],
    });
    if (answer?.kind !== "library") throw new Error("no library");
    const { past, calibration } = answer.library;
    expect(past.map(({ name, rocket, excluded }) => [name, rocket, excluded])).toEqual([
      ["Third flight", "Demo rocket 76", null],
      ["Second", "Demo rocket 76", "two fins gone"],
    ]);
    expect(calibration.all.flights).toBe(1);
  });
});
