import { describe, expect, it } from "vitest";
import { type Label, labelBox, overlap, placeLabels } from "./place-labels.js";

const bounds = { left: 0, top: 0, right: 300, bottom: 200 };
const word = (words: string): Label["lines"] => [{ words, size: 12 }];

describe("placeLabels", () => {
  it("keeps labels off each other while there is room", () => {
    const spots = [40, 60, 80, 100].map((y) => ({ x: 100, y, anchor: "middle" as const }));
    const labels = ["one", "two", "three"].map((words) => ({ lines: word(words), spots }));
    const placed = placeLabels(labels, [], bounds);
    const boxes = placed.map((spot, i) => labelBox(labels[i]?.lines ?? [], spot));
    expect(boxes).toHaveLength(3);
    boxes.forEach((a, i) => {
      for (const b of boxes.slice(i + 1)) expect(overlap(a, b)).toBe(0);
    });
  });

  it("keeps labels inside the picture while there is room", () => {
    const spots = [
      { x: 298, y: 100, anchor: "start" as const },
      { x: 298, y: 100, anchor: "end" as const },
    ];
    expect(placeLabels([{ lines: word("ceiling 900 m"), spots }], [], bounds)[0]?.anchor).toBe("end");
  });
});
