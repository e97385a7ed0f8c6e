import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { ThrustCurve, type ThrustCurveProps } from "./thrust-curve.js";

const props: ThrustCurveProps = {
  times: [0, 0.03, 0.5, 1.2, 1.95, 2.15],
  newtons: [0, 151, 196, 176, 90, 0],
  averageThrust: 155,
  burnEnd: 2.07,
  totalImpulse: 330,
  units: "metric",
};

describe("ThrustCurve", () => {
  const drawn = renderToStaticMarkup(<ThrustCurve {...props} />);

  it("draws the burnout where it lies on the ruler of seconds", () => {
    const at = (second: string): number =>
      Number(new RegExp(`<text x="([\\d.]+)"[^>]*text-anchor="middle">${second}<`).exec(drawn)?.[1]);
    const burnout = Number(/<line x1="([\d.]+)"[^>]*class="thin dash thrust-burnout"/.exec(drawn)?.[1]);
    expect(burnout).toBeCloseTo(at("0") + (at("1") - at("0")) * 2.07, 3);
  });

  it("says the figures in sentences", () => {
    expect(drawn).toContain("Most thrust 196\u202fN after 0.5\u202fs; on average 155\u202fN.");
    expect(drawn).toContain("330\u202fN\u202fs");
  });

  it.each<[string, Partial<ThrustCurveProps>]>([
    ["without thrust", { newtons: [0, 0, 0, 0, 0, 0], averageThrust: 0 }],
    ["without rows", { times: [], newtons: [], averageThrust: 0, burnEnd: 0 }],
    ["with one point", { times: [1], newtons: [5], averageThrust: 5, burnEnd: 1 }],
    [
      "with figures that are not finite",
      { times: [0, Number.NaN], newtons: [1, 2], averageThrust: Number.NaN, burnEnd: Number.NaN },
    ],
    ["in pounds of force", { units: "imperial" }],
  ])("is drawable %s", (_, change) => {
    expect(renderToStaticMarkup(<ThrustCurve {...props} {...change} />)).not.toMatch(/NaN|Infinity|undefined/);
  });
});
