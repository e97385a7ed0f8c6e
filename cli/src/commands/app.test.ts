import { expect, test } from "vitest";
import { memoryIo } from "../io/memory.js";
import { app } from "./app.js";

test("app() tells the address and waits until it is ended", async () => {
  const asked: unknown[] = [];
  const io = memoryIo(
    {},
    {
      serveApp: (port, onlyThis) => {
        asked.push([port, onlyThis]);
        return Promise.resolve({ ok: true, port: port + 1, ended: Promise.resolve() });
      },
    },
  );
  expect(await app({}, io)).toBe(0);
  expect(io.written.out).toContain("http://127.0.0.1:4861/");
  expect(await app({ port: 5000 }, io)).toBe(0);
  expect(asked).toEqual([
    [4860, false],
    [5000, true],
  ]);
});

test("app() tells what is missing", async () => {
  const io = memoryIo({}, { serveApp: () => Promise.resolve({ ok: false, reason: "not-built" }) });
  expect(await app({}, io)).toBe(2);
  expect(io.written.err).toContain("npm run build");
});
