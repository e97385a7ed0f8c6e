import type { Issue } from "@delaywright/documents";
import { renderToStaticMarkup } from "react-dom/server";
import { expect, test, vi } from "vitest";
import { IssueList } from "./issue-list.js";

vi.mock("../store/index.js", () => ({
  useListing: () => [{ path: "a.plan.json", name: "Spring", kind: "plan" }],
}));

test("IssueList leads to fields of documents that are there, and nowhere else", () => {
  const issue: Issue = {
    file: "a.plan.json",
    path: "rocket",
    code: "file-missing",
    found: '"gone.rocket.json"',
    accepted: "the path of a file that is there",
    example: "",
  };
  const there = renderToStaticMarkup(<IssueList issues={[issue]} />);
  expect(there).toMatch(/<button.*<b>Spring<\/b>rocket: .*Go there/);
  const gone = renderToStaticMarkup(<IssueList issues={[{ ...issue, file: "gone.rocket.json", path: "" }]} />);
  expect(gone).toContain("gone.rocket.json");
  expect(gone).not.toMatch(/button|Go there/);
});
