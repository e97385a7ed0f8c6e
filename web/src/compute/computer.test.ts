import { afterEach, describe, expect, test } from "vitest";
import type { SavedBrief } from "./brief-box.js";
import { Computer } from "./computer.js";
import type { CrewEvents } from "./crew.js";
import type { SourceDocument } from "./desk-copy.js";
import type { FromDesk, ToDesk } from "./protocol.js";
import type { PictureData, Told } from "./told.js";

const plan = "one.plan.json";

/** An answer that is told by its number alone. */
function tell(number: number, draws = 10_000): Told {
  const drivers = draws < 10_000 ? [] : [{ input: "delay" }];
  const nothing = { overCut: null, toCut: null, settings: [], checks: [], packing: { landings: { opened: null } } };
  return { data: { seed: number, drivers, ...nothing }, draws, of: 10_000 } as unknown as Told;
}

/** Crews that say only what a test lets them say. */
function fakeCrews() {
  const crews: { readonly events: CrewEvents; readonly heard: ToDesk[]; ended: boolean }[] = [];
  return {
    crews,
    start(events: CrewEvents) {
      const crew = { events, heard: [] as ToDesk[], ended: false };
      crews.push(crew);
      return {
        post: (message: ToDesk) => crew.heard.push(structuredClone(message)),
        end() {
          crew.ended = true;
        },
      };
    },
  };
}

/** A store of documents, a memory of briefs, a clock that a test turns. */
function surroundings(saved: Map<string, SavedBrief> = new Map()) {
  const entries = new Map<string, SourceDocument>();
  const listeners = new Set<() => void>();
  const looks = new Set<() => void>();
  const change = (path: string, raw: Record<string, unknown> | null): void => {
    const kind = path.split(".").at(-2) ?? null;
    if (raw === null) entries.delete(path);
    else entries.set(path, { path, kind, raw, text: null, drafts: {} });
    for (const listener of listeners) listener();
  };
  const memory = {
    read: (path: string) => Promise.resolve(saved.get(path) ?? null),
    save(path: string, brief: SavedBrief) {
      saved.set(path, brief);
      return Promise.resolve();
    },
  };
  const documents = {
    entries: () => [...entries.values()],
    subscribe(listener: () => void) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
  const every = (_: number, look: () => void) => {
    looks.add(look);
    return () => looks.delete(look);
  };
  const look = (times: number): void => {
    for (let i = 0; i < times; i++) for (const each of [...looks]) each();
  };
  return { change, documents, memory, every, look, saved };
}

let made: Computer | undefined;
afterEach(() => made?.close());

function ready(saved?: Map<string, SavedBrief>) {
  const around = surroundings(saved);
  const { crews, start } = fakeCrews();
  const computer = new Computer({ ...around, startCrew: start, version: "build-1" });
  made = computer;
  around.change(plan, { kind: "plan", wind: 1 });
  around.change("demo.rocket.json", { kind: "rocket" });
  const crew = () => crews.at(-1)!;
  const asked = () => crew().heard.flatMap((message) => (message.kind === "ask" ? [message] : []));
  const say = (message: FromDesk) => crew().events.message(message);
  const read = (job: number, files = [plan, "demo.rocket.json"]) =>
    say({ kind: "read", job, issues: [], files, right: true });
  return { ...around, computer, crews, crew, asked, say, read };
}

/** What an earlier visit left in memory, which settled the plan's answer. */
function afterVisit(told: Told): Map<string, SavedBrief> {
  const saved = new Map<string, SavedBrief>();
  const { computer, read, say } = ready(saved);
  computer.plan(plan).subscribe(() => undefined);
  read(1);
  say({ kind: "told", job: 1, told });
  computer.close();
  return saved;
}

const soon = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 0));

