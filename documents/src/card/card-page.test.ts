import { describe, expect, test } from "vitest";
import { carded } from "../../test/carded.js";
import { motor, plan, rocket } from "../../test/fixtures.js";
import { cautions } from "../words/cautions.en.js";
import { checkFigures, checkLine } from "../words/check-lines.en.js";
import { cardCode } from "./card-code.js";
import type { CardData } from "./card-data.js";
import { cardPage } from "./card-page.js";
import { cardPapers } from "./card-style.js";
import { escaped } from "./html.js";

/** What a reader sees. */
const seen = (html: string): string =>
  html
    .replace(/<style>[\s\S]*?<\/style>/g, "")
    .replace(/<[^>]+>/g, " ")
    .replace(/\s+/g, " ");

const hostile = "</title><script>alert(1)</script><img src=x onerror=alert(2)>\"'&\u202e";

/** The card with so many checks that say stop, so many looks, and so many that were not made. */
function crowded(card: CardData, stops: number, looks: number, missing: number): CardData {
  const one = card.checks[0];
  if (one === undefined) throw new Error("the demo has a check that does not pass");
  const many = (verdict: string, count: number) =>
    Array.from({ length: count }, (_, index) => ({
      ...one,
      verdict,
      code: `invented-${verdict}-number-${index}-of-a-long-list`,
      value: 12.3 + index,
      limit: 4.56,
      unit: "m/s",
    }));
  const checks = [...many("stop", stops), ...many("look", looks), ...many("not-checked", missing)];
  return { ...card, checks: checks as unknown as CardData["checks"] };
}

