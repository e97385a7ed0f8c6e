import { type DebriefEvent, type LogMapping, readLog } from "@delaywright/documents";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, test } from "vitest";
import { EventTable } from "./event-table.js";
import { LogPreviewTable } from "./log-preview.js";
import { NextTable } from "./next-table.js";

const rows = Array.from({ length: 400 }, (_, i) => {
  const t = i / 20;
  const height = t < 2 ? 0 : Math.max(0, 60 * (t - 2) - 4.9 * (t - 2) ** 2);
  return `${t.toFixed(2)},${height.toFixed(1)},x${i},${(9.8).toFixed(1)}`;
});
const csv = ["Time (s),Height,note,Accel (g)", ...rows].join("\n");

function shown(mapping?: LogMapping): string {
  const log = readLog(csv, mapping);
  const preview = log.ok ? log : log.preview;
  if (preview === null) throw new Error("no preview");
  return renderToStaticMarkup(<LogPreviewTable preview={preview} onMapping={() => undefined} />);
}

describe("LogPreviewTable", () => {
  test("shows each column with some of its cells, what it is taken for and by what", () => {
    const drawn = shown();
    for (const heading of ["Time (s)", "Height", "note", "Accel (g)"]) expect(drawn).toContain(`<b>${heading}</b>`);
    expect(drawn).toContain("0.00  0.05  0.10  0.15");
    expect(drawn).toContain("Time (s) holds");
    expect(drawn).toContain("Unit of Height");
    expect(drawn).toContain("By its heading");
    expect(drawn.match(/class="log-column"/g)).toHaveLength(4);
  });

  test("has a unit only for what is used, and a way round only for the acceleration", () => {
    const drawn = shown({ time: { column: 1, unit: "s" }, acceleration: { column: 4, unit: "g" } });
    expect(drawn).not.toContain("Unit of Height");
    expect(drawn.match(/forward counts as negative/g)).toHaveLength(1);
  });
});

const event = (more: Partial<DebriefEvent>): DebriefEvent => ({
  name: "apogee",
  predicted: { time: 11.2, height: 580 },
  flown: {
    time: 11.5,
    height: 600,
    timeError: 0.06,
    heightError: 1,
    reason: "height-highest",
    movedFrom: null,
  },
  difference: 0.3,
  differenceError: 0.06,
  heightDifference: 20,
  meaning: "top-higher",
  ...more,
});

describe("EventTable", () => {
  const data = {
    events: [
      event({}),
      event({
        name: "burnout",
        meaning: "not-found",
        flown: null,
        difference: null,
        differenceError: null,
        heightDifference: null,
      }),
      event({ name: "main", meaning: "not-found", predicted: null, flown: null }),
    ],
  } as never;

  test("has a row for each event that was predicted or found, with its difference, error and reason, and a sentence", () => {
    const drawn = renderToStaticMarkup(<EventTable data={data} units="metric" onChoose={() => undefined} />);
    expect(drawn.match(/<tr>/g)).toHaveLength(3);
    expect(drawn).toContain("+0.30\u202fs");
    expect(drawn).toContain("± 0.06\u202fs");
    expect(drawn).toContain("+20 m");
    expect(drawn).toContain("height is highest");
    expect(drawn).toContain("not found");
    expect(drawn).toContain("higher than predicted: less drag or more impulse");
    expect(drawn.match(/move it on the plot/g)).toHaveLength(1);
    expect(drawn).not.toMatch(/NaN|undefined|null/);
  });

  test("is in feet where the flyer's units are, and offers nothing to move without a record", () => {
    const drawn = renderToStaticMarkup(<EventTable data={data} units="imperial" onChoose={null} />);
    expect(drawn).toContain("+66 ft");
    expect(drawn).not.toContain("move it on the plot");
  });
});

describe("NextTable", () => {
  test("has the odds of each delay without the flight and with it, and marks the one to cut", () => {
    const side = (clean: number) => ({
      settings: [
        { delay: 8, clean: 0.8, holds: 1 },
        { delay: 9, clean, holds: 1 },
      ],
    });
    const next = { plan: "", before: side(0.9), after: { ...side(0.95), toCut: { delay: 9 } }, sameDelay: null };
    const drawn = renderToStaticMarkup(<NextTable next={next as never} />);
    expect(drawn).toMatch(
      /class="mine"><th scope="row">9\ss<small> to cut<\/small><\/th><td class="n">90<\/td><td class="n">95</,
    );
  });
});
