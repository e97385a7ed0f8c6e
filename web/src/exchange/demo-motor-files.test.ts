import { importFiles } from "@delaywright/documents";
import { expect, test } from "vitest";
import { demoMotorFiles } from "./demo-motor-files.js";

test("demoMotorFiles() are motors without an issue, each marked as invented, no two of one name", async () => {
  const { entries, issues } = await importFiles(demoMotorFiles());
  expect(issues).toEqual([]);
  expect(entries.flatMap((entry) => entry.issues)).toEqual([]);
  expect(entries).toHaveLength(48);
  for (const { raw, path } of entries) {
    expect(raw, path).toMatchObject({ kind: "motor", note: expect.stringMatching(/^Invented for the demo/) });
    expect(raw?.["name"], path).toMatch(/^Demo /);
    expect(path).toMatch(/^demo-[a-z]\d+\.motor\.json$/);
  }
  expect(new Set(entries.map(({ raw }) => raw?.["name"])).size).toBe(48);
});
