import { renderToStaticMarkup } from "react-dom/server";
import { describe, expect, it } from "vitest";
import { inventedSteadiness } from "./invented-steadiness.js";
import { StabilityCloseUp } from "./stability-close-up.js";
import { StabilityMargin } from "./stability-margin.js";
import { StabilityOverTime } from "./stability-over-time.js";

const data = inventedSteadiness();
const draw = (change: Partial<typeof data> = {}, leastMargin: number | null = 1): string =>
  renderToStaticMarkup(<StabilityOverTime data={{ ...data, ...change }} state="settled" leastMargin={leastMargin} />);

/** Corners of a path by its class. */
function cornersOf(drawn: string, look: string): readonly (readonly [number, number])[] {
  const [, path = ""] = new RegExp(`<path d="([^"]*)" class="${look}"`).exec(drawn) ?? [];
  return path
    .split(/[ML]/)
    .filter(Boolean)
    .map((corner) => corner.split(",").map(Number) as [number, number]);
}
const levelOf = (drawn: string, words: string): number =>
  Number(new RegExp(`<line x1="[\\d.]+" y1="([\\d.]+)"[^>]*class="limit"></line><text[^>]*>${words}`).exec(drawn)?.[1]);

describe("StabilityOverTime", () => {
  const drawn = draw();

  it("draws the angles of all three flights, the default model only as long as it swings", () => {
    const rigid = cornersOf(drawn, "median");
    const quick = cornersOf(drawn, "swing-quick");
    expect(quick.length).toBeLessThan(rigid.length);
    expect(cornersOf(drawn, "swing-rough")).toHaveLength(rigid.length);
    expect(quick.at(-1)?.[0]).toBeLessThan(rigid.at(-1)?.[0] ?? 0);
    // both leave the guide at once; the larger angle stands higher, and y is down in a drawing
    expect(quick[0]?.[0]).toBe(rigid[0]?.[0]);
    expect(quick[0]?.[1]).toBeGreaterThan(rigid[0]?.[1] ?? 0);
  });

  it("draws margin and limits on one scale", () => {
    const [most, least] = [levelOf(drawn, "over-stable above 3"), levelOf(drawn, "least 1")];
    const paths = [...drawn.matchAll(/<path d="([^"]*)" class="median"/g)].map(([, path = ""]) => path);
    const last = Number(paths[1]?.split(",").at(-1));
    // 2.9 calibres lie a twentieth of the way from 3 to 1
    expect((last - most) / (least - most)).toBeCloseTo(0.05, 2);
    expect(draw({}, null)).not.toContain("least 1");
  });

  it("says the figures in sentences, and names over-stable", () => {
    expect(drawn).toContain("After the guide it swings up to 6.3\u00a0deg");
    expect(drawn).toContain("The default model counts the swing as settled after 4.0\u00a0s");
    expect(drawn).toContain("guide exit 2.2\u00a0calibres");
    const findings = [{ code: "over-stable", value: 3.4, limit: 3, time: 2.1, from: 1.8, to: 2.6 }] as const;
    expect(draw({ stability: { ...data.stability, findings } })).toContain("Over-stable: its margin reaches 3.4");
  });

  it("leaves turbulence out of a calm, in lines and legend", () => {
    const calm = draw({ calm: true });
    expect(calm).not.toContain("swing-rough");
    expect(drawn.match(/swing-rough/g)).toHaveLength(2);
    expect(drawn).toContain("seed 1");
  });
});

describe("StabilityCloseUp", () => {
  it("marks burnout in its own panel, and in the other while it lies within", () => {
    const drawn = renderToStaticMarkup(<StabilityCloseUp data={data} state="settled" />);
    expect(drawn.match(/burnout 2\.10\u202fs<\/text>/g)).toHaveLength(2);
    expect(drawn.match(/clipPath id/g)).toHaveLength(2);
    expect(drawn).toContain("around burnout, deg");
  });
});

describe("StabilityMargin", () => {
  it("draws the loaded motor's margin below the empty one's", () => {
    const drawn = renderToStaticMarkup(<StabilityMargin data={data} state="settled" />);
    const [loaded, empty] = [cornersOf(drawn, "median"), cornersOf(drawn, "margin-empty")];
    expect(loaded).toHaveLength(3);
    for (const i of [0, 1, 2]) expect(loaded[i]?.[1]).toBeGreaterThan(empty[i]?.[1] ?? 0);
    expect(drawn).toContain("at Mach 0.50 2.2\u00a0calibres with the motor loaded, 3.0\u00a0calibres with it empty");
  });
});

const nothing = { time: [], angleOfAttack: [], afterExit: null, aroundBurnout: null, top: null, coast: null } as const;
const none = [] as const;
const { columns } = data.stability;

it.each<[string, Partial<typeof data>]>([
  ["in a calm", { calm: true }],
  [
    "where it never leaves the guide",
    {
      quick: { ...data.quick, ...nothing },
      rigid: { ...data.rigid, ...nothing },
      rough: { ...data.rough, ...nothing },
      stability: {
        ...data.stability,
        moments: none,
        guideExitAngle: null,
        columns: { ...columns, time: none, mach: none, margin: none, angleOfAttack: none },
      },
      overMach: { mach: none, loaded: none, empty: none },
    },
  ],
  ["with a margin before the balance point", { overMach: { mach: [0, 1], loaded: [-1, -2], empty: [0.5, 0.4] } }],
  [
    "with figures that are not finite",
    { overMach: { mach: [0, 1, 2], loaded: [1, Number.NaN, 2], empty: [1, Number.POSITIVE_INFINITY, 2] } },
  ],
])("is drawable %s", (_, change) => {
  const changed = { ...data, ...change };
  const drawn = renderToStaticMarkup(
    <>
      <StabilityOverTime data={changed} state="stale" leastMargin={1} />
      <StabilityCloseUp data={changed} state="settling" />
      <StabilityMargin data={changed} state="settled" />
    </>,
  );
  expect(drawn).not.toMatch(/NaN|Infinity|undefined/);
});
