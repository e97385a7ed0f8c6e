import { expect, test } from "vitest";
import { decodeText } from "./decode.js";

const utf8 = (text: string) => new TextEncoder().encode(text);

test("decodeText() reads UTF-8 with and without a mark", () => {
  expect(decodeText(utf8('{"µ":1}'))).toEqual({ ok: true, text: '{"µ":1}' });
  expect(decodeText(utf8('\uFEFF{"µ":1}'))).toEqual({ ok: true, text: '{"µ":1}' });
});

test.each([
  ["UTF-16 with a mark", new Uint8Array([0xff, 0xfe, 0x7b, 0, 0x7d, 0]), "UTF-16 text"],
  ["UTF-16 without a mark", new Uint8Array(Buffer.from('{ "kind": "rocket" }', "utf16le")), "UTF-16 text"],
  ["Latin-1", new Uint8Array([0x7b, 0xb5, 0x7d]), "bytes that are not UTF-8 (Latin-1 or Windows-1252, perhaps)"],
  ["zero bytes", new Uint8Array([...utf8("{ a long enough text }"), 0]), "bytes that are not text"],
])("decodeText() names %s and refuses it", (_, bytes, found) => {
  const decoded = decodeText(bytes);
  expect(decoded.ok ? "" : [decoded.fault.code, decoded.fault.found]).toEqual(["encoding", found]);
});

test("decodeText() says that a file is empty or too large", () => {
  const code = (bytes: Uint8Array) => {
    const decoded = decodeText(bytes);
    return decoded.ok ? "" : decoded.fault.code;
  };
  expect(code(new Uint8Array())).toBe("empty-file");
  expect(code(utf8(" \n"))).toBe("empty-file");
  expect(code(new Uint8Array(5_000_001).fill(32))).toBe("too-large");
});