describe("Computer.plan()", () => {
  test("Computer.plan() is asked anew where any document changes before the desk has said which ones it read", () => {
    const { computer, asked, say, read, change, saved } = ready();
    change("other.rocket.json", { kind: "rocket", mass: 1 });
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    read(1);
    say({ kind: "told", job: 1, told: tell(1) });
    say({ kind: "done", job: 1 });
    // the plan names the other rocket now, and that one changes while the desk still reads
    change(plan, { kind: "plan", rocket: "other.rocket.json" });
    expect(asked()).toHaveLength(2);
    change("other.rocket.json", { kind: "rocket", mass: 2 });
    expect(asked()).toHaveLength(3);
    read(2, [plan, "other.rocket.json"]);
    say({ kind: "told", job: 2, told: tell(2) });
    expect(get().told?.data.seed).toBe(1);
    expect(saved.get(plan)?.told.data.seed).toBe(1);
    read(3, [plan, "other.rocket.json"]);
    say({ kind: "told", job: 3, told: tell(3) });
    expect(get()).toMatchObject({ told: { data: { seed: 3 } }, fresh: true });
  });

  test("Computer.plan() has no answer where a document is gone that the plan names", () => {
    const { computer, say, read, change } = ready();
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    read(1);
    say({ kind: "told", job: 1, told: tell(1) });
    change("demo.rocket.json", null);
    const gone = { file: plan, path: "rocket", code: "file-missing", found: "", accepted: "", example: "" };
    say({ kind: "read", job: 2, issues: [gone], files: [plan], right: false });
    expect(get()).toMatchObject({ told: null, pictures: null, settling: false, issues: [gone] });
  });

  test("Computer.plan() forgets the answer to a plan that is gone once nobody watches it", () => {
    const { computer, asked, say, read, change } = ready();
    const told = (): unknown => computer.plan(plan).get().told;
    const document = { kind: "plan", wind: 1 };
    const leave = computer.plan(plan).subscribe(() => undefined);
    read(1);
    say({ kind: "told", job: 1, told: tell(1) });
    change(plan, null);
    expect(told()).not.toBeNull();
    leave();
    expect(told()).toBeNull();
    change(plan, document);
    computer.plan(plan).subscribe(() => undefined)();
    const { job } = asked().at(-1)!;
    read(job);
    say({ kind: "told", job, told: tell(job) });
    expect(told()).not.toBeNull();
    change(plan, null);
    expect(told()).toBeNull();
  });

  test("Computer.plan() asks once it is watched, and tells each finer answer", () => {
    const { computer, asked, say, read } = ready();
    const { get, subscribe } = computer.plan(plan);
    computer.warmUp();
    expect(asked()).toHaveLength(0);
    subscribe(() => undefined);
    subscribe(() => undefined);
    expect(asked()).toEqual([{ kind: "ask", job: 1, ask: "plan", plan }]);
    read(1);
    expect(get()).toMatchObject({ told: null, fresh: false, settling: true });
    expect(computer.progress(plan).get()).toBe(0);
    say({ kind: "told", job: 1, told: tell(1, 256) });
    expect(get()).toMatchObject({ fresh: true, settling: true });
    say({ kind: "beat", job: 1, done: 900, of: 10_000 });
    say({ kind: "beat", job: 1, done: 500, of: 10_000 });
    expect(computer.progress(plan).get()).toBe(0.09);
    say({ kind: "told", job: 1, told: tell(1) });
    expect(get()).toMatchObject({ fresh: true, settling: false });
    expect(computer.progress(plan).get()).toBeNull();
  });

  test("Computer.plan() says that the pictures are of an older answer until its own have come", () => {
    const { computer, say, read, change } = ready();
    const { get, subscribe } = computer.plan(plan);
    const pictured = (): boolean => get().pictured;
    subscribe(() => undefined);
    const pictures = { delay: 9 } as unknown as PictureData;
    read(1);
    say({ kind: "told", job: 1, told: tell(1) });
    expect(pictured()).toBe(false);
    say({ kind: "pictures", job: 1, pictures });
    expect(pictured()).toBe(true);
    change(plan, { kind: "plan", wind: 2 });
    // as long as the old answer is shown they are its own
    expect(get()).toMatchObject({ pictured: true, settling: true });
    read(2);
    for (const draws of [256, 10_000]) {
      say({ kind: "told", job: 2, told: tell(2, draws) });
      expect(get()).toMatchObject({ pictures: { delay: 9 }, pictured: false });
    }
    say({ kind: "pictures", job: 2, pictures });
    expect(get()).toMatchObject({ pictured: true, settling: false });
  });

  test("Computer.plan() sends documents before it asks of them, and only those that changed", () => {
    const { computer, crew, change } = ready();
    computer.plan(plan).subscribe(() => undefined);
    change(plan, { kind: "plan", wind: 2 });
    const heard = crew().heard.map((message) =>
      message.kind === "documents" ? message.put.map(({ path }) => path) : message.kind,
    );
    expect(heard).toEqual([[plan, "demo.rocket.json"], "ask", [plan], "drop", "ask"]);
  });

  test("Computer.plan() never lets an older answer overwrite a newer one", () => {
    const { computer, say, read, change } = ready();
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    read(1);
    change(plan, { kind: "plan", wind: 2 });
    expect(get().fresh).toBe(false);
    say({ kind: "told", job: 1, told: tell(1) });
    expect(get().told).toBeNull();
    read(2);
    say({ kind: "told", job: 2, told: tell(2, 256) });
    say({ kind: "told", job: 1, told: tell(1) });
    say({ kind: "failed", job: 1, reason: "late" });
    expect(get()).toMatchObject({ told: { data: { seed: 2 } }, fresh: true, failure: null });
  });

  test("Computer.plan() asks again only for documents that the answer rests on", () => {
    const { computer, asked, say, read, change } = ready();
    computer.plan(plan).subscribe(() => undefined);
    read(1);
    say({ kind: "told", job: 1, told: tell(1) });
    say({ kind: "done", job: 1 });
    change("other.field.json", { kind: "field" });
    expect(asked()).toHaveLength(1);
    change("demo.rocket.json", null);
    expect(asked()).toHaveLength(2);
  });

  test("Computer.plan() keeps the last right answer while something is wrong", () => {
    const { computer, say, read, change } = ready();
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    read(1);
    say({ kind: "told", job: 1, told: tell(1) });
    change(plan, { kind: "plan", wind: "wrong" });
    const issue = { file: plan, path: "wind", code: "wrong", found: "wrong", accepted: "", example: "" };
    say({ kind: "read", job: 2, issues: [issue], files: [plan], right: false });
    say({ kind: "done", job: 2 });
    expect(get()).toMatchObject({ issues: [issue], told: { data: { seed: 1 } }, fresh: false, settling: false });
  });

  test("Computer.plan() says an answer with issues is not of the documents as they are", () => {
    const { computer, say } = ready();
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    const issue = { file: plan, path: "wind", code: "unit-missing", found: "2", accepted: "", example: "" };
    say({ kind: "read", job: 1, issues: [issue], files: [plan], right: true });
    say({ kind: "told", job: 1, told: tell(1) });
    expect(get()).toMatchObject({ told: { data: { seed: 1 } }, fresh: false, issues: [issue] });
  });

  test("Computer.plan() asks nothing for what nobody watches, and catches up when somebody does", () => {
    const { computer, asked, read, say, change } = ready();
    const { subscribe } = computer.plan(plan);
    const end = subscribe(() => undefined);
    read(1);
    say({ kind: "told", job: 1, told: tell(1) });
    say({ kind: "done", job: 1 });
    end();
    change(plan, { kind: "plan", wind: 3 });
    expect(asked()).toHaveLength(1);
    subscribe(() => undefined);
    expect(asked()).toHaveLength(2);
  });

  test("Computer.plan() begins with what the bench shows of it, and does not go back to rough odds", async () => {
    const { computer, asked, read, say, change } = ready();
    computer.brief(plan).subscribe(() => undefined);
    await soon();
    read(1);
    say({ kind: "told", job: 1, told: tell(7) });
    say({ kind: "done", job: 1 });
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    expect(asked()).toMatchObject([{ ask: "brief" }, { ask: "plan" }]);
    const known = { told: { data: { seed: 7 }, draws: 10_000 }, fresh: true, settling: false };
    expect(get()).toMatchObject(known);
    expect(computer.progress(plan).get()).toBeNull();
    read(2);
    say({ kind: "told", job: 2, told: tell(7, 256) });
    expect(get()).toMatchObject(known);
    change(plan, { kind: "plan", wind: 2 });
    expect(get()).toMatchObject({ told: { draws: 10_000 }, fresh: false, settling: true });
    read(3);
    say({ kind: "told", job: 3, told: tell(8, 256) });
    expect(get()).toMatchObject({ told: { data: { seed: 8 }, draws: 256 }, fresh: true, settling: true });
    // what first draws cannot say stands as it was said last
    expect(get()).toMatchObject({ told: { data: { drivers: [{ input: "delay" }] } } });
  });

  test("Computer.plan() begins with the answer of an earlier visit where its documents are the same", async () => {
    const saved = afterVisit(tell(5));

    const second = ready(saved);
    const { get, subscribe } = second.computer.plan(plan);
    subscribe(() => undefined);
    await soon();
    expect(get()).toMatchObject({ told: { data: { seed: 5 } }, fresh: true, settling: false });

    const third = ready(saved);
    third.change(plan, { kind: "plan", wind: 8 });
    const other = third.computer.plan(plan);
    other.subscribe(() => undefined);
    await soon();
    expect(other.get()).toMatchObject({ told: null, fresh: false, settling: true });
    third.computer.close();
  });

  test("Computer.plan() keeps odds that came before the answer of an earlier visit was found", async () => {
    const saved = afterVisit(tell(5));

    const { computer, read, say } = ready(saved);
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    read(1);
    say({ kind: "told", job: 1, told: tell(5, 256) });
    await soon();
    expect(get()).toMatchObject({ told: { draws: 256 }, settling: true });
  });

  test("Computer.plan() says in words that a job met a defect", () => {
    const { computer, say, read } = ready();
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    read(1);
    say({ kind: "failed", job: 1, reason: "no root between 0 and 1" });
    expect(get().failure).toContain("no root between 0 and 1");
    expect(get().settling).toBe(false);
  });
});

