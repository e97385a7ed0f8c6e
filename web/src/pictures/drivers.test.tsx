import type { Driver } from "@delaywright/engine";
import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { Drivers } from "./drivers.js";
import { remedyFor } from "./drivers-words.js";

const share = (total: number) => ({ first: total, total });
const drivers: readonly Driver[] = [
  { input: "dragScale", coast: share(0.3), timing: share(0.04), odds: share(0.02) },
  { input: "delay", coast: null, timing: share(0.8), odds: null },
  { input: "totalImpulse", coast: share(0.6), timing: share(0.1), odds: null },
  { input: "mass", coast: share(0.001), timing: share(0.001), odds: null },
];

describe("Drivers", () => {
  it("draws the largest share first, in ink, and each bar as long as its share", () => {
    const drawn = renderToStaticMarkup(<Drivers drivers={drivers} state="settled" />);
    const bars = [...drawn.matchAll(/<rect [^>]*width="([\d.]+)"[^>]*class="(bar[^"]*)"/g)];
    expect(bars.map((bar) => bar[2])).toEqual(["bar first", "bar", "bar"]);
    const [first, second, third] = bars.map((bar) => Number(bar[1]));
    expect((second ?? 0) / (first ?? 1)).toBeCloseTo(0.1 / 0.8, 6);
    expect((third ?? 0) / (first ?? 1)).toBeCloseTo(0.04 / 0.8, 6);
    expect(drawn).toContain("The delay itself 80\u202f%: logged flights of this motor would tell.");
  });

  it("shares out the time to the top where asked, without what cannot move it", () => {
    const drawn = renderToStaticMarkup(<Drivers drivers={drivers} of="coast" state="settling" />);
    expect(drawn).not.toContain("The delay itself");
    expect(drawn).toContain("Total impulse");
  });

  it("is drawable without drivers and with shares that are not finite", () => {
    const broken: Driver = { input: "mass", coast: null, timing: share(Number.NaN), odds: null };
    for (const list of [[], [broken]]) {
      const drawn = renderToStaticMarkup(<Drivers drivers={list} state="stale" />);
      expect(drawn).toContain("nothing is uncertain");
      expect(drawn).not.toMatch(/NaN|undefined/);
    }
  });
});

describe("remedyFor", () => {
  it("is empty for what it does not know", () => {
    expect(remedyFor("toString")).toBe("");
  });
});
