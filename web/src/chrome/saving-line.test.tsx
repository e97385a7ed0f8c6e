import { renderToString } from "react-dom/server";
import { expect, test, vi } from "vitest";
import { SavingLine } from "./saving-line.js";

const saving = vi.hoisted(() => ({ state: "saved", unsaved: [] as string[] }));
vi.mock("../store/index.js", () => ({ useSaving: () => saving }));

const many = Array.from({ length: 500 }, (_, i) => `r${i}.rocket.json`);

test("SavingLine says that many documents are being written, and nothing where writing failed or is done", () => {
  expect(renderToString(<SavingLine />)).toBe('<p role="status"></p>');
  Object.assign(saving, { state: "saving", unsaved: many });
  expect(renderToString(<SavingLine />)).toBe('<p role="status">saving 0 of 500 documents…</p>');
  saving.state = "failed";
  expect(renderToString(<SavingLine />)).toBe('<p role="status"></p>');
});