describe("Computer and its crews", () => {
  test("Computer hires a new crew where one died, sends it everything and asks again", () => {
    const { computer, crews, asked, say, read } = ready();
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    read(1);
    crews[0]!.events.died("terminated");
    expect(crews).toHaveLength(2);
    expect(crews[0]!.ended).toBe(true);
    const [documents] = crews[1]!.heard;
    expect(documents).toMatchObject({ kind: "documents", put: [{ path: plan }, { path: "demo.rocket.json" }] });
    expect(asked()).toEqual([{ kind: "ask", job: 2, ask: "plan", plan }]);
    crews[0]!.events.message({ kind: "told", job: 2, told: tell(9) });
    expect(get().told).toBeNull();
    read(2);
    say({ kind: "told", job: 2, told: tell(2) });
    expect(get()).toMatchObject({ told: { data: { seed: 2 } }, failure: null });
  });

  test("Computer replaces three crews in a row, gives up after that, says so, and starts again with the next change", () => {
    const { computer, crews, asked, change } = ready();
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    for (let i = 0; i < 4; i++) crews.at(-1)!.events.died("crashed");
    expect(crews).toHaveLength(4);
    expect(get().failure).toContain("4 times in a row");
    change(plan, { kind: "plan", wind: 4 });
    expect(crews).toHaveLength(5);
    expect(asked()).toHaveLength(1);
    expect(get().failure).toBeNull();
  });

  test("Computer counts deaths anew once a job was done", () => {
    const { computer, crews, say } = ready();
    const { get, subscribe } = computer.plan(plan);
    subscribe(() => undefined);
    for (let i = 0; i < 3; i++) crews.at(-1)!.events.died("crashed");
    say({ kind: "done", job: 4 });
    computer.window(plan).subscribe(() => undefined);
    for (let i = 0; i < 3; i++) crews.at(-1)!.events.died("crashed");
    expect(get().failure).toBeNull();
    expect(crews).toHaveLength(7);
  });

  test("Computer replaces a crew that is silent at work for twenty looks, not one that is idle", () => {
    const { computer, crews, look, say, read } = ready();
    computer.warmUp();
    look(50);
    expect(crews).toHaveLength(1);
    computer.plan(plan).subscribe(() => undefined);
    look(19);
    read(1);
    look(19);
    expect(crews).toHaveLength(1);
    look(1);
    expect(crews).toHaveLength(2);
    say({ kind: "done", job: 2 });
    look(50);
    expect(crews).toHaveLength(2);
  });
});

