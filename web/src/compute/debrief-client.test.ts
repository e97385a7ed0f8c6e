import { describe, expect, test } from "vitest";
import type { DebriefAsk, DebriefTold, FromDebrief, ToDebrief } from "./debrief/protocol.js";
import { DebriefClient, type DebriefPortEvents } from "./debrief-client.js";

/** A worker that says what a test tells it to. */
function fake() {
  const ports: { readonly posted: ToDebrief[]; readonly events: DebriefPortEvents; ended: boolean }[] = [];
  const client = new DebriefClient((events) => {
    const port = { posted: [] as ToDebrief[], events, ended: false };
    ports.push(port);
    return {
      post: (message) => void port.posted.push(message),
      end() {
        port.ended = true;
      },
    };
  });
  const last = () => ports.at(-1) ?? ports[0];
  const say = (message: Readonly<Record<string, unknown>>) => last()?.events.message(message as unknown as FromDebrief);
  return { client, ports, say, last };
}

const told = (settled: boolean) => ({ settled }) as DebriefTold;
const heard = () => {
  const said: unknown[] = [];
  return {
    said,
    listener: {
      told: (each: DebriefTold) => void said.push(each.settled),
      wrong: (issues: unknown) => void said.push(issues),
      failed: (reason: string) => void said.push(reason),
    },
  };
};

describe("DebriefClient", () => {
  test("starts its worker with the first question, and gives each answer to who asked", async () => {
    const { client, ports, say, last } = fake();
    expect(ports).toHaveLength(0);
    const first = client.preview(null);
    const second = client.stretch({ from: 0, to: 1, most: 10 });
    expect(ports).toHaveLength(1);
    const [one, two] = last()?.posted ?? [];
    say({ kind: "lines", job: two?.job, lines: null });
    say({ kind: "previewed", job: one?.job, previewed: { ok: false, faults: [], preview: null } });
    expect(await second).toBeNull();
    expect(await first).toMatchObject({ ok: false });
  });

  test("knows which file is open, also after it has another name", async () => {
    const { client, say } = fake();
    await expect(client.pack("a.csv")).rejects.toThrow("chosen again");
    const opening = client.open("a.csv", { bytes: new Blob(["1,2"]), gzip: false });
    say({ kind: "opened", job: 1, previewed: { ok: false, faults: [], preview: null } });
    await opening;
    expect(client.opened).toBe("a.csv");
    client.rename("a-1.csv");
    expect(client.opened).toBe("a-1.csv");
    const again = client.open("b.csv", { bytes: new Blob(["1,2"]), gzip: true });
    say({ kind: "opened", job: 2, previewed: null });
    expect([await again, client.opened]).toEqual([null, null]);
  });

  test("has files read by its worker, by their names with folders, and reads them itself where no worker runs", async () => {
    const bytes = new TextEncoder().encode('{ "kind": "tool", "version": 1, "name": "Blade" }');
    const file = Object.assign(new File([bytes], "blade.tool.json"), { webkitRelativePath: "bench/blade.tool.json" });
    const { client, say, last } = fake();
    const asked = client.incoming([file, { name: "b.json", bytes }]);
    expect(last()?.posted).toMatchObject([
      { kind: "incoming", files: [{ name: "bench/blade.tool.json", bytes: file }, { name: "b.json" }] },
    ]);
    const read = { entries: [], curves: [], records: [], issues: [] };
    say({ kind: "incoming", job: 1, read });
    expect(await asked).toBe(read);
    const alone = client.incoming([file]);
    last()?.events.died("no workers here");
    expect((await alone).entries).toMatchObject([{ path: "blade.tool.json", name: "Blade" }]);
    const refused = new DebriefClient(() => {
      throw new Error("workers are refused");
    });
    expect((await refused.incoming([file])).entries).toMatchObject([{ path: "blade.tool.json" }]);
  });

  test("hears a debrief to its end, and nothing of one that was left or dropped", () => {
    const { client, say } = fake();
    const [a, b] = [heard(), heard()];
    const ask = {} as DebriefAsk;
    const leave = client.debrief(ask, a.listener);
    say({ kind: "told", job: 1, told: told(false) });
    leave();
    say({ kind: "told", job: 1, told: told(true) });
    expect(a.said).toEqual([false]);
    client.debrief(ask, b.listener);
    say({ kind: "told", job: 2, told: told(false) });
    say({ kind: "told", job: 2, told: told(true) });
    say({ kind: "wrong", job: 2, issues: ["late"] });
    expect(b.said).toEqual([false, true]);
  });

  test("tells who waits when its worker dies, and starts another that has no file open", async () => {
    const { client, ports, last } = fake();
    const { said, listener } = heard();
    client.debrief({} as DebriefAsk, listener);
    const waiting = client.preview(null);
    last()?.events.died("no memory");
    expect(said).toEqual(["no memory"]);
    await expect(waiting).rejects.toThrow("no memory");
    expect([client.opened, ports[0]?.ended]).toEqual([null, true]);
    void client.stretch({ from: 0, to: 1, most: 4 });
    expect(ports).toHaveLength(2);
  });
});
