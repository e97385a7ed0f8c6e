import { type MotorInHandDocument, type Raw, readDocument } from "@delaywright/documents";
import jsQR from "jsqr";
import { describe, expect, test } from "vitest";
import { labelText, labelWords, wholeReading } from "./label-data.js";
import { bytesOf, codePath, MOST_BYTES } from "./qr.js";

const motor: Raw = {
  kind: "motor",
  version: 1,
  name: "Demo H150",
  diameter: "38 mm",
  length: "205 mm",
  loadedMass: "330 g",
  propellantMass: "160 g",
  thrust: { time: [0, 0.1, 2], newtons: [0, 190, 0] },
  delay: { kind: "adjustable", longest: "14 s", depthPerSecond: "1/32 in" },
};
const fresh: Raw = {
  kind: "motor-in-hand",
  version: 1,
  name: "Bag 3",
  type: "demo-h150.motor.json",
  label: "3",
  lot: "L-17 Ä",
  made: "2025-03",
  stored: "indoors",
};
const cut: Raw = {
  ...fresh,
  readings: [
    { when: "2026-05-01T20:00", before: "22.2 mm", after: "24.6 mm", end: "B", note: "at home" },
    { when: "2026-05-02T10:12", before: "24.6 mm", after: "26.16875 mm", end: "A" },
    { when: "2026-05-02T10:20", note: "looked at again" },
  ],
};

/** The dots of a path of runs, drawn as a camera sees them, `scale` pixels to a dot. */
function drawn(path: string, size: number, scale: number) {
  const side = size * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x, y, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row += 1)
      for (let column = Number(x) * scale; column < (Number(x) + Number(length)) * scale; column += 1)
        pixels.fill(0, 4 * (row * side + column), 4 * (row * side + column) + 3);
  return { pixels, side };
}

function readBack(text: string): string | undefined {
  const code = codePath(text);
  if (code === null) return undefined;
  const { pixels, side } = drawn(code.path, code.size, 4);
  const read = jsQR(pixels, side, side);
  return read === null ? undefined : new TextDecoder().decode(new Uint8Array(read.binaryData));
}

describe("codePath()", () => {
  test.each(["Bag 3", labelText(fresh), labelText(cut), "x".repeat(MOST_BYTES), "ä".repeat(100)])(
    "a camera reads back what it was given, case %#",
    (text) => {
      expect(readBack(text)).toBe(text);
    },
  );

  test("refuses what does not fit", () => {
    expect(codePath("x".repeat(MOST_BYTES + 1))).toBeNull();
    expect(bytesOf("ä")).toBe(2);
  });
});

describe("labelText()", () => {
  test("is a motor in hand that can be read, with the state of its cut as one reading", () => {
    const read = readDocument(labelText(cut), { file: "label" });
    expect(read.state).toBe("ready");
    const { readings, stored, lot } = (read.state === "ready" ? read.document : {}) as MotorInHandDocument;
    expect(readings).toEqual([{ when: "2026-05-02T10:12", before: "22.2 mm", after: "26.16875 mm", end: "A" }]);
    expect([stored, lot]).toEqual([undefined, "L-17 Ä"]);
    expect(bytesOf(labelText(cut))).toBeLessThan(MOST_BYTES);
  });

  test("of a motor that was not cut has no reading", () => {
    expect(JSON.parse(labelText(fresh))).not.toHaveProperty("readings");
    expect(wholeReading({ ...fresh, readings: [{ when: "2026-05-02T10:12", before: "22 mm" }, null, 3] })).toBeNull();
  });
});

describe("labelWords()", () => {
  // 5 s of a grain that burns 1/32 in a second are 3.96875 mm: by the definition of the inch, 25.4 mm
  test("say the delay by the last reading", () => {
    expect(labelWords(cut, motor, null)).toEqual({
      motor: "Demo H150",
      name: "Bag 3",
      label: "3",
      lot: "L-17 Ä",
      made: "2025-03",
      delay: "Cut to 9\u00a0s",
      removed: "4.0\u00a0mm (5/32\u00a0in) out",
      before: "22.2 mm",
      after: "26.16875 mm",
      when: "2026-05-02T10:12",
    });
  });

  test("say what is not cut, and what cannot be told", () => {
    expect(labelWords(fresh, motor, null)).toMatchObject({ delay: "Not cut: 14 s", removed: null });
    expect(labelWords(fresh, null, null)).toMatchObject({ delay: "Not cut", motor: null });
    expect(labelWords(cut, null, null)).toMatchObject({ delay: "Cut: delay not known", after: "26.16875 mm" });
  });
});