describe("Computer.brief()", () => {
  test("Computer.brief() finds a settled answer again while its documents are the same", async () => {
    const saved = afterVisit(tell(5));
    expect(saved.get(plan)?.files.map(({ path }) => path)).toEqual([plan, "demo.rocket.json"]);

    const second = ready(saved);
    const { get, subscribe } = second.computer.brief(plan);
    subscribe(() => undefined);
    await soon();
    expect(second.asked()).toHaveLength(0);
    expect(get()).toMatchObject({ state: "settled", told: { data: { seed: 5 } } });

    second.change(plan, { kind: "plan", wind: 8 });
    await soon();
    expect(get()).toMatchObject({ state: "waiting", told: { data: { seed: 5 } } });
    expect(second.asked()).toMatchObject([{ ask: "brief" }]);
  });

  test("Computer.brief() does not take the answer of another build", async () => {
    const saved = new Map([[plan, { version: "build-0", files: [], told: tell(3) }]]);
    const { computer, asked } = ready(saved);
    const { get, subscribe } = computer.brief(plan);
    subscribe(() => undefined);
    await soon();
    expect(get().told).toBeNull();
    expect(asked()).toMatchObject([{ ask: "brief" }]);
  });

  test("Computer.brief() takes over what the plan's own page has settled", async () => {
    const { computer, asked, read, say } = ready();
    const { get, subscribe } = computer.brief(plan);
    computer.plan(plan).subscribe(() => undefined);
    read(1);
    say({ kind: "told", job: 1, told: tell(6) });
    subscribe(() => undefined);
    await soon();
    expect(get()).toMatchObject({ state: "settled", told: { data: { seed: 6 } } });
    expect(asked()).toHaveLength(1);
  });

  test("Computer.brief() tells what is wrong with a plan", async () => {
    const { computer, say } = ready();
    const { get, subscribe } = computer.brief(plan);
    subscribe(() => undefined);
    await soon();
    const issue = { file: plan, path: "", code: "file-missing", found: "", accepted: "", example: "" };
    say({ kind: "read", job: 1, issues: [issue], files: [plan], right: false });
    say({ kind: "done", job: 1 });
    expect(get()).toMatchObject({ state: "wrong", issues: [issue], told: null });
  });
});

