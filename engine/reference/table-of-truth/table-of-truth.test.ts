import { readFileSync, writeFileSync } from "node:fs";
import { expect, test } from "vitest";
import { tableOfTruth } from "./page.js";

const page = new URL("../../../docs/table-of-truth.md", import.meta.url);

test("docs/table-of-truth.md says what is measured now", () => {
  const measured = tableOfTruth();
  if (process.env["WRITE_TRUTH"] === "1") writeFileSync(page, measured);
  expect(readFileSync(page, "utf8")).toBe(measured);
});
