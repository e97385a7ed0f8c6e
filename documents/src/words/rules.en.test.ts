import { rules } from "@delaywright/engine";
import { expect, test } from "vitest";
import { readValue } from "../read.js";
import { rulesOfClubs, ruleWords } from "./rules.en.js";

const plain = (text: string | undefined): string => (text ?? "").replaceAll("\u00a0", " ");

test("ruleWords() tells a rule's own limits, what they must be, and where they are from", () => {
  const exit = ruleWords("guide-exit-speed");
  expect(exit).toMatchObject({ name: "Guide-exit speed", sense: "least", plain: false });
  expect(plain(exit?.look)).toBe("15 m/s");
  expect(plain(ruleWords("guide-exit-speed", "imperial")?.look)).toBe("49 ft/s");
  expect(exit?.accepted).toContain("a speed with its unit");
  expect(plain(ruleWords("guide-exit-against-wind")?.look)).toBe("4 times the wind");
  expect(ruleWords("ceiling")).toMatchObject({ stop: "the field's ceiling", plain: true });
  expect(ruleWords("daylight")).toMatchObject({ sense: "", look: "", stop: "" });
  expect(ruleWords("tilt-limit")?.source).toContain("High Power Rocket Safety Code");
  expect(ruleWords("no-such-rule")).toBeNull();
});

test("rulesOfClubs() lists every rule that is not fixed; what it says is accepted by the document", () => {
  const listed = rulesOfClubs();
  expect(listed.map(({ id }) => id).sort()).toEqual(
    rules
      .filter(({ fixed }) => !fixed)
      .map(({ id }) => id)
      .sort(),
  );
  const issuesOf = (id: string, change: unknown) =>
    readValue({ kind: "rule-set", version: 1, name: "Club", limits: { [id]: change } }, { file: "c.json" }).issues;
  for (const { id, sense, plain: isPlain, look, stop } of listed) {
    expect(issuesOf(id, "off"), id).toEqual([]);
    if (sense === "") expect(issuesOf(id, {}), id).not.toEqual([]);
    else expect(issuesOf(id, { stop: 0.5 }).length === 0, id).toBe(isPlain);
    // what is shown as the usual limit may be typed as it stands there
    if (sense !== "" && !isPlain && look !== "")
      expect(issuesOf(id, { look: plain(look) }), `${id} ${look}`).toEqual([]);
    if (sense !== "" && !isPlain && stop !== "")
      expect(issuesOf(id, { stop: plain(stop) }), `${id} ${stop}`).toEqual([]);
  }
});