describe("cardPage()", () => {
  test("needs nothing else: no script, no address, no image, nothing that is asked for", async () => {
    const { card, parts } = await carded();
    const { html } = cardPage(card, await cardCode(parts), { paper: "a4" });
    expect(html).not.toMatch(
      /https?:|<script|<link|<img|<iframe|<object|@import|url\(|\bsrc=|\bhref=|javascript:|\bon\w+=/i,
    );
    expect(
      html
        .match(/<[a-z][a-z0-9]*/g)
        ?.map((tag) => tag.slice(1))
        .filter((tag, i, all) => all.indexOf(tag) === i)
        .sort(),
    ).toEqual(
      "article b body br div footer h1 h2 head header html i li meta p path section span style svg table tbody td th thead title tr ul".split(
        " ",
      ),
    );
    expect(html.match(/#[0-9a-f]{3,6}\b/gi)?.filter((colour) => !/^#(000|fff|777|999)$/.test(colour))).toEqual([]);
  });

  test("names what several rules look at once", async () => {
    const { card } = await carded();
    const [one] = card.checks;
    if (one === undefined) throw new Error("the demo has a check that does not pass");
    const unseen = ["cloud-cover", "uninvolved-distance", "uninvolved-distance"].map((code) => ({
      ...one,
      verdict: "not-checked",
      code,
    }));
    const { html } = cardPage({ ...card, checks: unseen as unknown as CardData["checks"] }, null, { paper: "a4" });
    expect(seen(html)).toContain(
      "Not checked (3): cloud cover, distance to people and property with no part in it (2 rules).",
    );
  });

  test("hostile names are text and never markup", async () => {
    const { card, parts } = await carded({
      "plan.json": { ...plan, name: hostile, choice: { delay: "9 s", reason: hostile }, flyer: "me.json" },
      "me.json": { kind: "flyer", version: 1, name: hostile, association: hostile },
      "demo.rocket.json": { ...rocket, name: hostile },
      "demo-h150.motor.json": { ...motor, name: hostile, maker: hostile },
    });
    const { html } = cardPage({ ...card, computed: hostile, version: hostile }, await cardCode(parts), { paper: "a4" });
    expect(html).not.toContain("<script");
    expect(html).not.toContain("<img");
    expect(html).not.toContain("\u202e");
    expect(html.split("</title>")).toHaveLength(2);
    expect(html).toContain("&lt;script&gt;alert(1)");
  });

  test.each(cardPapers)("fits on %s with everything that can be, however much there is", async (paper) => {
    const { card, parts } = await carded({
      "plan.json": { ...plan, motor: "bag-3.json", name: "a long name ".repeat(16) },
    });
    const code = await cardCode(parts);
    for (const [stops, looks, missing] of [
      [0, 0, 0],
      [0, 3, 20],
      [2, 8, 30],
      [10, 10, 40],
      [14, 12, 40],
    ] as const) {
      for (const units of ["metric", "imperial"] as const) {
        const crowd = crowded(card, stops, looks, missing);
        const page = cardPage(crowd, code, { paper, units });
        expect(page.lines, `${stops} stops, ${looks} looks`).toBeLessThanOrEqual(page.room);
        const text = seen(page.body);
        for (const check of crowd.checks.filter(({ verdict }) => verdict !== "not-checked")) {
          const line = checkLine(check, units);
          expect(text, `${stops} ${looks}`).toContain(
            escaped(`${line.name}: ${checkFigures(line)}`).replace(/\s+/g, " "),
          );
        }
        if (missing > 0) expect(text).toContain(`Not checked (${missing})`);
      }
    }
  });

  test("tells how many were left out", async () => {
    const { card, parts } = await carded();
    const { body } = cardPage(crowded(card, 6, 8, 40), await cardCode(parts));
    expect(seen(body)).toMatch(/and \d+ more: see the plan/i);
    const { body: fewest } = cardPage(crowded(card, 14, 12, 40), await cardCode(parts));
    const whole = ["igniter", "late-charge", "cutting", "retention", "charge"] as const;
    const sentences = whole.reduce((sum, topic) => sum + cautions[topic].length, 0);
    expect(seen(fewest)).toContain(`And ${sentences - 3} more: see the plan`);
    const easy = cardPage({ ...card, checks: [], warnings: [] }, null, { paper: "a4" });
    expect(seen(easy.body)).toContain("Every check that was made passes.");
  });

  test("keeps the cautions of the pad, however much there is", async () => {
    const { card, parts } = await carded();
    for (const stops of [0, 16]) {
      const text = seen(cardPage(crowded(card, stops, 12, 40), await cardCode(parts)).body);
      for (const topic of ["igniter", "late-charge"] as const) expect(text).toContain(cautions[topic][0]);
    }
  });

  test("leaves no caution out while a list that only explains is whole, and gives back what there is room for", async () => {
    const { choice: _, ...suggested } = plan;
    const { card, parts } = await carded({ "plan.json": suggested });
    const code = await cardCode(parts);
    const topics = ["igniter", "late-charge", "cutting", "retention", "charge"] as const;
    const told = (looks: number, missing: number) => {
      const page = cardPage(crowded(card, 0, looks, missing), code, { paper: "a5" });
      const text = seen(page.body);
      return {
        text,
        room: page.room - page.lines,
        cautions: topics.filter((topic) => text.includes(escaped(cautions[topic][0] ?? ""))),
      };
    };
    const crowd = told(1, 40);
    expect(crowd.cautions).toEqual(topics);
    expect(crowd.text).toContain("Not checked (40): see the plan");
    const few = told(0, 2);
    expect(few.cautions).toEqual(topics);
    expect(few.text).toMatch(/Not checked \(2\): invented .* number 0 .* number 1 of a long list/);
    expect(Math.max(crowd.room, few.room)).toBeLessThan(3);
  });

  test("says nothing of being safe, and who decides", async () => {
    const { card, parts } = await carded();
    const text = seen(cardPage(card, await cardCode(parts)).body);
    expect(text).not.toMatch(/\bsafe\b/i);
    expect(text).toContain(
      "the motor maker's instructions, the safety code, the range safety officer and local law decide",
    );
  });

  test("shows feet and inches where they are wanted, rounded to the careful side", async () => {
    const { card, parts } = await carded();
    const code = await cardCode(parts);
    const [metric, imperial] = [cardPage(card, code), cardPage(card, code, { units: "imperial" })].map(({ body }) =>
      seen(body),
    );
    // 2.28 kg over 0.45359237 kg, 76 mm over 25.4 mm
    expect(metric).toContain("lift-off mass 2.28 kg");
    expect(imperial).toContain("lift-off mass 5.03 lb");
    expect(imperial).toContain("2.99 in across");
    expect(imperial).not.toMatch(/\d m\/s/);
    const { p90 } = card.suggested?.setting?.openingSpeed ?? { p90: 0 };
    expect(imperial).toContain(`${Math.ceil((p90 ?? 0) / 0.3048)} ft/s`);
  });

  test("the sheet is the paper's, and letters are never below 8 pt", async () => {
    const { card } = await carded();
    const sizes = { a5: "148mm 210mm", a4: "210mm 297mm", letter: "215.9mm 279.4mm" };
    for (const paper of cardPapers) {
      for (const stops of [0, 16]) {
        const { styles } = cardPage(crowded(card, stops, 12, 40), null, { paper });
        expect(styles).toContain(`@page{size:${sizes[paper]};margin:0}`);
        expect(Number(/font:([\d.]+)pt/.exec(styles)?.[1])).toBeGreaterThanOrEqual(8);
        for (const [, size] of styles.matchAll(/font-size:([\d.]+)em/g)) expect(Number(size)).toBeGreaterThanOrEqual(1);
      }
    }
  });

  test("the code on it is that of the plan; where it fits none it says so", async () => {
    const { card, parts } = await carded();
    const code = await cardCode(parts);
    expect(cardPage(card, code).body).toContain('aria-label="QR code of this plan"');
    const without = cardPage(card, null).body;
    expect(without).not.toContain("<svg");
    expect(seen(without)).toContain("too long for a code");
    const thinned = code && { ...code, thinned: { from: 900, to: 24 } };
    expect(seen(cardPage(card, thinned).body)).toContain("thinned from 900 to 24 points");
  });
});

describe("escaped()", () => {
  test("leaves no letter that could become markup or hide others", () => {
    expect(escaped(`<a href="x" b='y'>&amp;`)).toBe("&lt;a href=&quot;x&quot; b=&#39;y&#39;&gt;&amp;amp;");
    expect(escaped("a\nb\u0000\u202ec\u2066")).toBe("a b\ufffd\ufffdc\ufffd");
    expect(escaped("9\u00a0s, Ünï 火")).toBe("9\u00a0s, Ünï 火");
  });
});
