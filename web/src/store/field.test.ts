import fc from "fast-check";
import { expect, test } from "vitest";
import { readField, writeField } from "./field.js";

const raw = { kind: "rocket", fins: [{ root: "180 mm" }, { root: "90 mm" }], drag: { scale: 1 } };

test("readField finds what stands in objects and lists, and nothing that is inherited", () => {
  expect(readField(raw, "fins[1].root")).toBe("90 mm");
  expect(readField(raw, "fins[2].root")).toBeUndefined();
  expect(readField(raw, "drag.scale.more")).toBeUndefined();
  expect(readField(raw, "constructor")).toBeUndefined();
  expect(readField(raw, "fins[")).toBeUndefined();
});

test("writeField makes what is missing on the way and leaves the document itself alone", () => {
  const before = structuredClone(raw);
  expect(writeField(raw, "bay.shearPins[0].size", "2-56")).toEqual({ ...raw, bay: { shearPins: [{ size: "2-56" }] } });
  expect(raw).toEqual(before);
});

test("writeField keeps the order of keys and shares what it does not touch", () => {
  const written = writeField(raw, "fins[0].root", "181 mm");
  expect(Object.keys(written)).toEqual(Object.keys(raw));
  expect(written["drag"]).toBe(raw.drag);
});

test("writeField takes away a field with the objects that this empties, and a row only when it is named", () => {
  expect(writeField({ kind: "plan", weather: { wind: "2 m/s" } }, "weather.wind", undefined)).toEqual({ kind: "plan" });
  expect(writeField({ fins: [{ root: "1 mm" }] }, "fins[0].root", undefined)).toEqual({ fins: [{}] });
  expect(writeField({ fins: [{ root: "1 mm" }, {}] }, "fins[0]", undefined)).toEqual({ fins: [{}] });
});

test("writeField with a key of a prototype writes a plain key", () => {
  const written = writeField({}, "__proto__.polluted", "yes");
  expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
  expect(Object.getPrototypeOf(written)).toBe(Object.prototype);
  expect(readField(written, "__proto__.polluted")).toBe("yes");
});

const key = fc.constantFrom("a", "b", "c");
const field = fc
  .tuple(
    key,
    fc.array(
      fc.oneof(
        key.map((each) => `.${each}`),
        fc.constantFrom("[0]", "[1]"),
      ),
      { maxLength: 3 },
    ),
  )
  .map(([head, rest]) => head + rest.join(""));
const leaf = fc.oneof(fc.string(), fc.integer(), fc.boolean());

test("writeField and readField: what was written is read, at the place after the last where a list is shorter", () => {
  fc.assert(
    fc.property(field, leaf, (path, value) => {
      const written = writeField({}, path, value);
      expect(readField(written, path.replaceAll("[1]", "[0]"))).toBe(value);
    }),
  );
});

test("writeField: a field that was added to nothing and taken away again leaves nothing", () => {
  fc.assert(
    fc.property(fc.array(key, { minLength: 1, maxLength: 4 }), leaf, (keys, value) => {
      const path = keys.join(".");
      expect(writeField(writeField({ kind: "plan" }, path, value), path, undefined)).toEqual({ kind: "plan" });
    }),
  );
});