describe("Computer.window()", () => {
  test("Computer.window() keeps the last window while a new one is under way", () => {
    const { computer, say, read, change } = ready();
    const { get, subscribe } = computer.window(plan);
    subscribe(() => undefined);
    read(1);
    const window = { delay: 9 } as never;
    say({ kind: "window", job: 1, window });
    say({ kind: "done", job: 1 });
    expect(get()).toMatchObject({ state: "ready", fresh: true, window: { delay: 9 } });
    change(plan, { kind: "plan", wind: 5 });
    expect(get()).toMatchObject({ state: "waiting", fresh: false, window: { delay: 9 } });
  });
});

describe("Computer.shortlist()", () => {
  test("Computer.shortlist() asks again when any motor comes, goes or changes, and not for another rocket", () => {
    const { computer, asked, say, change } = ready();
    computer.shortlist(plan).subscribe(() => undefined);
    say({ kind: "read", job: 1, issues: [], files: [plan], right: true });
    say({ kind: "done", job: 1 });
    change("demo.rocket.json", { kind: "rocket", mass: 2 });
    expect(asked()).toHaveLength(1);
    change("new.motor.json", { kind: "motor" });
    expect(asked()).toHaveLength(2);
    expect(asked()[1]).toMatchObject({ ask: "shortlist", plan });
    change("new.motor.json", null);
    expect(asked()).toHaveLength(3);
  });

  test("Computer.shortlist() is dropped with the last who looks, and asked anew by who comes back", () => {
    const { computer, crew, asked, say } = ready();
    const { get, subscribe } = computer.shortlist(plan);
    const ends = [subscribe(() => undefined), subscribe(() => undefined)];
    ends[0]?.();
    expect(crew().heard.at(-1)?.kind).toBe("ask");
    ends[1]?.();
    expect(crew().heard.at(-1)).toEqual({ kind: "drop", job: 1 });
    say({ kind: "read", job: 1, issues: [], files: [plan], right: false });
    expect(get().state).toBe("waiting");
    subscribe(() => undefined);
    expect(asked()).toHaveLength(2);
  });

  test("Computer.shortlist() tells how many motors are judged", () => {
    const { computer, say } = ready();
    computer.shortlist(plan).subscribe(() => undefined);
    say({ kind: "beat", job: 1, done: 12, of: 48 });
    expect(computer.shortlistProgress(plan).get()).toBe(0.25);
    say({ kind: "done", job: 1 });
    expect(computer.shortlistProgress(plan).get()).toBeNull();
  });

  test("Computer.plan() is not dropped with who looks", () => {
    const { computer, crew } = ready();
    computer.plan(plan).subscribe(() => undefined)();
    expect(crew().heard.some(({ kind }) => kind === "drop")).toBe(false);
  });
});
