import { describe, expect, test } from "vitest";
import { csv, curve, file, folders } from "../../test/files.js";
import { field, motor, motorInHand, plan, rocket, tool } from "../../test/fixtures.js";
import { LARGEST_FILE } from "../decode.js";
import { memoryFiles, utf8 } from "../file-source.js";
import { loadPlan } from "../load-plan.js";
import { issueLine } from "../words/issues.en.js";
import type { Imported } from "./exchange.js";
import { exportLibrary } from "./export-library.js";
import { importFiles } from "./import-files.js";

const summary = ({ entries }: Imported) => entries.map(({ path, kind, state }) => `${path} ${kind} ${state}`);
const codes = ({ issues, entries }: Imported) =>
  [...issues, ...entries.flatMap((entry) => entry.issues)].map(({ path, code }) => `${path} ${code}`.trim());

describe("importFiles()", () => {
  test("takes a plan with its files in folders: flat paths, curves in their motors, and a plan that loads", async () => {
    const imported = await importFiles(folders);
    expect(summary(imported)).toEqual([
      "demo-rocket-third-flight.plan.json plan ready",
      "demo.rocket.json rocket ready",
      "bag-3.motor-in-hand.json motor-in-hand ready",
      "demo-h150.motor.json motor ready",
      "two-collar.tool.json tool ready",
      "larkmoor.field.json field ready",
    ]);
    expect(codes(imported)).toEqual([]);
    expect(imported.curves).toEqual([]);
    expect(imported.entries[0]?.raw).toMatchObject({ rocket: "demo.rocket.json", motor: "bag-3.motor-in-hand.json" });
    expect(imported.entries[3]?.raw?.["thrust"]).toEqual(curve);
    const files = Object.fromEntries(imported.entries.map(({ path, raw }) => [path, JSON.stringify(raw)]));
    const loaded = await loadPlan("demo-rocket-third-flight.plan.json", memoryFiles(files));
    expect(loaded.issues).toEqual([]);
    expect(loaded.parts?.motorInHand?.document.name).toBe("Bag 3");
  });

  test("finds files that came without their folders by their names", async () => {
    const loose = folders.map(({ name, bytes }) => ({ name: name.split("/").at(-1) ?? "", bytes }));
    expect(codes(await importFiles(loose))).toEqual([]);
  });

  test("keeps documents inside others there, and rewrites what they name", async () => {
    const inline = { ...plan, motor: { ...motorInHand, type: { ...motor, thrust: "h.csv" } }, rocket, tool, field };
    const imported = await importFiles([file("p.json", inline), file("h.csv", csv)]);
    expect(summary(imported)).toEqual(["p.plan.json plan ready"]);
    expect(imported.entries[0]?.raw).toEqual({
      ...inline,
      motor: { ...motorInHand, type: { ...motor, thrust: curve } },
    });
  });

  test("gives each path once, also beside those in use, and follows the right one", async () => {
    const bag = { ...motorInHand, type: "demo.motor.json" };
    const imported = await importFiles(
      [
        file("a/demo.motor.json", motor),
        file("b/demo.motor.json", { ...motor, name: "Other" }),
        file("b/bag.json", bag),
      ],
      { taken: ["demo.motor.json"] },
    );
    expect(imported.entries.map((entry) => entry.path)).toEqual([
      "demo-2.motor.json",
      "demo-3.motor.json",
      "bag.motor-in-hand.json",
    ]);
    expect(imported.entries[2]?.raw?.["type"]).toBe("demo-3.motor.json");
  });

  test("tells of a file that is named and did not come, unless it is in use", async () => {
    const files = [file("bag.json", motorInHand), file("m.json", { ...motor, thrust: "gone.csv" })];
    const imported = await importFiles(files);
    expect(codes(imported)).toEqual(["type file-missing", "thrust file-missing"]);
    expect(imported.entries[1]?.raw?.["thrust"]).toBe("gone.csv");
    const beside = await importFiles(files.slice(0, 1), { taken: ["demo-h150.motor.json"] });
    expect(codes(beside)).toEqual([]);
  });

  test("gives a curve without a motor back as a curve, and tells what is wrong with a table", async () => {
    const imported = await importFiles([file("runs/h150.csv", csv), file("bad.csv", "time,thrust\n0,x\n")]);
    expect(imported.curves).toEqual([{ name: "h150", ...curve }]);
    expect(imported.issues[0]).toMatchObject({ file: "bad.csv", code: "not-a-number" });
    const wrong = await importFiles([
      file("m.json", { ...motor, thrust: "bad.csv" }),
      file("bad.csv", "time,thrust\n0,x\n"),
    ]);
    expect(codes(wrong)).toEqual(["thrust not-a-number"]);
  });

  test("keeps what is wrong, newer or unreadable as it is, and lets it stop no other", async () => {
    const newer = { ...rocket, version: 7, rocket: "demo.rocket.json", novel: { a: [1] } };
    const wrong = { ...rocket, diameter: "76" };
    const imported = await importFiles([
      file("newer.json", newer),
      file("wrong.json", wrong),
      file("torn.json", '{ "kind": "rocket", '),
      file("list.json", "[1, 2]"),
      file("twice.json", '{ "kind": "flyer", "version": 1, "name": "A", "name": "B" }'),
      file("latin.json", new Uint8Array([...utf8('{ "name": "M'), 0xfc, ...utf8('" }')])),
      file("right.json", tool),
    ]);
    expect(imported.entries.map(({ state }) => state)).toEqual([
      "newer",
      "invalid",
      "unreadable",
      "unreadable",
      "invalid",
      "unreadable",
      "ready",
    ]);
    const [first, second, torn, , twice, latin] = imported.entries;
    expect(first?.raw).toEqual(newer);
    expect(second?.raw).toEqual(wrong);
    expect(torn?.text).toBe('{ "kind": "rocket", ');
    expect(twice?.text).toContain('"B"');
    expect(latin?.text).toBe('{ "name": "Mü" }');
    for (const entry of imported.entries.slice(0, -1)) expect(entry.issues.length, entry.path).toBeGreaterThan(0);
  });

  test("tells of a back-up that breaks off, and takes nothing of it, nor the broken text", async () => {
    const text = exportLibrary(
      [
        { path: "demo.rocket.json", raw: rocket },
        { path: "two-collar.tool.json", raw: { ...tool, name: "Müller" } },
      ],
      "My bench",
    );
    const bytes = utf8(text);
    const within = bytes.indexOf(0xc3) + 1;
    for (const cut of [30, within, bytes.length - 4]) {
      const imported = await importFiles([file("a.json", bytes.slice(0, cut)), file("right.json", field)]);
      const line = Buffer.from(bytes.slice(0, cut)).toString("latin1").split("\n").length;
      expect(summary(imported)).toEqual(["right.field.json field ready"]);
      expect(codes(imported)).toEqual([`line ${line} back-up-broken`]);
    }
    const whole = await importFiles([file("a.json", bytes)]);
    expect(whole.entries).toHaveLength(2);
  });

  test("keeps a broken library that was kept on a bench as text", async () => {
    const text = '{ "kind": "library", ';
    const library = {
      kind: "library",
      version: 1,
      name: "Bench",
      documents: [],
      unreadable: [{ file: "x.json", text }],
    };
    expect((await importFiles([file("a.json", library)])).entries).toMatchObject([{ path: "x.json", text }]);
  });

  test("says what an empty table should hold, and what an empty document", async () => {
    const { issues } = await importFiles([file("e.csv", ""), file("e.json", "")]);
    expect(issues.map(issueLine)).toEqual([
      'e.csv: an empty file found; a thrust curve as lines with a time and a thrust (an altimeter\'s log, with a time and a height, pressure or acceleration in each line, is taken in at the Debrief of its plan) is accepted, for example "0.10, 190"',
      "e.json: an empty file found; a JSON document is accepted",
    ]);
  });

  test("is not harmed by hostile files", async () => {
    const deep = `${'{ "a": '.repeat(5000)}1${" }".repeat(5000)}`;
    const proto =
      '{ "kind": "flyer", "version": 1, "name": "P", "__proto__": { "polluted": 1 }, "constructor": { "prototype": { "polluted": 1 } } }';
    const script = { kind: "flyer", version: 1, name: "<script>alert(1)</script>" };
    const imported = await importFiles([
      file("deep.json", deep),
      file("proto.json", proto),
      file("__proto__", proto),
      file("constructor", JSON.stringify(script)),
      file("../../<img src=x>\u202e.json", script),
      file("huge.json", new Uint8Array(LARGEST_FILE + 1)),
      file("picture.png", new Uint8Array([137, 80, 78, 71, 0, 0, 0, 13])),
      file("empty.json", ""),
      file(
        "lib.json",
        `{ "kind": "library", "version": 1, "name": "L", "files": ["__proto__"], "documents": [${proto}], "drafts": [{ "file": "__proto__", "fields": { "__proto__": "x", "name": "y" } }] }`,
      ),
    ]);
    expect(({} as { polluted?: number }).polluted).toBeUndefined();
    expect(Object.prototype).not.toHaveProperty("polluted");
    expect(imported.entries.map(({ path, state }) => `${path} ${state}`)).toEqual([
      "deep.json unreadable",
      "proto.flyer.json invalid",
      "proto-2.flyer.json invalid",
      "constructor.flyer.json ready",
      "img-src-x.flyer.json ready",
      "__proto__ invalid",
    ]);
    expect(imported.entries[3]?.name).toBe("<script>alert(1)</script>");
    for (const { raw } of imported.entries) expect(raw === undefined || !Object.hasOwn(raw, "__proto__")).toBe(true);
    expect(imported.entries.at(-1)?.drafts).toEqual({ name: "y" });
    expect(imported.issues.map((issue) => issue.code)).toEqual(
      expect.arrayContaining(["file-too-large", "encoding", "empty-file"]),
    );
  });

  test("takes a library's documents one by one, broken ones too", async () => {
    const library = {
      kind: "library",
      version: 1,
      name: "Bench",
      files: ["Demo H150.json", "a/b.json", "bag.json", "x.json"],
      documents: [
        motor,
        { ...rocket, fins: 3 },
        { ...motorInHand, type: "Demo H150.json" },
        { kind: "library", version: 1, name: "Inner", documents: [] },
      ],
    };
    const imported = await importFiles([file("backup.json", library)]);
    expect(summary(imported)).toEqual([
      "Demo H150.json motor ready",
      "b.rocket.json rocket invalid",
      "bag.json motor-in-hand ready",
      "x.json library ready",
    ]);
    expect(imported.entries[2]?.issues).toEqual([]);
  });
});
