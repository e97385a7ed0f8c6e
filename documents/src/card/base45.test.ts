import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { utf8 } from "../file-source.js";
import { fromBase45, toBase45 } from "./base45.js";

// RFC 9285, sections 4.3 and 4.4: the examples printed there
const printed = [
  ["AB", "BB8"],
  ["Hello!!", "%69 VD92EX0"],
  ["base-45", "UJCLQE7W581"],
  ["ietf!", "QED8WEX0"],
] as const;

describe("toBase45() and fromBase45()", () => {
  test.each(printed)("%s is %s, as RFC 9285 prints it", (text, letters) => {
    expect(toBase45(utf8(text))).toBe(letters);
    expect(fromBase45(letters)).toEqual(utf8(text));
  });

  test("give back any bytes", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (bytes) => {
        expect(fromBase45(toBase45(bytes))).toEqual(bytes);
      }),
    );
  });

  // RFC 9285, section 6: FGW is 65535, GGW is 65536 and must be refused; likewise letters outside the alphabet
  test.each(["GGW", ":::", "A", "ABCD", "AB_", "ab0", "::", "Ä00"])("fromBase45() refuses %s", (letters) => {
    expect(fromBase45(letters)).toBeUndefined();
  });

  test("fromBase45() reads the largest group", () => {
    expect(fromBase45("FGW")).toEqual(new Uint8Array([255, 255]));
  });
});
