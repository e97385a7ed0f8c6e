import { describe, expect, test } from "vitest";
import { WIDTH, wrap } from "./wrap.js";

describe("wrap()", () => {
  test("breaks between words, keeps glued words together, hangs the rest", () => {
    const text = `${"word ".repeat(19)}12\u00a0m/s and more`;
    const lines = wrap(text, "- ", "  ").split("\n");
    expect(lines.every((line) => line.length <= WIDTH)).toBe(true);
    expect(lines[0]?.startsWith("- word")).toBe(true);
    expect(lines.slice(1).every((line) => line.startsWith("  "))).toBe(true);
    expect(lines.some((line) => line.includes("12 m/s"))).toBe(true);
    expect(wrap(text)).not.toContain("\u00a0");
  });

  test("cuts a word that is longer than a line", () => {
    const lines = wrap(`see ${"x".repeat(250)} there`, "  ").split("\n");
    expect(lines.every((line) => line.length <= WIDTH)).toBe(true);
    expect(lines.join("").match(/x/g)).toHaveLength(250);
  });

  test("lets no control character through", () => {
    expect(wrap("a\u001b[31mb\u0007")).toBe("a\ufffd[31mb\ufffd");
  });
});
